import { describe, expect, test } from "vitest";
import { delimitedRows } from "../../../src/sidebar/newjob/delimited";
import type { PieceRow } from "../../../src/sidebar/newjob/form";
import { pastedRows } from "../../../src/sidebar/newjob/paste";

/** What is filled in a piece, its key left out. */
const filled = ({ key, ...fields }: PieceRow): Record<string, string> =>
	Object.fromEntries(Object.entries(fields).filter(([, typed]) => typed));

const piecesOf = (text: string) => pastedRows(text).pieces.map(filled);

describe("rows of cells", () => {
	test.each([
		[
			"a\tb\nc\td",
			[
				["a", "b"],
				["c", "d"],
			],
		],
		[
			"a,b\r\nc,d\r\n",
			[
				["a", "b"],
				["c", "d"],
			],
		],
		["a;2,5;c", [["a", "2,5", "c"]]],
		["a\t2,5 m", [["a", "2,5 m"]]],
		['"Bar, long",2', [["Bar, long", "2"]]],
		['"two\nlines"\t2', [["two\nlines", "2"]]],
		// A spreadsheet doubles a quote inside quotes.
		['Top,"8\' 1/2""",2', [["Top", "8' 1/2\"", "2"]]],
		// Copied inches stand without quotes around them.
		['Top\t25 1/2"\t2"', [["Top", '25 1/2"', '2"']]],
		["a,,c", [["a", "", "c"]]],
		["\n\na,b\n , \n", [["a", "b"]]],
		["", []],
	])("%j", (text, rows) => {
		expect(delimitedRows(text)).toEqual(rows);
	});
});

describe("pieces without a header", () => {
	test("name, quantity, length, width, thickness is a rectangle", () => {
		expect(piecesOf("Bar\t2\t2400\t650\t40")).toEqual([
			{
				name: "Bar",
				quantity: "2",
				shape: "rectangle",
				a: "2400",
				b: "650",
				thickness: "40",
			},
		]);
	});

	test("the columns of PIECE_TAKEOFF as they stand in its table", () => {
		expect(
			piecesOf("Bar\t1\tL\t2400\t1800\t1800\t1200\t40\t60\t4200\t30"),
		).toEqual([
			{
				name: "Bar",
				quantity: "1",
				shape: "L",
				a: "2400",
				b: "1800",
				c: "1800",
				d: "1200",
				thickness: "40",
				dropHeight: "60",
				dropRun: "4200",
				dropThickness: "30",
			},
		]);
	});

	test.each([
		["Table,1,round,900,40", { a: "900", thickness: "40" }],
		["Table,1,Round,900,,,,40", { a: "900", thickness: "40" }],
		["Bar,1,rectangle,900,600,40", { a: "900", b: "600", thickness: "40" }],
		["Pot,1,tube,400,600,30", { a: "400", c: "600", thickness: "30" }],
		["Sink,1,basin,600,400,150,25", { a: "600", c: "150", thickness: "25" }],
	])("dimensions close up or in their columns: %s", (text, expected) => {
		expect(piecesOf(text)[0]).toMatchObject(expected);
	});

	test("feet, inches and fractions stay as they were written", () => {
		expect(piecesOf('Bar\t1\t8\' 1/2"\t25½"\t1-1/2"')[0]).toMatchObject({
			a: "8' 1/2\"",
			b: '25½"',
			thickness: '1-1/2"',
		});
	});

	test("a word that is no shape stays, so that its mistake can be seen", () => {
		expect(piecesOf("Star,1,star,900,900,40")[0]).toMatchObject({
			shape: "star",
		});
	});

	test.each([
		["2400,650,40", 'row 1 begins with "2400"'],
		["Bar,1,2400,650,40\n3,Top,900,600,40", 'row 2 begins with "3"'],
		["Bar,1,2400,650,40,60,20", "row 1 has more than 5 columns"],
		["Bar,1,L,1,2,3,4,5,6,7,8,9", "row 1 has more than 11 columns"],
		["  \n ", "there are no rows"],
	])("%j cannot be told apart", (text, mistake) => {
		const pasted = pastedRows(text);
		expect(pasted.mistake).toContain(mistake);
		expect(pasted.pieces).toEqual([]);
	});
});

describe("pieces under a header", () => {
	test("in any order, quantity 1 where there is no such column", () => {
		expect(
			piecesOf("Thickness\tWidth\tPiece\tLength\n40\t650\tBar\t2400"),
		).toEqual([
			{
				name: "Bar",
				quantity: "1",
				shape: "rectangle",
				a: "2400",
				b: "650",
				thickness: "40",
			},
		]);
	});

	test("a unit in the header goes to bare numbers below it", () => {
		expect(
			piecesOf(
				"Name,Qty,Length (in),Width [in],Thickness in\nBar,1,96 1/2,25.5,4 cm",
			),
		).toMatchObject([{ a: "96 1/2 in", b: "25.5 in", thickness: "4 cm" }]);
	});

	test("columns that no field goes by are named", () => {
		const { unused } = pastedRows(
			"Name,Qty,Color,Length,Width,Thickness\nBar,1,gray,2400,650,40",
		);
		expect(unused).toEqual(["Color"]);
	});

	test("a header alone is no job", () => {
		expect(pastedRows("Name,Length,Width").mistake).toContain("no rows");
	});

	test("a blank quantity under its header stays blank, to be asked for", () => {
		expect(piecesOf("Name,Qty,Length\nBar,,2400")[0]).not.toHaveProperty(
			"quantity",
		);
	});
});

describe("cutouts under a header", () => {
	const cutoutsOf = (text: string) =>
		pastedRows(text).cutouts.map(({ key, ...fields }) =>
			Object.fromEntries(Object.entries(fields).filter(([, typed]) => typed)),
		);

	test("headings of a cutout's fields, units in the header", () => {
		const text =
			"In piece\tEach\tShape\tA\tB\tLeft side to center (cm)\tStrip before it\nBar\t1\trect\t480\t390\t140\t130\nVanity\t3\tround\t35\t\t49\t420";
		expect(cutoutsOf(text)).toEqual([
			{
				piece: "Bar",
				count: "1",
				shape: "rectangle",
				a: "480",
				b: "390",
				left: "140 cm",
				front: "130",
			},
			{
				piece: "Vanity",
				count: "3",
				shape: "round",
				a: "35",
				left: "49 cm",
				front: "420",
			},
		]);
		expect(pastedRows(text).pieces).toEqual([]);
	});

	test("other words for the place, the count and shape that a new one has", () => {
		expect(
			cutoutsOf(
				"piece,length,width,from left,from front,spread\nBar,4,4,9,2,8",
			),
		).toEqual([
			{
				piece: "Bar",
				count: "1",
				shape: "rectangle",
				a: "4",
				b: "4",
				left: "9",
				front: "2",
				spacing: "8",
			},
		]);
	});

	test("a header of pieces still heads pieces", () => {
		expect(
			pastedRows("piece,length,width,thickness\nBar,2400,650,40").cutouts,
		).toEqual([]);
	});
});
