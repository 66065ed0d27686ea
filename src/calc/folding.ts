/** Bands of tones that are folded, and from how far they can still be told apart. */

import { InputError } from "./errors";

/** What an eye of normal sight resolves: 1 arcminute. */
const ARCMINUTE = Math.PI / (180 * 60);

/**
 * Band width after whole ideal folds, m: start / 2ⁿ.
 *
 * @throws InputError when it is less than the smallest number.
 * @source Baker's map; stretching and folding in Christov, Lueptow and Ottino, arXiv:1010.2256.
 */
export function bandWidthM(startM: number, folds: number): number {
	const widthM = startM / 2 ** folds;
	if (widthM > 0) return widthM;
	throw new InputError(
		`folds must be fewer: after ${folds} no width is left that a number can hold`,
	);
}

/**
 * The least whole number of folds after which bands are finer than 1 arcminute seen from a distance.
 *
 * @source Visual acuity 1.0 is 1 arcminute.
 */
export function foldsUntilBlurred(startM: number, distanceM: number): number {
	const finestM = distanceM * Math.tan(ARCMINUTE);
	return Math.max(0, Math.floor(Math.log2(startM / finestM)) + 1);
}
