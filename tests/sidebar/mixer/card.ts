/** A job of round numbers and what the script would answer of it, so that a load can be worked by hand. */
import type { JobFile, PourInput } from "../../../src/job/jobfile";
import type { StudioFile } from "../../../src/job/studiofile";
import type {
	JobState,
	Typed,
	Weighed,
	Weighing,
} from "../../../src/sheets/messages";
import { starterStudio } from "../../../templates/starterstudio";

/** 110 kg of mix are 88 of dry mix and 22 of water: 110 / (88 / 4 + 22) = 2.5 kg/L; binder 88 × 62.5% = 55 kg, a half. */
export const STUDIO_FILE: StudioFile = {
	settings: {
		...starterStudio("metric").settings,
		mixer_capacity: 150,
		mix_division: 0.1,
		gram_division: 0.1,
		sticks: 0.2,
		// Of 110 kg, 10 kg.
		reserve: 1 / 11,
		air: 0,
		working_minutes: 60,
		working_temp: 20,
	},
	mixes: [
		{
			mix: "Plain mix",
			ingredient: "Dry mix",
			parts: 88,
			specificGravity: 4,
			binderShare: 0.625,
			cementShare: 0.5,
		},
		{
			mix: "Plain mix",
			ingredient: "Water",
			parts: 22,
			specificGravity: 1,
			waterShare: 1,
			group: "water",
		},
	],
	pigments: [
		{ name: "Umber", maximum: 0.06, water: 0 },
		{ name: "Black", maximum: 0.06, water: 0 },
	],
};

/** 1.1 m × 1 m × 40 mm of 2500 kg/m³: 110 kg, a load of its own. */
const shelf = (number: number) => ({
	name: `Shelf ${number}`,
	quantity: 1,
	shape: "rectangle",
	a: 1100,
	b: 1000,
	thickness: 40,
});

/** At 20 °C, where the working time was tried. */
export const pour = (load: number, typed: Partial<PourInput> = {}) => ({
	load,
	mixTemperature: 20,
	...typed,
});

/**
 * Light and dark of one pigment; a tenth of the 100 kg to tone is kept back undosed. By hand, of 100 kg:
 * 100 × 50% × 1% = 500 g; 75 × (1 + 50% × 1%) = 75.375 kg of light; 25 × 50% × (4% − 1%) = 375 g;
 * 25 × (1 + 50% × 4%) = 25.5 kg of dark.
 */
export const JOB_FILE: JobFile = {
	units: "metric",
	client: "Nobody (invented)",
	title: "Two shelves",
	mix: "Plain mix",
	waste: 0,
	load: 1,
	pieces: [shelf(1), shelf(2)],
	tones: [
		{ name: "light", share: 0.75, doses: { Umber: 0.01 } },
		{ name: "dark", share: 0.25, doses: { Umber: 0.04 } },
	],
	pours: [pour(1), pour(2)],
};

export const stateWith = (
	job: Partial<JobFile> = {},
	studio: Partial<StudioFile> = {},
): JobState => ({
	number: 3,
	job: { ...JOB_FILE, ...job },
	studio: { ...STUDIO_FILE, ...studio },
	recorded: [],
	logged: [],
});

type Weights = Readonly<Record<string, Typed>>;

/** A pour as the tests write to it. */
type Open = { -readonly [K in keyof PourInput]: PourInput[K] };

/** The card as the script keeps it: takes a weight unless its cell holds something else than was believed. */
export function cardScript(first: JobState = stateWith()) {
	const state = structuredClone(first);
	const at = (load: number): Open => {
		const found = state.job.pours?.find((one) => one.load === load);
		if (!found) throw new Error(`There is no load ${load}`);
		return found;
	};
	const holds = ({ load, cell }: Pick<Weighing, "load" | "cell">): Typed => {
		const own = at(load);
		if ("note" in cell) return own[cell.note] ?? "";
		if ("correction" in cell) {
			const { added, ...rest } = own.corrections?.[cell.correction - 1] ?? {};
			const [[pigment, grams] = ["", ""]] = Object.entries(added ?? {});
			return cell.part === "added"
				? `${pigment} ${grams}`.trim()
				: (rest[cell.part] ?? "");
		}
		return (
			("step" in cell ? own.steps?.[cell.step] : own.weighed?.[cell.weighed]) ??
			""
		);
	};
	const put = (weighing: Omit<Weighing, "job" | "believed">): void => {
		const { load, cell, value, planNumber } = weighing;
		const own = at(load);
		const filled = (weights: Weights = {}, name: string | number): Weights =>
			Object.fromEntries(
				Object.entries({ ...weights, [name]: value }).filter(
					([, typed]) => typed !== "",
				),
			);
		if ("note" in cell) own[cell.note] = value;
		else if ("correction" in cell) {
			const [, pigment = "", grams] = /^(\S+) (.*)$/.exec(String(value)) ?? [];
			const typed =
				cell.part === "added" ? { [pigment]: Number(grams) } : value;
			const at = cell.correction - 1;
			const all = [...(own.corrections ?? [])];
			const { [cell.part]: _, ...rest } = all[at] ?? {};
			all[at] = value === "" ? rest : { ...rest, [cell.part]: typed };
			own.corrections = all;
		} else if ("step" in cell) own.steps = filled(own.steps, cell.step);
		else own.weighed = filled(own.weighed, cell.weighed);
		if (!("note" in cell) && value !== "" && planNumber !== "")
			own.planNumber ??= planNumber;
	};
	return {
		state: () => structuredClone(state),
		/** The load as the card has it. */
		load: (number: number) => structuredClone(at(number)),
		/** Somebody types on the card. */
		type: (typed: Pick<Weighing, "load" | "cell" | "value">) =>
			put({ planNumber: "", ...typed }),
		jobState: () => structuredClone(state),
		chooseLoad: (_: number, load: number) => {
			state.job = { ...state.job, load };
			return structuredClone(state);
		},
		weigh(weighing: Weighing): Weighed {
			const now = holds(weighing);
			const written = now === weighing.believed;
			if (written) put(weighing);
			return {
				written,
				why: written ? "" : `Load ${weighing.load} holds ${now} there by now`,
				state: structuredClone(state),
			};
		},
	};
}
