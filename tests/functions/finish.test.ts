/** What a cell gets of paste and sealer; worked by hand, in US units. */
import { expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { callFunction } from "../../src/functions/call";
import type { SheetFunction } from "../../src/functions/declare";
import { COATING_AMOUNT, VOID_FILL } from "../../src/functions/finish";

test("VOID_FILL: 24 ft² × (5% × 1/4 in + 0) × 2 = 24 × 0.0125 / 12 × 2 = 0.05 ft³", () => {
	const args = [24, 0.05, "1/4", "", 1, "us"];
	expect(callFunction(VOID_FILL, args)).toBeCloseTo(0.05, 12);
});

test("COATING_AMOUNT: 100 ft² at 400 ft² a gallon, two coats: half a gallon", () => {
	const args = [100, 400, 2, "", "us"];
	expect(callFunction(COATING_AMOUNT, args)).toBeCloseTo(0.5, 12);
});

test.each<[SheetFunction, unknown[], string]>([
	[
		VOID_FILL,
		[2, 5, 4],
		"void_share must be between 0% and 100%, got 500% (type 5% or 0.05)",
	],
	[VOID_FILL, [2, 0.05, 4, -1], "skim must be 0 mm or more, got -1"],
	[
		COATING_AMOUNT,
		[2, 10, 1.5],
		"coats must be a whole number, 1 or more, got 1.5",
	],
	[COATING_AMOUNT, [2, 0], "coverage must be above 0 m²/L, got 0"],
])("refuses (%#)", (fn, args, sentence) => {
	expect(() => callFunction(fn, args)).toThrow(new InputError(sentence));
});
