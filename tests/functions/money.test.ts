/** What a cell gets of the money functions; worked by hand. */
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { callFunction } from "../../src/functions/call";
import type { SheetFunction } from "../../src/functions/declare";
import {
	MARGIN_OF,
	PACKS_TO_BUY,
	PRICE_FOR_MARGIN,
	SPLIT_MONEY,
} from "../../src/functions/money";

test("PACKS_TO_BUY of a column of needs", () => {
	const needs = [[100], [10], [""], [101]];
	const stock = [[0], [20], [""], [0]];
	expect(callFunction(PACKS_TO_BUY, [needs, stock, 25])).toEqual([
		[4],
		[0],
		[""],
		[5],
	]);
});

describe("SPLIT_MONEY", () => {
	test("a column for a column, a row for a row", () => {
		expect(callFunction(SPLIT_MONEY, [100, [[1], [1], [1]]])).toEqual([
			[33.34],
			[33.33],
			[33.33],
		]);
		expect(callFunction(SPLIT_MONEY, [100, [[1, 1, 1]]])).toEqual([
			[33.34, 33.33, 33.33],
		]);
	});

	test("a blank share inside stays blank", () => {
		expect(callFunction(SPLIT_MONEY, [10, [[1], [""], [3]], 0])).toEqual([
			[3],
			[""],
			[7],
		]);
	});
});

test.each<[SheetFunction, unknown[], string]>([
	[PACKS_TO_BUY, [10, 0, 0], "pack must be above 0, got 0"],
	[PACKS_TO_BUY, [10, -1, 5], "on_hand must be 0 or more, got -1"],
	[
		PRICE_FOR_MARGIN,
		[10, 1],
		"margin must be between 0% and 100%, not 100%, got 100% (type 1% or 0.01)",
	],
	[
		PRICE_FOR_MARGIN,
		[10, 40],
		"margin must be between 0% and 100%, not 100%, got 4000% (type 40% or 0.4)",
	],
	[MARGIN_OF, [0, 10], "price must be above 0, got 0"],
	[
		SPLIT_MONEY,
		[10, [[1], [1]], 5],
		"decimals must be a whole number between 0 and 4, got 5",
	],
	[
		SPLIT_MONEY,
		[10, [[1], [1]], 1.5],
		"decimals must be a whole number between 0 and 4, got 1.5",
	],
	[SPLIT_MONEY, [10, [[1], [-1]]], "row 2: shares must be 0 or more, got -1"],
	[SPLIT_MONEY, [10, [[0], [0]]], "shares must not all be 0"],
	[SPLIT_MONEY, ["10", [[1]]], 'total must be a number, got "10"'],
])("refuses (%#)", (fn, args, sentence) => {
	expect(() => callFunction(fn, args)).toThrow(new InputError(sentence));
});
