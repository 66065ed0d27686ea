/** What the panel has weighed and the card may not hold yet, laid over what the script last read. */
import type {
	Fresh,
	MixerLoad,
	MixerState,
	Typed,
	Weighing,
} from "../../sheets/messages";

/** Rows of `Fresh` on the Pour card, from the first. */
export const FRESH: readonly (keyof Fresh)[] = [
	"spread",
	"mixTemperature",
	"airTemperature",
	"waterIn",
	"lastTone",
	"weighedBy",
	"lots",
	"remarks",
	"result",
];

export type Cell = Pick<Weighing, "load" | "column" | "row">;

export const sameCell = (one: Cell, other: Cell): boolean =>
	one.load === other.load &&
	one.column === other.column &&
	one.row === other.row;

/** What a cell holds in a state. */
export function valueAt(state: MixerState, cell: Cell): Typed {
	const load = state.loads.find(({ number }) => number === cell.load);
	if (!load) return "";
	const name = FRESH[cell.row - 1];
	if (cell.column === "fresh") return name ? load.fresh[name] : "";
	if (cell.column === "reserve") return load.reserveWeighed;
	return load[cell.column][cell.row - 1] ?? "";
}

/** The state once all of these are written. */
export const withWeighings = (
	state: MixerState,
	weighings: readonly Weighing[],
): MixerState => ({
	...state,
	loads: state.loads.map((load) =>
		weighings.filter((each) => each.load === load.number).reduce(withOne, load),
	),
});

function withOne(load: MixerLoad, { column, row, value }: Weighing): MixerLoad {
	const name = FRESH[row - 1];
	if (column === "reserve") return { ...load, reserveWeighed: value };
	if (column === "fresh")
		return name ? { ...load, fresh: { ...load.fresh, [name]: value } } : load;
	const filled: Typed[] = Array.from(
		{ length: Math.max(row, load[column].length) },
		(_, index) => load[column][index] ?? "",
	);
	filled[row - 1] = value;
	return { ...load, [column]: filled };
}

/** Weights that stand in `next` otherwise than in `before`: somebody typed them on the card. */
export const changedCells = (before: MixerState, next: MixerState): Cell[] =>
	next.loads
		.flatMap(weightCells)
		.filter((cell) => valueAt(before, cell) !== valueAt(next, cell));

const weightCells = ({ number: load, mixed, weights }: MixerLoad): Cell[] => [
	...mixed.map((_, at): Cell => ({ load, column: "mixed", row: at + 1 })),
	{ load, column: "reserve", row: 1 },
	...weights.map((_, at): Cell => ({ load, column: "weights", row: at + 1 })),
];
