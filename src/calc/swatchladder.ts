/** Swatches of rising dose out of one small batch: pigment goes in, a swatch is pulled, and so on. */
import { InputError, percent } from "./errors";
import { sum } from "./sum";
import { dosedKg, pigmentKg } from "./tones";

export interface LadderStep {
	/** Of each pigment, of binder. */
	doses: readonly number[];
	/** Pigment to add, of each. */
	addKg: readonly number[];
	/** What the bowl then weighs, pigment included. */
	scaleKg: number;
	/** What to pull, as the scale shows it; undefined for the last, which is what is left. */
	pullKg: number | undefined;
	/** Undosed mix in the bowl while it is dosed. */
	undosedKg: number;
}

interface Batch {
	massKg: number;
	binderShare: number;
	/** Undosed mix in each swatch. */
	swatchKg: number;
	/** Of each swatch in turn, a dose each pigment; none ever falls. */
	doses: readonly (readonly number[])[];
}

/**
 * The steps of a ladder: added is binder share × mix in the bowl × rise of the dose.
 *
 * @throws InputError where a dose falls, or where the batch is too small for its swatches.
 */
export function swatchLadder(batch: Batch): LadderStep[] {
	const { massKg, binderShare, swatchKg, doses } = batch;
	const least = swatchKg * doses.length;
	if (massKg < least * (1 - 1e-9))
		throw new InputError(
			`a batch for ${doses.length} swatches must be at least ${doses.length} times as heavy as one`,
		);
	return doses.map((own, k) => {
		const before = doses[k - 1] ?? own.map(() => 0);
		const falls = own.findIndex((dose, i) => dose < (before[i] ?? 0));
		if (falls >= 0)
			throw new InputError(
				`doses must rise from swatch to swatch, got ${percent(own[falls] ?? 0)} after ${percent(before[falls] ?? 0)}: make another batch for it`,
			);
		const undosedKg = massKg - k * swatchKg;
		const dose = sum(own);
		return {
			doses: own,
			addKg: own.map((each, i) =>
				pigmentKg({
					massKg: undosedKg,
					binderShare,
					dose: each - (before[i] ?? 0),
				}),
			),
			scaleKg: dosedKg({ massKg: undosedKg, binderShare, dose }),
			pullKg:
				k < doses.length - 1
					? dosedKg({ massKg: swatchKg, binderShare, dose })
					: undefined,
			undosedKg,
		};
	});
}

/** Below this a gram scale of 0.1 g doses worse than within 2% (two divisions' worth of rounding, GUM F.2.2.1). */
export const LEAST_STEP_KG = 0.002;

/** The lightest batch in which no addition is below 2 g. */
export function ladderBatchKg({
	binderShare,
	swatchKg,
	doses,
}: Omit<Batch, "massKg">): number {
	const needed = doses.flatMap((own, k) =>
		own.flatMap((dose, i) => {
			const rise = dose - (doses[k - 1]?.[i] ?? 0);
			return rise > 0
				? [LEAST_STEP_KG / (binderShare * rise) + k * swatchKg]
				: [];
		}),
	);
	return Math.max(swatchKg * doses.length, ...needed);
}
