/** How far a weight may be off before anything is worked out again. */

/**
 * Tolerances of batching, shares of the weight.
 *
 * @source Water: ASTM C94/C94M-21a. Cementitious, aggregate and admixture: the same standard, from memory. Fiber has no
 * published tolerance and counts as aggregate.
 */
export const TOLERANCE = {
	cementitious: 0.01,
	water: 0.015,
	aggregate: 0.02,
	admixture: 0.03,
} as const;

/** A scale leaves at most this part of a tolerance open. Common practice, no source. */
const OF_TOLERANCE = 1 / 3;

export type Batched = keyof typeof TOLERANCE;

/** Half a division, or the tolerance where that is more, in the unit of both. */
export const allowance = (
	weight: number,
	division: number,
	kind: Batched,
): number => Math.max(division / 2, weight * TOLERANCE[kind]) + weight * 1e-9;

/** Whether a scale that is off by this share weighs finely enough. */
export const isFineEnough = (offBy: number, kind: Batched): boolean =>
	offBy <= TOLERANCE[kind] * OF_TOLERANCE;

/**
 * Factor on every ingredient after a mis-weigh: 1, until a weight is above its planned one by more than its allowance;
 * then each later one counts only above what the factor asks of it.
 */
export const raisedBy = (
	ingredients: readonly {
		planned: number;
		weighed: number | undefined;
		division: number;
		kind: Batched;
	}[],
): number =>
	ingredients.reduce((factor, { planned, weighed = 0, division, kind }) => {
		const asked = planned * factor;
		return planned > 0 && weighed > asked + allowance(asked, division, kind)
			? weighed / planned
			: factor;
	}, 1);
