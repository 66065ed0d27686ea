/**
 * Random edits of a workbook full of spills: after each settling the live workbook equals one opened fresh with the
 * same inputs, and the numbers equal a model in plain JavaScript.
 */
import { expect, it } from "vitest";
import type { CellValue, Desk } from "../../src/desk/desk";
import { close, open } from "./open";

const CODE = `
function TO_N(n, step) {
	if (n > 8) throw new Error("too many");
	return Array.from({ length: Math.max(1, n) }, function (_, i) { return [i + 1, "r" + i, (i + 1) * step]; });
}
function TOTAL(rows, k) {
	return [].concat.apply([], rows).reduce(function (sum, v) { return sum + (typeof v === "number" ? v : 0); }, 0) * k;
}
function prepare() {
	var ss = SpreadsheetApp.getActive(), s = ss.getSheets()[0], t = ss.insertSheet("T", 1), u = ss.insertSheet("U", 2);
	[s, t, u].forEach(function (sheet) { sheet.deleteRows(41, 960); sheet.deleteColumns(17, 10); });
	s.getRange("C1:C8").setFormulas([1, 2, 3, 4, 5, 6, 7, 8].map(function (r) { return ["=A" + r + "*B" + r]; }));
	s.getRange("C9").setFormula("=SUM(C1:C8)");
	ss.setNamedRange("SUM_ALL", s.getRange("C9"));
	t.getRange("A1").setFormula("=TO_N(Sheet1!A10;Sheet1!B10)");
	t.getRange("E1:E4").setFormulas([["=SUM(A1:C12)"], ["=IFERROR(INDEX(A1:A12;4);-1)"], ["=COUNTA(B1:B12)"], ["=TOTAL(A1:C12;SUM_ALL)"]]);
	t.getRange("G1").setFormula('=FILTER(Sheet1!A1:C8;Sheet1!D1:D8="a")');
	t.getRange("K1").setFormula("=SUM(I1:I10)");
	t.getRange("K3").setFormula("=ARRAYFORMULA(Sheet1!A1:A8*Sheet1!B1:B8)");
	t.getRange("L1").setFormula("=SUM(K3:K10)-SUM_ALL");
	u.getRange("A1:A3").setFormulas([["=T!E1+T!E4"], ['=SUMIF(Sheet1!D1:D8;"b";Sheet1!C1:C8)'], ['=IF(T!E2>0;TO_N(T!E2;1);"none")']]);
	u.getRange("E1:E4").setFormulas([["=SUM(A3:C12)"], ["=TOTAL(T!G1:I10;2)"], ["=LET(x;SUM(T!A1:A12);IF(x>10;x;SUM_ALL))"], ["=UNIQUE(Sheet1!D1:D8)"]]);
	u.getRange("G4").setFormula("=COUNTA(E4:E9)");
}`;

type Inputs = Record<string, string>;

/** A repeatable sequence of whole numbers below n. */
function dice(seed: number) {
	let state = seed;
	return (n: number) => {
		state = (state * 1103515245 + 12345) & 0x7fffffff;
		return Math.floor((state / 0x7fffffff) * n);
	};
}

const letter = (n: number) => ["a", "b", "c"][n] ?? "a";

function firstInputs(roll: (n: number) => number): Inputs {
	const rows = [1, 2, 3, 4, 5, 6, 7, 8].flatMap((row) => [
		[`A${row}`, String(row)],
		[`B${row}`, String(roll(9))],
		[`D${row}`, letter(roll(3))],
	]);
	return Object.fromEntries([...rows, ["A10", "3"], ["B10", "2"]]);
}

function edit(roll: (n: number) => number): [string, string] {
	const what = roll(10);
	if (what < 4) return [`B${1 + roll(8)}`, String(roll(9))];
	if (what < 6) return [`D${1 + roll(8)}`, letter(roll(3))];
	if (what < 9) return ["A10", String(1 + roll(10))];
	return ["B10", String(roll(5))];
}

const everything = (desk: Desk): CellValue[][][] =>
	["Sheet1", "T", "U"].map((tab) => desk.read(tab, "A1:P16"));

async function fresh(inputs: Inputs): Promise<Desk> {
	const desk = await open(CODE);
	await desk.call("prepare");
	for (const [cell, value] of Object.entries(inputs))
		desk.type("Sheet1", cell, value);
	await desk.settle();
	return desk;
}

/** What some cells must hold, worked out without a spreadsheet. */
function model(inputs: Inputs): Record<string, CellValue> {
	const at = (cell: string) => Number(inputs[cell]);
	const rows = [1, 2, 3, 4, 5, 6, 7, 8];
	const product = (row: number) => at(`A${row}`) * at(`B${row}`);
	const sum = (list: number[]) => list.reduce((a, b) => a + b, 0);
	const marked = (mark: string) =>
		rows.filter((row) => inputs[`D${row}`] === mark);
	const n = at("A10");
	const triangle = (n * (n + 1)) / 2;
	const found = marked("a");
	return {
		"Sheet1!C9": sum(rows.map(product)),
		"T!E1": n > 8 ? "#ERROR!" : triangle + triangle * at("B10"),
		// an error cell counts as filled
		"T!E3": n > 8 ? 0 : n,
		"T!L1": 0,
		"U!A2": sum(marked("b").map(product)),
		"U!G4": new Set(rows.map((row) => inputs[`D${row}`])).size,
		...(found.length > 0
			? {
					"T!K1": sum(found.map(product)),
					"U!E2":
						2 * sum(found.map((row) => row + at(`B${row}`) + product(row))),
				}
			: {}),
	};
}

it.each([1, 2, 3])(
	"stays true through random edits, seed %d",
	async (seed) => {
		const roll = dice(seed);
		const inputs = firstInputs(roll);
		const desk = await fresh(inputs);
		const seen: { inputs: Inputs; cells: CellValue[][][] }[] = [];
		for (let step = 0; step < 25; step++) {
			for (let count = 1 + roll(2); count > 0; count--) {
				const [cell, value] = edit(roll);
				inputs[cell] = value;
				desk.type("Sheet1", cell, value);
			}
			await desk.settle();
			seen.push({ inputs: { ...inputs }, cells: everything(desk) });
			for (const [place, value] of Object.entries(model(inputs))) {
				const [tab = "", cell = ""] = place.split("!");
				expect([step, place, desk.read(tab, cell)[0]?.[0]]).toEqual([
					step,
					place,
					value,
				]);
			}
		}
		close();
		for (const [step, { inputs: typed, cells }] of seen.entries()) {
			const other = everything(await fresh(typed));
			expect({ step, cells }).toEqual({ step, cells: other });
		}
	},
	120_000,
);

it("a formula that changes every time is refused", async () => {
	const desk = await open("");
	desk.type("Sheet1", "A1", "=RAND()");
	await expect(desk.settle()).rejects.toThrow("does not come to rest");
});
