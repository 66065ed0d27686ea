/** What a cell gets of the takeoff functions: units, texts, columns, places in errors. Sizes are worked by hand. */
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { callFunction } from "../../src/functions/call";
import {
	PIECE_SIZE,
	PIECE_TAKEOFF,
	POLYGON_AREA,
	SLAB_VOLUME,
} from "../../src/functions/takeoff";

const close = (got: unknown, expected: readonly (readonly unknown[])[]) => {
	expect(got).toHaveLength(expected.length);
	expected.forEach((row, i) => {
		row.forEach((cell, j) => {
			const value = (got as unknown[][])[i]?.[j];
			if (typeof cell === "number") expect(value).toBeCloseTo(cell, 9);
			else expect(value).toBe(cell);
		});
	});
};

const refused = (work: () => unknown, sentence: string) =>
	expect(work).toThrow(new InputError(sentence));

describe("SLAB_VOLUME", () => {
	test("1 ft × 1 ft × 1 in is a twelfth of a cubic foot", () => {
		const args = [`1'`, 12, `1"`, "us"];
		expect(callFunction(SLAB_VOLUME, args)).toBeCloseTo(1 / 12, 12);
	});

	test("a column of lengths with one thickness: a volume beside each", () => {
		close(
			callFunction(SLAB_VOLUME, [
				[[1000], [""], ["2 m"], [""]],
				[[500], [""], [500], [""]],
				40,
			]),
			[[20], [""], [40]],
		);
	});

	test("a bad row is named, in the unit it is typed in", () => {
		refused(
			() => callFunction(SLAB_VOLUME, [[[96], [48], [0]], 24, 1.5, "us"]),
			"row 3: length must be above 0 in, got 0",
		);
	});
});

describe("POLYGON_AREA", () => {
	test("a room of 10 ft × 8 ft in feet and inches: 80 ft²", () => {
		const corners = [
			["0", "0"],
			[`10'`, "0"],
			[`10'`, `8'`],
			["0", `8'`],
			["0", "0"],
		];
		expect(callFunction(POLYGON_AREA, [corners, "us"])).toBeCloseTo(80, 9);
	});

	test("corners may lie left of and below zero", () => {
		const corners = [
			[-1000, -1000],
			[1000, -1000],
			[1000, 1000],
			[-1000, 1000],
		];
		expect(callFunction(POLYGON_AREA, [corners])).toBeCloseTo(4, 9);
	});

	test("rows are counted as they stand, blank ones too", () => {
		const crossing = [
			[0, 0],
			["", ""],
			[2000, 2000],
			[3000, 0],
			[0, 1000],
		];
		refused(
			() => callFunction(POLYGON_AREA, [crossing]),
			"points: the side of rows 1–3 and the side of rows 4–5 cross or touch",
		);
	});

	test.each<[unknown[][], string]>([
		[
			[
				[0, 0],
				[1000, ""],
				[0, 1000],
			],
			"row 2: Y is blank",
		],
		[
			[
				["x", "y"],
				[0, 0],
				[1000, 0],
				[0, 1000],
			],
			'row 1: X: "x" is not a length: type for example 2440, 8\' 1/2", 25 1/2 or 650 mm',
		],
		[
			[
				[0, 0],
				[1, 1],
			],
			"points must be at least 3 different corners, got 2",
		],
		[
			Array.from({ length: 2001 }, (_, i) => [i, i * i]),
			"points must be at most 2000 corners, got 2001",
		],
	])("refuses %j", (points, sentence) => {
		refused(() => callFunction(POLYGON_AREA, [points]), sentence);
	});
});

const B = "";
const ISLAND = ["Island", 2, "rectangle", 2000, 800, B, B, 40, B, B, B];
const takeoff = (pieces: unknown, cutouts?: unknown, units?: unknown) =>
	callFunction(PIECE_TAKEOFF, [pieces, cutouts, units]);

