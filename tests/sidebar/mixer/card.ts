/** A Pour card of round numbers and what the script would answer of it, so that a load can be worked by hand. */
import type {
	MixerLoad,
	MixerState,
	Typed,
	Weighed,
	Weighing,
} from "../../../src/sheets/messages";

/** 110 kg: 88 of dry mix and 22 of water; a tenth of the 100 kg to tone is kept back undosed. */
export const load = (number: number): MixerLoad => ({
	number,
	castings: [`Shelf ${number}`],
	mix: 110,
	planned: [88, 22],
	weighOut: [88, 22],
	mixed: [],
	reserve: 10,
	reserveWeighed: "",
	planMass: 100,
	planBinder: 0.5,
	weights: [],
	planNumber: "",
	fresh: {
		spread: "",
		mixTemperature: "",
		airTemperature: "",
		waterIn: "",
		lastTone: "",
		weighedBy: "",
		lots: "",
		remarks: "",
		result: "",
	},
	recorded: false,
});

/**
 * Light and dark of one pigment. By hand, of 100 kg: 100 × 50% × 1% = 500 g; 75 × (1 + 50% × 1%) = 75.375 kg of light;
 * 25 × 50% × (4% − 1%) = 375 g; 25 × (1 + 50% × 4%) = 25.5 kg of dark.
 */
export const CARD: MixerState = {
	number: 3,
	title: "Two shelves",
	units: "metric",
	tones: [
		["light", 0.75, 0.01],
		["dark", 0.25, 0.04],
	],
	pigments: ["Umber"],
	ingredients: ["Dry mix", "Water"],
	mixDivision: 0.1,
	gramDivision: 0.1,
	sticks: 0.2,
	workingMinutes: 60,
	planNumber: 4711,
	chosen: 1,
	loads: [load(1), load(2)],
	problems: [],
};

function fill(column: Typed[], row: number, value: Typed): void {
	while (column.length < row) column.push("");
	column[row - 1] = value;
}

/** The card as the script keeps it: takes a weight unless its cell holds something else than was believed. */
export function cardScript(first: MixerState = CARD) {
	let state: MixerState = structuredClone(first);
	const at = ({ load, column, row }: Weighing): Typed => {
		const found = state.loads[load - 1];
		if (column === "reserve") return found?.reserveWeighed ?? "";
		return column === "mixed" || column === "weights"
			? (found?.[column][row - 1] ?? "")
			: (found?.fresh[column] ?? "");
	};
	const put = ({ load, column, row, value, planNumber }: Weighing): void => {
		const found = state.loads[load - 1];
		if (!found) return;
		if (column === "reserve") found.reserveWeighed = value;
		else if (column === "mixed" || column === "weights")
			fill(found[column], row, value);
		else found.fresh[column] = value;
		if (column === "weights" && found.planNumber === "")
			found.planNumber = planNumber;
		// By hand: too much of one raises the other; a tenth of what is left after the reserve is the reserve.
		const factor = Math.max(
			1,
			Number(found.mixed[0] || 0) / 88,
			Number(found.mixed[1] || 0) / 22,
		);
		found.weighOut = [88 * factor, 22 * factor];
		found.reserve = Math.round(100 * factor) / 10;
		found.planMass =
			110 * factor - Number(found.reserveWeighed || found.reserve);
	};
	return {
		state: () => structuredClone(state),
		/** Somebody types on the card. */
		type: (weighing: Pick<Weighing, "load" | "column" | "row" | "value">) =>
			put({ job: 3, believed: "", planNumber: 4711, ...weighing }),
		change(next: Partial<MixerState>) {
			state = { ...state, ...next };
		},
		mixerState: () => structuredClone(state),
		mixerChoose: (_: number, chosen: number) => {
			state.chosen = chosen;
			return structuredClone(state);
		},
		mixerWeigh(weighing: Weighing): Weighed {
			const written = at(weighing) === weighing.believed;
			if (written) put(weighing);
			const why = written
				? ""
				: `Load ${weighing.load} holds ${at(weighing)} there by now`;
			return { written, why, state: structuredClone(state) };
		},
	};
}
