/** What a cell passes to a function and takes from it; the rules are those of developers.google.com/apps-script/guides/sheets/functions. */
import { describe, expect, it } from "vitest";
import type { Desk } from "../../src/desk/desk";
import { open } from "./open";

const SEEN = `
function tell(v) {
	if (v instanceof Date) return "date " + v.getFullYear() + "-" + (v.getMonth() + 1) + "-" + v.getDate();
	if (v instanceof Array) return "[" + v.map(tell).join(",") + "]";
	return v === undefined ? "undefined" : typeof v === "string" ? JSON.stringify(v) : typeof v + " " + v;
}
function SEEN() { return Array.prototype.map.call(arguments, tell).join(" | ") + " (" + arguments.length + ")"; }
function FAIL(text) { throw new Error(text); }
function FAIL_TEXT(text) { throw text; }
`;

async function calculated(desk: Desk, formula: string): Promise<unknown> {
	desk.type("Sheet1", "F1", formula);
	await desk.settle();
	return desk.read("Sheet1", "F1")[0]?.[0];
}

describe("arguments", () => {
	it.each([
		["one cell is its value", "=SEEN(A1)", "number 5 (1)"],
		[
			"a range is rows",
			"=SEEN(A1:B2)",
			'[[number 5,"x"],["",boolean true]] (1)',
		],
		["one row is rows too", "=SEEN(A1:B1)", '[[number 5,"x"]] (1)'],
		["one column is rows too", "=SEEN(A1:A2)", '[[number 5],[""]] (1)'],
		["a blank cell is an empty text", "=SEEN(A2)", '"" (1)'],
		["skipped is an empty text", "=SEEN(1,,2)", 'number 1 | "" | number 2 (3)'],
		["left out is absent", "=SEEN(1)", "number 1 (1)"],
		["none", "=SEEN()", " (0)"],
		["a percent is a share", "=SEEN(A3)", "number 0.04 (1)"],
		["a date cell is a date", "=SEEN(A4)", "date 2027-3-9 (1)"],
		[
			"dates in a range too",
			"=SEEN(A3:A4)",
			"[[number 0.04],[date 2027-3-9]] (1)",
		],
		["text that looks like a number is text", "=SEEN(A5)", '"007" (1)'],
		["an error cell is its text", "=SEEN(A6)", '"#DIV/0!" (1)'],
		["an inner failure is its text", '=SEEN(FAIL("x"))', '"#ERROR!" (1)'],
		["a named range is its cells", "=SEEN(TOTALS)", '[[number 5,"x"]] (1)'],
		[
			"whole arrays in ARRAYFORMULA",
			"=ARRAYFORMULA(SEEN(A1:A2))",
			'[[number 5],[""]] (1)',
		],
		[
			"an open end reaches the last row",
			"=SEEN(D48:D)",
			'[[""],[""],[""]] (1)',
		],
	])("%s", async (_, formula, told) => {
		const desk = await open(
			`${SEEN}function prepare() {
				var s = SpreadsheetApp.getActive().getSheets()[0];
				s.deleteRows(51, 950);
				s.getRange("A1:B2").setValues([[5, "x"], ["", true]]);
				s.getRange("A3").setValue("4%");
				s.getRange("A4").setValue("2027-03-09");
				s.getRange("A5").setValue("'007");
				s.getRange("A6").setFormula("=1/0");
				SpreadsheetApp.getActive().setNamedRange("TOTALS", s.getRange("A1:B1"));
			}`,
		);
		await desk.call("prepare");
		expect(await calculated(desk, formula)).toBe(told);
	});
});

