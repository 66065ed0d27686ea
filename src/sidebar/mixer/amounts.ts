/**
 * What is to be weighed of a load after what was weighed. `read` is the load as the script last read it, `now` with what
 * was weighed since.
 */

import { rescaleFactor } from "../../calc/batch";
import { InputError } from "../../calc/errors";
import { sum } from "../../calc/sum";
import type { Tone } from "../../calc/tones";
import { type PlanStep, planSteps } from "../../job/answers/plan";
import { number, share } from "../../job/fields/field";
import { TONE } from "../../job/fields/tone";
import type { UnitSystem } from "../../job/reading/units";
import type { MixerLoad, MixerState, Typed } from "../../sheets/messages";
import { mixScale, onScale } from "./scale";

/** A cell that holds no number is as good as blank; its mistake is told beside. */
const weightsIn = (cells: readonly Typed[]): Typed[] =>
	cells.map((cell) => (typeof cell === "number" ? cell : ""));

/** What to weigh of each ingredient, raised with what was weighed too much. */
export function toWeigh({ planned, mixed }: MixerLoad): readonly Typed[] {
	if (!planned.some((mass) => typeof mass === "number")) return [];
	const weights = weightsIn(mixed);
	if (weights.some((weight) => numberOr(weight, 0) < 0)) return planned;
	try {
		const factor = rescaleFactor(
			planned.map((mass, index) => ({
				plannedKg: numberOr(mass, 0),
				weighedKg: numberOr(weights[index] ?? "", 0),
				row: index + 1,
			})),
		);
		return planned.map((mass) =>
			typeof mass === "number" ? mass * factor : mass,
		);
	} catch (error) {
		if (error instanceof InputError) return planned;
		throw error;
	}
}

const sumOf = (cells: readonly Typed[]): number =>
	sum(cells.map((cell) => numberOr(cell, 0)));

/** How much larger the batch became since the script read it. */
function growth(read: MixerLoad, now: MixerLoad): number {
	const before = sumOf(toWeigh(read));
	return before > 0 ? sumOf(toWeigh(now)) / before : 1;
}

/** The reserve to pull off first, in the mix scale's divisions. */
export const reserveOf = (
	state: MixerState,
	read: MixerLoad,
	now: MixerLoad,
): number => onScale(read.reserve * growth(read, now), mixScale(state));

const numberOr = (cell: Typed, other: number): number =>
	typeof cell === "number" ? cell : other;

/** What is left to tone: all of the mix, less what was, or is to be, pulled off as the reserve. */
function planMass(state: MixerState, read: MixerLoad, now: MixerLoad): Typed {
	if (typeof read.planMass !== "number") return read.planMass;
	const factor = growth(read, now);
	const pulled = numberOr(now.reserveWeighed, reserveOf(state, read, now));
	const before = numberOr(read.reserveWeighed, read.reserve);
	return factor === 1 && pulled === before
		? read.planMass
		: (read.planMass + before) * factor - pulled;
}

const MASS = number("Mass", { unit: "mass" }, { above: 0 });
const PART = number("Share");
const DOSE = share("Dose");
const BINDER = share("Binder share", {}, { above: 0, max: 1 });

function toneIn(
	[name = "", part = "", ...doses]: readonly Typed[],
	index: number,
	pigments: readonly string[],
	units: UnitSystem,
): Tone {
	const row = `tones row ${index + 1}`;
	return {
		name: TONE.name.read(`${row}: name`, name, units),
		share: PART.read(`${row}: share`, part, units),
		doses: pigments.map((pigment, i) =>
			doses[i] === undefined || doses[i] === ""
				? 0
				: DOSE.read(`${row}: ${pigment}`, doses[i], units),
		),
	};
}

/** The plan for what is left to tone, and why there is none. */
export function planOf(
	state: MixerState,
	read: MixerLoad,
	now: MixerLoad,
): { rows: PlanStep[]; mistake: string } {
	const { tones, pigments, units } = state;
	const { weights, planBinder } = now;
	const mass = planMass(state, read, now);
	if (mass === "" || planBinder === "" || tones.length === 0)
		return { rows: [], mistake: "" };
	const numbers = weightsIn(weights);
	const names = pigments.filter((name) => name !== "");
	try {
		const rows = planSteps({
			tones: tones.map((cells, i) => toneIn(cells, i, names, units)),
			pigments: names,
			massKg: MASS.read("mass", mass, units),
			binderShare: BINDER.read("binder share", planBinder, units),
			weighed: numbers.map((weight) =>
				typeof weight === "number" ? weight : undefined,
			),
			units,
		});
		return { rows, mistake: "" };
	} catch (error) {
		if (error instanceof InputError)
			return { rows: [], mistake: error.message };
		throw error;
	}
}

/** The first cell of the load that holds something else than a weight. */
export function noWeight({ ingredients }: MixerState, load: MixerLoad): string {
	const wrong = (cells: readonly Typed[]) =>
		cells.findIndex((cell) => typeof cell === "string" && cell !== "");
	const [mixed, plan] = [wrong(load.mixed), wrong(load.weights)];
	if (mixed >= 0)
		return `the card says "${load.mixed[mixed]}" for ${ingredients[mixed]}, which is no weight`;
	return plan >= 0
		? `the card says "${load.weights[plan]}" at step ${plan + 1} of the plan, which is no weight`
		: "";
}
