/** What the panel has weighed and the card may not hold yet, laid over what the script last read. */
import type {
	MixerLoad,
	MixerState,
	Typed,
	Weighing,
} from "../../sheets/messages";

export type Cell = Pick<Weighing, "load" | "column" | "row">;

export const sameCell = (one: Cell, other: Cell): boolean =>
	one.load === other.load &&
	one.column === other.column &&
	one.row === other.row;

/** What a cell holds in a state. */
export function valueAt(state: MixerState, { load, column, row }: Cell): Typed {
	const found = state.loads.find(({ number }) => number === load);
	if (!found) return "";
	if (column === "reserve") return found.reserveWeighed;
	return column === "mixed" || column === "weights"
		? (found[column][row - 1] ?? "")
		: found.fresh[column];
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
	if (column === "reserve") return { ...load, reserveWeighed: value };
	if (column !== "mixed" && column !== "weights")
		return { ...load, fresh: { ...load.fresh, [column]: value } };
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
