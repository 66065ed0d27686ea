/** What a cell gets of the lifting equation; worked by hand, in both systems of units. */
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { callFunction } from "../../src/functions/call";
import { LIFT_LIMIT } from "../../src/functions/lifting";

describe("LIFT_LIMIT", () => {
	test("the limits of reach, height and travel are inside the method, in any spelling", () => {
		// 51 × 10/25 × (1 − 0.0075 × 40) × (0.82 + 1.8/70).
		const us = 51 * 0.4 * 0.7 * (0.82 + 1.8 / 70);
		for (const args of [
			[25, 70, 70],
			[`2' 1"`, `5' 10"`, `5' 10"`],
			["25 in", `70"`, `70"`],
		])
			expect(
				callFunction(LIFT_LIMIT, [...args, "", "", "", "", "us"]),
			).toBeCloseTo(us, 9);
		// 23 × 25/63 × (1 − 0.003 × 100) × (0.82 + 4.5/175).
		const si = 23 * (25 / 63) * 0.7 * (0.82 + 4.5 / 175);
		for (const args of [
			[630, 1750, 1750],
			["63 cm", "1.75 m", "175 cm"],
		])
			expect(callFunction(LIFT_LIMIT, args)).toBeCloseTo(si, 9);
	});

	test("hands at 30 in or 75 cm are not low: a fair grip counts fully", () => {
		const us = callFunction(LIFT_LIMIT, [10, 30, 10, "", "", "", "fair", "us"]);
		expect(us).toBeCloseTo(51, 9);
		expect(callFunction(LIFT_LIMIT, [250, 750, 250])).toBeCloseTo(23, 9);
	});

	test("a column of heights", () => {
		const limits = callFunction(LIFT_LIMIT, [250, [[750], [1800]], 250]);
		expect((limits as number[][])[0]?.[0]).toBeCloseTo(23, 12);
		expect((limits as number[][])[1]).toEqual([0]);
	});
});

test("help says its limits", () => {
	expect(LIFT_LIMIT.limits).toMatch(
		/one healthy person.*does not cover team lifts/,
	);
});

test.each<[unknown[], string]>([
	[[250, 750, 250, "", "", 8.5], "hours must be 8 or less, got 8.5"],
	[
		[250, 750, 250, "", "", "", "loose"],
		'grip must be one of good, fair, poor, got "loose"',
	],
	[[0, 750, 250], "reach must be above 0 mm, got 0"],
	[[250, 750, 250, -5], "twist must be 0 or more, got -5"],
])("refuses %j", (args, sentence) => {
	expect(() => callFunction(LIFT_LIMIT, args)).toThrow(
		new InputError(sentence),
	);
});
