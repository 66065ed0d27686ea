/** The amounts of a pull-off plan, which follow from what was weighed. */
import { withRounding } from "./rounding";
import type { Step, Vessel } from "./steps";
import { sum } from "./sum";
import type { Dosing, Tone } from "./tones";

/** What is in a vessel. */
interface Contents {
	undosedKg: number;
	doses: number[];
}

/** How far a pigment of a tone is from what was asked. */
interface Miss {
	pigment: number;
	/** Reached / wanted − 1. */
	excess: number;
}

export interface PlanRow {
	step: Step;
	/** As the scale shows it: mix with its pigment, or pigment. */
	amountKg: number;
	/** Of the vessel, after the step. */
	dose: number;
	/** The same, a pigment each. */
	doses: readonly number[];
	/** Undosed mix in a tone that the step finishes; 0 for another step. */
	toneKg: number;
	/** In the vessel, after the step. */
	undosedKg: number;
	/** Pigments of a finished tone that are off by more than 1%. */
	misses: Miss[];
	/** Undosed mix that brings a finished tone back whose `misses` are too strong. */
	bringsBackKg: number;
}

/** A weighed value that cannot be, and what there was. */
export type Refused = (problem: {
	row: number;
	typedKg: number;
	step: Step;
	thereKg: number;
}) => Error;

/** Off by more than this is remarked. */
const WORTH_A_REMARK = 0.01;

export interface Plan extends Dosing {
	tones: readonly Tone[];
	steps: readonly Step[];
	/** What was weighed at each step, as the scale shows it; undefined where it is still to come. */
	weighedKg: readonly (number | undefined)[];
	refused: Refused;
}

/**
 * The plan's rows, each worked out from what happened above it.
 *
 * What is left in a vessel is shared among its later tones in proportion to their shares; an addition brings the
 * vessel to the step's dose, or is 0 where it is above it.
 *
 * @throws what `refused` makes of a negative value, or of a pull beyond what is there.
 */
export function pullOffRows(plan: Plan): PlanRow[] {
	const pigments = Math.max(0, ...plan.tones.map(({ doses }) => doses.length));
	const vessels = new Map<Vessel, Contents>();
	const contents = (vessel: Vessel): Contents => {
		const known = vessels.get(vessel);
		if (known) return known;
		const undosedKg = vessel === 0 ? plan.massKg : 0;
		const fresh = { undosedKg, doses: Array<number>(pigments).fill(0) };
		vessels.set(vessel, fresh);
		return fresh;
	};
	return plan.steps.map((step, i) => {
		const from = contents(step.vessel);
		const to = step.kind === "fill" ? contents(step.bucket) : undefined;
		return planRow(plan, step, i + 1, from, to);
	});
}

function planRow(
	plan: Plan,
	step: Step,
	row: number,
	from: Contents,
	to: Contents | undefined,
): PlanRow {
	const amountKg = amountOf(plan, step, from);
	const doneKg = weighedOr(plan, step, row, from, amountKg);
	const leftKg = from.undosedKg;
	take(plan, step, doneKg, from, to);
	const toneKg = step.kind === "keep" ? leftKg : leftKg - from.undosedKg;
	const tone = "tone" in step ? plan.tones[step.tone] : undefined;
	const misses = tone ? missesOf(tone, from) : [];
	const excess = Math.max(0, ...misses.map((miss) => miss.excess));
	return {
		step,
		amountKg,
		dose: sum(from.doses),
		doses: [...from.doses],
		toneKg: tone ? toneKg : 0,
		undosedKg: from.undosedKg,
		misses,
		bringsBackKg: toneKg * excess,
	};
}

/** Takes a step: pigment goes into its vessel, or mix out of it and, where it is kept apart, into another. */
function take(
	plan: Plan,
	step: Step,
	doneKg: number,
	from: Contents,
	to: Contents | undefined,
): void {
	if (step.kind === "keep") return;
	if (step.kind === "add") {
		const binderKg = plan.binderShare * from.undosedKg;
		const dose = from.doses[step.pigment] ?? 0;
		if (binderKg > 0) from.doses[step.pigment] = dose + doneKg / binderKg;
		return;
	}
	const pulledKg = Math.min(from.undosedKg, doneKg / onScale(plan, from));
	from.undosedKg -= pulledKg;
	if (to) to.undosedKg += pulledKg;
}

/** What the scale shows for each unit of undosed mix in the vessel. */
const onScale = ({ binderShare }: Dosing, { doses }: Contents): number =>
	1 + binderShare * sum(doses);

function amountOf(plan: Plan, step: Step, from: Contents): number {
	if (step.kind === "add") {
		const missing = step.dose - (from.doses[step.pigment] ?? 0);
		return Math.max(0, missing) * plan.binderShare * from.undosedKg;
	}
	const part = step.part / (step.part + step.later);
	return from.undosedKg * part * onScale(plan, from);
}

function weighedOr(
	plan: Plan,
	step: Step,
	row: number,
	from: Contents,
	amountKg: number,
): number {
	const typedKg = plan.weighedKg[row - 1];
	if (typedKg === undefined) return amountKg;
	const thereKg = from.undosedKg * onScale(plan, from);
	const most = {
		add: thereKg > 0 ? Number.POSITIVE_INFINITY : 0,
		keep: Number.POSITIVE_INFINITY,
		fill: withRounding(thereKg),
		"pull off": withRounding(thereKg),
	};
	if (typedKg >= 0 && typedKg <= most[step.kind]) return typedKg;
	throw plan.refused({ row, typedKg, step, thereKg });
}

function missesOf({ doses }: Tone, { doses: reached }: Contents): Miss[] {
	return doses.flatMap((dose, pigment) => {
		if (dose === 0) return [];
		const excess = (reached[pigment] ?? 0) / dose - 1;
		return Math.abs(excess) > withRounding(WORTH_A_REMARK)
			? [{ pigment, excess }]
			: [];
	});
}
