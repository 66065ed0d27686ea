import type { Tolerance } from "./published";

export interface Difference {
	/** Where in the answer, e.g. `[0][2]`; blank for a scalar. */
	at: string;
	got: unknown;
	expected: unknown;
	/** Of the expected number, absolute where that is 0; undefined between texts. */
	relative?: number;
	within: boolean;
}

function betweenNumbers(
	got: number,
	expected: number,
	tolerance: Tolerance,
	at: string,
): Difference {
	const absolute = Math.abs(got - expected);
	const size = Math.abs(expected);
	const allowed =
		typeof tolerance === "number" ? tolerance : tolerance.rel * size;
	return {
		at,
		got,
		expected,
		relative: size === 0 ? absolute : absolute / size,
		// A difference of exactly half a digit must not fail by its last bits.
		within: absolute <= allowed + 1e-12 * size,
	};
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
			return [{ at, got, expected, within: false }];
		return expected.flatMap((cell, i) =>
			differences(got[i], cell, tolerance, `${at}[${i}]`),
		);
	}
	if (typeof expected === "number" && typeof got === "number")
		return [betweenNumbers(got, expected, tolerance, at)];
	return [{ at, got, expected, within: got === expected }];
}
