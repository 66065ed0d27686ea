import { expect } from "vitest";

/** Numbers of a cell or of rows of cells as expected to nine decimals, texts to the letter. */
export function close(got: unknown, expected: unknown): void {
	if (Array.isArray(expected)) {
		expect(got).toHaveLength(expected.length);
		for (const [i, cell] of expected.entries())
			close((got as unknown[])[i], cell);
	} else if (typeof expected === "number")
		expect(got as number).toBeCloseTo(expected, 9);
	else expect(got).toBe(expected);
}
