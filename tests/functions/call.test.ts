import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import {
	length,
	list,
	mass,
	share,
	table,
	text,
	units,
	word,
} from "../../src/functions/arguments";
import { callFunction } from "../../src/functions/call";
import { sheetFunction } from "../../src/functions/declare";

const shared = {
	group: "Test",
	summary: "For this test.",
	source: "hand",
	example: { shown: [], values: [], answer: 0, working: "none" },
};

const SCALED = sheetFunction({
	...shared,
	name: "SCALED",
	params: {
		mass: mass("Mass"),
		length: length("Length"),
		waste: share("Waste", { blank: 0.5 }),
		units: units(),
	},
	answer: { text: "product", unit: "mass" },
	compute: ({ mass, length, waste }) => mass * length * (1 + waste),
});

const PARTS = sheetFunction({
	...shared,
	name: "PARTS",
	params: {
		parts: list(mass("Parts")),
		binder_share: list(share("Binder share", { blank: 0 })),
		factor: mass("Factor", { blank: 2 }),
		units: units(),
	},
	answer: { shape: "column", text: "shares", beside: "parts" },
	compute: ({ parts, binder_share, factor }) =>
		parts.map((part, index) => part * factor + (binder_share[index] ?? 0)),
});

const PIECES = sheetFunction({
	...shared,
	name: "PIECES",
	params: {
		pieces: table("Pieces", {
			name: text("Name"),
			shape: word(["round", "oval", "L"], "Shape"),
			dropHeight: length("Drop height", { optional: true }),
		}),
		units: units(),
	},
	answer: {
		shape: "table",
		text: "rows",
		columns: [{ text: "row" }, { text: "drop", unit: "length" }],
		beside: "pieces",
	},
	compute: ({ pieces }) =>
		pieces.map(({ row, dropHeight }) => [row, dropHeight]),
});

const HUGE = sheetFunction({
	...shared,
	name: "HUGE",
	params: { mass: mass("Mass") },
	answer: { text: "fourth power" },
	compute: ({ mass }) => mass ** 4,
});

const refuses = (work: () => unknown, sentence: string) => {
	expect(work).toThrow(InputError);
	expect(work).toThrow(sentence);
};

describe("scalars and columns", () => {
	test("a blank optional argument, in the middle too, is its default", () => {
		// 2 kg × 1 m × 1.5
		expect(callFunction(SCALED, [2, 1000])).toBe(3);
		expect(callFunction(SCALED, [2, 1000, "", "metric"])).toBe(3);
	});
	test("units convert at the edge: 2 lb × 1 in is 2 lb × 0.0254 m", () => {
		expect(callFunction(SCALED, [2, 1, 0, "US "])).toBeCloseTo(0.0508, 12);
	});
	test("a column answers a column; scalars repeat; a row does as well", () => {
		const column = [[1], [2], [4]];
		expect(callFunction(SCALED, [column, 1000, 0])).toEqual(column);
		expect(callFunction(SCALED, [[[1, 2, 4]], 1000, 0])).toEqual(column);
	});
	test("trailing blank rows are trimmed, one inside stays blank", () => {
		expect(callFunction(SCALED, [[[1], [""], [3], [""]], 1000, 0])).toEqual([
			[1],
			[""],
			[3],
		]);
	});
	test("a row blank in some but not all required columns is an error", () => {
		refuses(
			() =>
				callFunction(SCALED, [
					[[1], [2]],
					[[1000], [""]],
				]),
			"row 2: length is blank",
		);
	});
	test("a default filled in beside a blank row is no mistake", () => {
		expect(callFunction(SCALED, [[[1], [""]], 1000, [[0], [0.1]]])).toEqual([
			[1],
			[""],
		]);
	});
	test("sizes are compared before trimming", () => {
		refuses(
			() =>
				callFunction(SCALED, [
					[[1], [2], [""]],
					[[1], [2]],
				]),
			"mass has 3 rows and length has 2: they must be of one size",
		);
	});
	test("one bad row fails the whole call, naming the row and the typed unit", () => {
		refuses(
			() =>
				callFunction(SCALED, [
					[[1], [2], [3]],
					[["1"], [2], ["-20 mm"]],
				]),
			'row 3: length must be above 0 mm, got "-20 mm"',
		);
		refuses(
			() => callFunction(SCALED, [[[1], [-2]], 1, 0, "us"]),
			"row 2: mass must be above 0 lb, got -2",
		);
	});
	test.each([
		[
			[1, 2, 8],
			"waste must be between 0% and 100%, got 800% (type 8% or 0.08)",
		],
		[[1, 2, -1], "waste must be between 0% and 100%, got -100%"],
		[["1", 2], 'mass must be a number, got "1"'],
		[[true, 2], "mass must be a number, got TRUE"],
		[[new Date(), 2], "mass must be a number, got a date"],
		[["#DIV/0!", 2], "mass is an error cell (#DIV/0!)"],
		[["", 2], "mass is blank"],
		[[1], "length is blank"],
		[[1, 2, 0, "imperial"], 'units must be metric or us, got "imperial"'],
		[[1, 2, 0, "us", 5], "SCALED takes at most 4 arguments, got 5"],
		[
			[
				[
					[1, 2],
					[3, 4],
				],
				2,
			],
			"mass must be one value, column or row, got 2 × 2 cells",
		],
	])("%j: %s", (args, sentence) => {
		refuses(() => callFunction(SCALED, args), sentence);
	});
	test("numbers too large to calculate with are a sentence, not Infinity", () => {
		refuses(
			() => callFunction(HUGE, [1e300]),
			"mass is too large to calculate with, got 1e+300",
		);
		// (10⁹⁰)⁴ is more than a number can hold, 1.8 × 10³⁰⁸.
		refuses(
			() => callFunction(HUGE, [1e90]),
			"these numbers are too large or too small to calculate with",
		);
	});
});