describe("PIECE_TAKEOFF", () => {
	test("one row per piece; a blank row inside stays blank", () => {
		const blank = Array(11).fill("");
		const bench = ["Bench", 1, "Rectangle ", 1000, 400, B, B, 50, B, B, B];
		close(takeoff([ISLAND, blank, bench, blank]), [
			[1.6, 5600, 64, 1.824, 128],
			["", "", "", "", ""],
			// 0.4; 2.8 m; 20 L; 0.4 + 2.8 × 0.05.
			[0.4, 2800, 20, 0.54, 20],
		]);
	});

	test("in feet and inches: 8' × 2' × 1 1/2\": 16 ft², 240 in, 2 ft³, 16 + 20/8 ft²", () => {
		const top = ["Top", 1, "rectangle", `8'`, `2'`, B, B, "1 1/2", B, B, B];
		close(takeoff([top], "", "us"), [[16, 240, 2, 18.5, 2]]);
	});

	test("A of an area is in square feet, and never a length text", () => {
		const free = ["Free", 1, "area", 20, 240, B, B, 1.5, B, B, B];
		close(takeoff([free], "", "us"), [[20, 240, 2.5, 22.5, 2.5]]);
		const text = ["Free", 1, "area", `20'`, 240, B, B, 1.5, B, B, B];
		refused(
			() => takeoff([text], "", "us"),
			`row 1: A must be a number, got "20'"`,
		);
		const comma = ["Free", 1, "area", "2,440", 240, B, B, 1.5, B, B, B];
		refused(
			() => takeoff([comma], "", "us"),
			'row 1: A: "2,440" can be read in two ways: type 2440 or 2.440',
		);
	});

	test("drop edge of 3 in along 8 ft, as thick as the slab: + 2 ft² and 0.25 ft³", () => {
		const top = ["Top", 1, "rectangle", 96, 24, B, B, 1.5, 3, 96, B];
		close(takeoff([top], "", "us"), [[16, 240, 2.25, 20.5, 2.25]]);
	});

	test("cutouts of a piece by name, its count each", () => {
		const cutouts = [
			["ISLAND", 1, "rectangle", 500, 400],
			["", "", "", "", ""],
			["island", 2, "round", 100, ""],
		];
		const face = 1.4 - 2 * Math.PI * 0.0025;
		const edge = 7.4 + 2 * Math.PI * 0.1;
		close(takeoff([ISLAND], cutouts), [
			[face, 1000 * edge, 40 * face, face + 0.04 * edge, 80 * face],
		]);
	});

	test("trailing columns may be left out", () => {
		const short = ["Top", 1, "round", 1000, B, B, B, 40];
		close(takeoff([short]), [
			[Math.PI / 4, 1000 * Math.PI, 10 * Math.PI, 0.29 * Math.PI, 10 * Math.PI],
		]);
	});

	const row = (more: Record<number, unknown>) =>
		ISLAND.map((cell, index) => more[index] ?? cell);
	test.each<[string, unknown[], string]>([
		[
			"quantity",
			row({ 0: "B", 1: 1.5 }),
			"row 2: quantity must be a whole number, 0 or more, got 1.5",
		],
		[
			"shape",
			row({ 0: "B", 2: "square" }),
			'row 2: shape must be one of rectangle, round, oval, L, U, basin, tube, area, got "square"',
		],
		[
			"thickness",
			row({ 0: "B", 7: -20 }),
			"row 2: thickness must be above 0 mm, got -20",
		],
		["A", row({ 0: "B", 3: 0 }), "row 2: A must be above 0 mm, got 0"],
		[
			"C",
			row({ 0: "B", 5: 300 }),
			"row 2: C must be blank: rectangle has no C",
		],
		["name", row({}), 'row 2: name must be unique, "Island" is in row 1 too'],
		[
			"drop run",
			row({ 0: "B", 8: 60 }),
			"row 2: drop run is blank and drop height is not",
		],
		[
			"notch",
			row({ 0: "B", 2: "L", 5: 2500, 6: 100 }),
			"row 2: C must be below A (2000 mm), got 2500 mm",
		],
		[
			"too many columns",
			[...ISLAND, 1],
			"row 2: pieces must have at most 11 columns, got 12",
		],
	])("a wrong %s is told with its row", (_, bad, sentence) => {
		refused(() => takeoff([ISLAND, bad]), sentence);
	});

	test.each<[string, unknown[], string]>([
		[
			"piece",
			["Bench", 1, "round", 100, ""],
			'cutouts row 2: piece "Bench" is not in pieces',
		],
		[
			"count",
			["Island", 0, "round", 100, ""],
			"cutouts row 2: count must be a whole number, 1 or more, got 0",
		],
		[
			"size",
			["Island", 1, "rectangle", 900, 850],
			'cutouts row 2: 900 mm × 850 mm does not fit in "Island" (2000 mm × 800 mm)',
		],
		[
			"shape",
			["Island", 1, "L", 100, 100],
			'cutouts row 2: shape must be one of rectangle, round, oval, got "L"',
		],
		[
			"dimension",
			["Island", 1, "round", 100, 100],
			"cutouts row 2: B must be blank: round has no B",
		],
	])("a cutout's wrong %s is told with its row", (_, bad, sentence) => {
		const good = ["Island", 1, "round", 35, ""];
		refused(() => takeoff([ISLAND], [good, bad]), sentence);
	});

	test("sizes in errors are in inches where the table is", () => {
		const top = ["Top", 1, "basin", 20, 15, 1, B, 1.5, B, B, B];
		refused(
			() => takeoff([top], "", "us"),
			"row 1: thickness must be below C (1 in), got 1.5 in",
		);
	});
});

describe("PIECE_SIZE", () => {
	const size = (piece: readonly unknown[], units = "metric") =>
		callFunction(PIECE_SIZE, [[piece], units]);
	test.each<[string, unknown[], unknown[]]>([
		["the longer of A and B", ISLAND, [2000, ""]],
		[
			"a notch is no side",
			[...ISLAND.slice(0, 2), "L", 900, 700, 800, 500, 40],
			[900, ""],
		],
		[
			"a basin's height counts",
			["Trough", 1, "basin", 500, 400, 620, B, 25],
			[620, ""],
		],
		["a tube's too", ["Pot", 1, "tube", 300, B, 450, B, 25], [450, ""]],
		[
			"nobody knows an area's",
			["Free", 1, "area", 1.5, 5000, B, B, 40],
			["", ""],
		],
		// 60 mm below the slab and its 40 mm.
		[
			"a drop edge is seen with the slab",
			[...ISLAND.slice(0, 8), 60, 2000],
			[2000, 100],
		],
		[
			"as thick as it may be itself",
			[...ISLAND.slice(0, 8), 60, 2000, 20],
			[2000, 100],
		],
	])("%s", (_, piece, expected) => {
		close(size(piece), [expected]);
	});

	test("in inches: 8 ft, and 3 in below 1 1/2 in", () => {
		const top = ["Top", 1, "rectangle", `8'`, `2'`, B, B, "1 1/2", 3, 96];
		close(size(top, "us"), [[96, 4.5]]);
	});
});
