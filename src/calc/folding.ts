/** Bands of tones that are folded, and from how far they can still be told apart. */

/** What an eye of normal sight resolves: 1 arcminute. */
const ARCMINUTE = Math.PI / (180 * 60);

/**
 * Band width after whole ideal folds, m: start / 2ⁿ.
 *
 * @source Baker's map; stretching and folding in Christov, Lueptow and Ottino, arXiv:1010.2256.
 */
export const bandWidthM = (startM: number, folds: number): number =>
	startM / 2 ** folds;

/**
 * The least whole number of folds after which bands are finer than 1 arcminute seen from a distance.
 *
 * @source Visual acuity 1.0 is 1 arcminute.
 */
export function foldsUntilBlurred(startM: number, distanceM: number): number {
	const finestM = distanceM * Math.tan(ARCMINUTE);
	return Math.max(0, Math.floor(Math.log2(startM / finestM)) + 1);
}
