import { sum } from "./sum";

/** No pigment above 10% of cement, whatever its maker allows (ASTM C979/C979M, 1.4). */
const HIGHEST = 0.1;

/**
 * How far a tone's total dose is below what is allowed, as a share of cement; negative is over.
 *
 * The smallest maximum of the pigments in it, less total dose / cement share of the binder.
 *
 * @source ASTM C979/C979M, 1.4: all pigments together "shall not exceed any of the individual maximum dosage rates".
 */
export function pigmentHeadroom({
	doses,
	maxima,
	cementShare,
}: {
	doses: readonly number[];
	/** A pigment each; undefined where the maker states none. */
	maxima: readonly (number | undefined)[];
	cementShare: number;
}): number {
	const present = doses.flatMap((dose, i) => (dose > 0 ? [maxima[i]] : []));
	return highestTotal(present) - sum(doses) / cementShare;
}

/** What all pigments together may come to, as a share of cement, by the maxima of those present. */
export const highestTotal = (maxima: readonly (number | undefined)[]): number =>
	Math.min(HIGHEST, ...maxima.map((each) => each ?? HIGHEST));
