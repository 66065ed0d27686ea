/** Sums that some of a number of things can have, things of one mass counted together. */
import { type Half, half, type Kind } from "./halves";

/** How many of each kind, told when asked, and their mass. */
export interface Selection {
	sum: number;
	counts(): number[];
}

export interface Sums {
	/** The largest sum up to a limit. */
	most(limit: number): number;
	/** The selections whose sum is from `low` to `high`; undefined when there are more than `limit`. */
	between(low: number, high: number, limit: number): Selection[] | undefined;
	/** What finding them costs. */
	work: number;
}

/** Sums of a half of the kinds, of which there may be no more than this. */
const LARGEST_HALF = 1 << 14;

/**
 * The sums of all selections, told from two sorted halves of the kinds; undefined when there are too many.
 *
 * @source Horowitz and Sahni, Journal of the ACM 21 (1974).
 */
export function sumsOf(kinds: readonly Kind[]): Sums | undefined {
	const split = splitOf(kinds);
	if (split === undefined) return undefined;
	const left = half(kinds.slice(0, split));
	const right = half(kinds.slice(split));
	return {
		work: left.work + right.work,
		most: (limit) => most(left, right, limit),
		between: (low, high, limit) => between(left, right, low, high, limit),
	};
}

/** Where to split the kinds so that both halves have about as many selections; undefined when one has too many. */
function splitOf(kinds: readonly Kind[]): number | undefined {
	let after = 1;
	for (const { count } of kinds) after *= count + 1;
	let before = 1;
	for (const [i, { count }] of kinds.entries()) {
		if (before * before * (count + 1) > before * after)
			return Math.max(before, after) <= LARGEST_HALF ? i : undefined;
		before *= count + 1;
		after /= count + 1;
	}
	return before <= LARGEST_HALF ? kinds.length : undefined;
}

function digits(code: number, kinds: readonly Kind[]): number[] {
	let rest = code;
	return kinds.map(({ count }) => {
		const digit = rest % (count + 1);
		rest = (rest - digit) / (count + 1);
		return digit;
	});
}

function most(left: Half, right: Half, limit: number): number {
	let best = Number.NEGATIVE_INFINITY;
	let r = right.sums.length - 1;
	for (const sum of left.sums) {
		while (r >= 0 && sum + (right.sums[r] as number) > limit) r -= 1;
		if (r < 0) break;
		const both = sum + (right.sums[r] as number);
		if (both > best) best = both;
	}
	return best;
}

function between(
	left: Half,
	right: Half,
	low: number,
	high: number,
	limit: number,
): Selection[] | undefined {
	const found: Selection[] = [];
	let top = right.sums.length - 1;
	for (const [l, first] of left.sums.entries()) {
		while (top >= 0 && first + (right.sums[top] as number) > high) top -= 1;
		if (top < 0) break;
		for (let r = top; r >= 0; r -= 1) {
			const sum = first + (right.sums[r] as number);
			if (sum < low) break;
			if (found.length >= limit) return undefined;
			const counts = () => [
				...digits(left.codes[l] as number, left.kinds),
				...digits(right.codes[r] as number, right.kinds),
			];
			found.push({ sum, counts });
		}
	}
	return found;
}
