import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { callFunction } from "../../src/functions/call";
import {
	CASTINGS,
	MIXER_LOADS,
	RESCALE_BATCH,
} from "../../src/functions/loads";

describe("CASTINGS", () => {
	test("a piece as often as its quantity says, none of 0, a blank row none", () => {
		expect(
			callFunction(CASTINGS, [
				[["Shelf"], [""], ["Bench"], ["Step"]],
				[[2], [""], [0], [1]],
				[[18], [""], [40], [9.5]],
			]),
		).toEqual([
			["Shelf", 18],
			["Shelf", 18],
			["Step", 9.5],
		]);
	});

	test.each<[unknown[], string]>([
		[
			[
				[["a"], ["b"]],
				[[1], [1.5]],
				[[5], [5]],
			],
			"row 2: quantities must be a whole number, 0 or more, got 1.5",
		],
		// The unit is whatever the masses are in, so none is named.
		[["a", 1, 0], "masses must be above 0, got 0"],
		[
			["a", 2001, 5],
			"quantities must be 2000 castings or less together, got 2001",
		],
	])("refuses %j", (args, sentence) => {
		expect(() => callFunction(CASTINGS, args)).toThrow(
			new InputError(sentence),
		);
	});
});

describe("MIXER_LOADS", () => {
	const castings = [
		["bar", 40],
		["vanity", 25],
		["basin", 30],
		["table", 20],
		["", ""],
	];

	test("by hand", () => {
		expect(callFunction(MIXER_LOADS, [castings, 60])).toEqual([
			[1, "bar", 40, 1],
			[1, "table", 20, 1],
			[2, "vanity", 25, 55 / 60],
			[2, "basin", 30, 55 / 60],
		]);
	});

	test("the same in pounds", () => {
		const rows = callFunction(MIXER_LOADS, [castings, 60, "us"]) as number[][];
		expect(rows.map(([load]) => load)).toEqual([1, 1, 2, 2]);
		expect(rows[2]?.[2]).toBeCloseTo(25, 12);
	});

	test.each([
		[
			[
				["b", 1],
				["a", -1],
			],
			60,
			"castings row 2: mass must be above 0 kg, got -1",
		],
		[
			[
				["a", 5],
				["", 6],
			],
			60,
			"castings row 2: name is blank",
		],
		[[["a", 0]], 60, "castings row 1: mass must be above 0 kg, got 0"],
		[[["a", 5]], 0, "capacity must be above 0 kg, got 0"],
		[[["", ""]], 60, "castings is blank"],
		[
			[["slab", 70_000]],
			60,
			'castings: "slab" would take 1167 loads of its own',
		],
		[
			[["slab", 40]],
			5e-324,
			"capacity is too small to calculate with, got 5e-324",
		],
	])("refuses %j with %s", (rows, capacity, message) => {
		expect(() => callFunction(MIXER_LOADS, [rows, capacity])).toThrow(message);
	});
});

describe("RESCALE_BATCH", () => {
	test("keeps proportions when too much was weighed", () => {
		// 44 / 40 = 1.1 is more than 51 / 50 = 1.02
		expect(
			callFunction(RESCALE_BATCH, [
				[[50], [""], [40], [10], [0]],
				[[51], [""], [44], [""], [""]],
			]),
		).toEqual([[50 * 1.1], [""], [40 * 1.1], [10 * 1.1], [0]]);
	});

	test("leaves the plan where nothing is over it, and a row stays a row", () => {
		expect(callFunction(RESCALE_BATCH, [[[50, 40]], [[49, ""]]])).toEqual([
			[50, 40],
		]);
	});

	test.each([
		[
			[[50], [""], [0]],
			[[50], [""], [2]],
			"row 3: weighed must be blank where planned is 0, got 2",
		],
		[[[50], [""]], [[50], [5]], "row 2: planned is blank"],
		[[[50], [40]], [[50], [-1]], "row 2: weighed must be 0 or more, got -1"],
		[[[50], [40]], [[50], [""], [1]], "planned has 2 rows and weighed has 3"],
	])("refuses %j beside %j", (planned, weighed, message) => {
		expect(() => callFunction(RESCALE_BATCH, [planned, weighed])).toThrow(
			message,
		);
	});
});