describe("columns that belong together", () => {
	test("a blank row stays beside its inputs", () => {
		expect(
			callFunction(PARTS, [
				[[1], [""], [3], [""]],
				[[0.5], [""], [""], [""]],
			]),
		).toEqual([[2.5], [""], [6]]);
	});
	test("the answer of one row is a value", () => {
		expect(callFunction(PARTS, [1, 0.5])).toBe(2.5);
	});
	test("a whole blank range answers blank, a blank cell is an error", () => {
		expect(
			callFunction(PARTS, [
				[[""], [""]],
				[[""], [""]],
			]),
		).toBe("");
		refuses(() => callFunction(PARTS, ["", 0.5]), "parts is blank");
	});
	test("different sizes name both", () => {
		refuses(
			() =>
				callFunction(PARTS, [
					[[1], [2]],
					[[0.1], [0.1], [0.1]],
				]),
			"parts has 2 rows and binder_share has 3",
		);
	});
	test("a scalar of a function that answers a column must be one value", () => {
		refuses(
			() => callFunction(PARTS, [[[1], [2]], 0, [[1], [2]]]),
			"factor must be one value, got 2 × 1 cells",
		);
	});
});

describe("tables", () => {
	test("rows know their place; missing columns at the end are blank", () => {
		expect(
			callFunction(PIECES, [
				[
					["a", "round"],
					["", ""],
					["b", " OVAL "],
				],
			]),
		).toEqual([
			[1, ""],
			["", ""],
			[3, ""],
		]);
	});
	test("an unknown word lists the allowed ones", () => {
		refuses(
			() =>
				callFunction(PIECES, [
					[
						["a", "round", ""],
						["b", "circle", ""],
					],
				]),
			'row 2: shape must be one of round, oval, L, got "circle"',
		);
	});
	test.each([
		[true, "TRUE"],
		[new Date(2026, 2, 4), "a date"],
	])("%s is no name", (cell, words) => {
		refuses(
			() => callFunction(PIECES, [[[cell, "round"]]]),
			`row 1: name must be text, got ${words}`,
		);
	});
	test("a number is a name", () => {
		expect(callFunction(PIECES, [[[7, "round"]]])).toEqual([[1, ""]]);
	});
	test("columns are named as a person reads them", () => {
		refuses(
			() => callFunction(PIECES, [[["a", "round", -1]]]),
			"drop height must be above 0 mm, got -1",
		);
	});
	test("too many columns is an error", () => {
		refuses(
			() => callFunction(PIECES, [[["a", "round", 1, 2]]]),
			"pieces must have at most 3 columns, got 4",
		);
	});
});
