import type { Tolerance } from "./published";

export interface Difference {
	/** Where in the answer, e.g. `[0][2]`; blank for a scalar. */
	at: string;
	/** Of the expected number; absolute where that is 0. */
	relative: number;
	/** Infinity where the two are not of one kind or shape. */
	absolute: number;
	within: boolean;
}

const unlike = (at: string): Difference => ({
	at,
	relative: Number.POSITIVE_INFINITY,
	absolute: Number.POSITIVE_INFINITY,
	within: false,
});

const same = (at: string): Difference => ({
	at,
	relative: 0,
	absolute: 0,
	within: true,
});

function betweenNumbers(
	got: number,
	expected: number,
	tolerance: Tolerance,
	at: string,
): Difference {
	const absolute = Math.abs(got - expected);
	const relative = expected === 0 ? absolute : absolute / Math.abs(expected);
	const allowed =
		typeof tolerance === "number"
			? tolerance
			: tolerance.rel * Math.abs(expected);
	// The last bits of the sum are not the source's.
	const within = absolute <= allowed + 1e-12 * Math.abs(expected);
	return { at, relative, absolute, within };
}

/** Differences of an answer from what is printed, one a cell; `null` in `expected` is not compared. */
export function differences(
	got: unknown,
	expected: unknown,
	tolerance: Tolerance,
	at = "",
): Difference[] {
	if (expected === null) return [];
	if (Array.isArray(expected)) {
		if (!Array.isArray(got) || got.length !== expected.length)
			return [unlike(at)];
		return expected.flatMap((cell, i) =>
			differences(got[i], cell, tolerance, `${at}[${i}]`),
		);
	}
	if (typeof expected === "number" && typeof got === "number")
		return [betweenNumbers(got, expected, tolerance, at)];
	return [got === expected ? same(at) : unlike(at)];
}