describe("answers", () => {
	const answers = async (answer: string) => {
		const desk = await open(`function GIVE() { return ${answer}; }`);
		desk.type("Sheet1", "A1", "=GIVE()");
		await desk.settle();
		return desk;
	};

	it.each([
		[
			"a number",
			"1.5",
			[
				[1.5, ""],
				["", ""],
			],
		],
		[
			"a text",
			"'x'",
			[
				["x", ""],
				["", ""],
			],
		],
		[
			"a truth value",
			"true",
			[
				[true, ""],
				["", ""],
			],
		],
		[
			"nothing",
			"undefined",
			[
				["", ""],
				["", ""],
			],
		],
		[
			"null",
			"null",
			[
				["", ""],
				["", ""],
			],
		],
		[
			"a list goes down",
			"[1, 2]",
			[
				[1, ""],
				[2, ""],
			],
		],
		[
			"rows spill",
			"[[1, 'a'], [2, 'b']]",
			[
				[1, "a"],
				[2, "b"],
			],
		],
		[
			"NaN",
			"0 / 0",
			[
				["#NUM!", ""],
				["", ""],
			],
		],
		[
			"infinity",
			"1 / 0",
			[
				["#NUM!", ""],
				["", ""],
			],
		],
	])("%s", async (_, answer, shown) =>
		expect((await answers(answer)).read("Sheet1", "A1:B2")).toEqual(shown),
	);

	it.each([
		["an empty list", "[]", "GIVE answered an empty array"],
		["an empty row", "[[]]", "GIVE answered an empty array"],
		[
			"rows of different lengths",
			"[[1], [1, 2]]",
			"GIVE answered rows of different lengths",
		],
		["an object", "({})", "GIVE answered object, which no cell can hold"],
		[
			"a function",
			"(() => 1)",
			"GIVE answered function, which no cell can hold",
		],
		["a BigInt", "BigInt(1)", "GIVE answered bigint, which no cell can hold"],
		[
			"too long a text",
			"'x'.repeat(50001)",
			"Text result of GIVE is longer than the limit of 50000 characters.",
		],
	])("%s fails", async (_, answer, message) =>
		expect((await answers(answer)).errorAt("Sheet1", "A1")).toEqual({
			tab: "Sheet1",
			cell: "A1",
			shown: "#ERROR!",
			message,
		}),
	);

	it("a date keeps its day", async () => {
		const desk = await open("function GIVE() { return new Date(2027, 2, 9); }");
		desk.type("Sheet1", "A1", '=TEXT(GIVE(),"yyyy-mm-dd")');
		await desk.settle();
		expect(desk.read("Sheet1", "A1")).toEqual([["2027-03-09"]]);
	});
});

describe("errors", () => {
	it("a thrown error and a thrown text show #ERROR! and keep their sentence", async () => {
		const desk = await open(SEEN);
		expect(await calculated(desk, '=FAIL("too wet")')).toBe("#ERROR!");
		expect(desk.errorAt("Sheet1", "F1")?.message).toBe("too wet");
		expect(await calculated(desk, '=FAIL_TEXT("too dry")')).toBe("#ERROR!");
		expect(desk.errors()).toEqual([
			{ tab: "Sheet1", cell: "F1", shown: "#ERROR!", message: "too dry" },
		]);
	});

	it("IFERROR catches it, and then nothing is wrong", async () => {
		const desk = await open(SEEN);
		expect(await calculated(desk, '=IFERROR(FAIL("x"),"caught")')).toBe(
			"caught",
		);
		expect(desk.errors()).toEqual([]);
	});

	it("the sentence goes when the cause goes", async () => {
		const desk = await open(
			"function POSITIVE(x) { if (x <= 0) throw new Error('x must be above 0'); return x; }",
		);
		desk.type("Sheet1", "A1", "-1");
		expect(await calculated(desk, "=POSITIVE(A1)")).toBe("#ERROR!");
		desk.type("Sheet1", "A1", "2");
		await desk.settle();
		expect(desk.read("Sheet1", "F1")).toEqual([[2]]);
		expect(desk.errorAt("Sheet1", "F1")).toBeUndefined();
	});

	it("a text that looks like an error is no error", async () => {
		const desk = await open(SEEN);
		desk.type("Sheet1", "A1", "'#REF!");
		await desk.settle();
		expect(desk.errors()).toEqual([]);
	});
});

