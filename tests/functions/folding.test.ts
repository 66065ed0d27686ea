import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { callFunction } from "../../src/functions/call";
import { BAND_WIDTH, FOLDS_UNTIL_BLURRED } from "../../src/functions/folding";

const width = (start: unknown, folds: number, units?: string) =>
	callFunction(BAND_WIDTH, [start, folds, units]) as number;
const folds = (start: unknown, distance: unknown, units?: string) =>
	callFunction(FOLDS_UNTIL_BLURRED, [start, distance, units]) as number;

describe("folding", () => {
	test("in inches", () => {
		// 1 1/2 in halved three times is 3/16 in
		expect(width("1 1/2", 3, "us")).toBeCloseTo(0.1875, 12);
		// 1 1/2 in is 38.1 mm, 2 ft 609.6 mm: 1 arcminute is 0.1773 mm; / 2⁷ = 0.298, / 2⁸ = 0.149 mm
		expect(folds("1 1/2", "2 ft", "us")).toBe(8);
	});

	test("none is needed where bands are finer already", () => {
		expect(folds(0.1, 2000)).toBe(0);
	});

	test("the folds told are the first after which bands are finer than an arcminute", () => {
		fc.assert(
			fc.property(
				fc.double({ min: 0.01, max: 1000, noNaN: true }),
				fc.double({ min: 100, max: 20_000, noNaN: true }),
				(start, distance) => {
					const n = folds(start, distance);
					const finest = distance * Math.tan(Math.PI / 10_800);
					expect(width(start, n)).toBeLessThan(finest);
					if (n > 0) expect(width(start, n - 1)).toBeGreaterThanOrEqual(finest);
				},
			),
			{ seed: 1 },
		);
	});

	test.each([
		[40, 1.5, "folds must be a whole number, 0 or more, got 1.5"],
		[40, -1, "folds must be a whole number, 0 or more, got -1"],
		[
			40,
			2000,
			"folds must be fewer: after 2000 no width is left that a number can hold",
		],
		[0, 1, "start must be above 0 mm, got 0"],
	])("refuses %d mm and %d folds", (start, n, message) => {
		expect(() => width(start, n)).toThrow(message);
	});
});