describe("spills", () => {
	const ROWS =
		"function ROWS_TO(n) { return Array.from({ length: n }, (_, i) => [i + 1]); }";

	it("one that finds a cell in its way is #REF!, and recovers when the cell is cleared", async () => {
		const desk = await open(ROWS);
		desk.type("Sheet1", "A1", "=ROWS_TO(3)");
		desk.type("Sheet1", "A2", "mine");
		desk.type("Sheet1", "B1", "=SUM(A1:A9)");
		await desk.settle();
		expect(desk.read("Sheet1", "A1:B3")).toEqual([
			["#REF!", "#REF!"],
			["mine", ""],
			["", ""],
		]);
		desk.type("Sheet1", "A2", "");
		await desk.settle();
		// 1 + 2 + 3
		expect(desk.read("Sheet1", "A1:B3")).toEqual([
			[1, 6],
			[2, ""],
			[3, ""],
		]);
	});

	it("one that shrinks leaves nothing behind", async () => {
		const desk = await open(ROWS);
		desk.type("Sheet1", "C1", "4");
		desk.type("Sheet1", "A1", "=ROWS_TO(C1)");
		desk.type("Sheet1", "B1", "=SUM(A1:A9)");
		await desk.settle();
		expect(desk.read("Sheet1", "B1")).toEqual([[10]]);
		desk.type("Sheet1", "C1", "2");
		await desk.settle();
		expect(desk.read("Sheet1", "A1:B4")).toEqual([
			[1, 3],
			[2, ""],
			["", ""],
			["", ""],
		]);
	});
});

describe("calls", () => {
	it("are counted once a cell, however many passes settling takes", async () => {
		const desk = await open("function TWICE(x) { return [[2 * x], [x]]; }");
		desk.type("Sheet1", "A1", "1");
		desk.type("Sheet1", "B1", "=TWICE(A1)");
		desk.type("Sheet1", "C1", "=TWICE(B2)");
		await desk.settle();
		desk.resetCounts();
		desk.type("Sheet1", "D1", "7");
		await desk.settle();
		// answers are forgotten with the count: a whole recalculation calls each formula once
		expect(desk.counts().functions).toBe(2);
		desk.type("Sheet1", "D1", "8");
		await desk.settle();
		expect(desk.counts().functions).toBe(2);
	});

	it("give #NAME? until a menu function has run in the file", async () => {
		const desk = await open(
			"function onOpen() { SpreadsheetApp.getUi().createAddonMenu().addItem('Use here', 'useHere').addToUi(); }\nfunction useHere() {}\nfunction ONE() { return 1; }",
			{ enabled: false },
		);
		desk.type("Sheet1", "A1", "=ONE()");
		await desk.settle();
		expect(desk.read("Sheet1", "A1")).toEqual([["#NAME?"]]);
		await desk.choose("Use here");
		expect(desk.read("Sheet1", "A1")).toEqual([[1]]);
	});

	it("of private functions are unknown", async () => {
		const desk = await open("function HIDDEN_() { return 1; }");
		desk.type("Sheet1", "A1", "=HIDDEN_()");
		await desk.settle();
		expect(desk.read("Sheet1", "A1")).toEqual([["#NAME?"]]);
	});
});

describe("functions that would load for ever", () => {
	const CODE = "function TWICE(x) { return [[2 * x], [x]]; }";

	it.each([
		["directly", [["A1", "=TWICE(TODAY())"]], "A1"],
		[
			"through a cell",
			[
				["A1", "=TODAY()+1"],
				["B1", "=TWICE(A1)"],
			],
			"B1",
		],
		[
			"through a spill",
			[
				["A1", "=SEQUENCE(3,1,TODAY())"],
				["B1", "=TWICE(A3)"],
			],
			"B1",
		],
		[
			"through another tab's range",
			[
				["A1", "=TODAY()"],
				["B1", "=SUM(Sheet1!A1:A2)"],
				["C1", "=TWICE(B1)"],
			],
			"C1",
		],
	])("are told of, %s", async (_, formulas, cell) => {
		const desk = await open(CODE);
		for (const [at = "", formula = ""] of formulas)
			desk.type("Sheet1", at, formula);
		await desk.settle();
		const where = formulas[0]?.[0];
		expect(desk.errors()).toEqual([
			{
				tab: "Sheet1",
				cell,
				shown: "Loading...",
				message: `a custom function cannot depend on TODAY (Sheet1!${where})`,
			},
		]);
	});

	it("are not those that do not read it", async () => {
		const desk = await open(CODE);
		desk.type("Sheet1", "A1", "=TODAY()");
		desk.type("Sheet1", "B1", "=TWICE(C1)");
		desk.type("Sheet1", "B4", '=TWICE(LEN("TODAY() A1"))');
		await desk.settle();
		expect(desk.errors()).toEqual([]);
	});
});
