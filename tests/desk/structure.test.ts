/**
 * Random changes of a workbook's build: rows put in and taken out, names moved, spills blocked and freed, formulas
 * replaced, tabs copied and deleted. After each settling it equals the same workbook opened anew, where all is calculated.
 */
import { expect, it } from "vitest";
import type { CellValue, Desk, SavedWorkbook } from "../../src/desk/desk";
import { close, open } from "./open";

const CODE = `
function TO_N(n) { return Array.from({ length: Math.max(1, n) }, function (_, i) { return [i + 1, (i + 1) * 10]; }); }
function TOTAL(rows) { return [].concat.apply([], rows).reduce(function (sum, v) { return sum + (typeof v === "number" ? v : 0); }, 0); }
function s(name) { return SpreadsheetApp.getActive().getSheetByName(name); }
function prepare() {
	var ss = SpreadsheetApp.getActive(), a = s("Sheet1"), b = ss.insertSheet("B", 1);
	[a, b].forEach(function (t) { t.deleteRows(41, 960); t.deleteColumns(13, 14); });
	a.getRange("A1:A6").setValues([[1], [2], [3], [4], [5], [6]]);
	a.getRange("B1:B6").setFormulas([["=A1*2"], ["=A2*2"], ["=A3*2"], ["=A4*2"], ["=A5*2"], ["=SUM(B1:B5)"]]);
	ss.setNamedRange("PICK", a.getRange("A2"));
	a.getRange("D1").setFormula("=TO_N(A3)");
	a.getRange("G1").setFormula("=PICK*100+SUM(D1:E12)");
	a.getRange("G2").setFormula("=TOTAL(D1:E12)+B!C1");
	b.getRange("A1").setFormula("=ARRAYFORMULA(Sheet1!B1:B5+PICK)");
	b.getRange("C1").setFormula("=SUM(A1:A12)");
	b.getRange("C2").setFormula('=FILTER(Sheet1!D1:D8;Sheet1!D1:D8>1)');
	b.getRange("E1").setFormula("=COUNT(C2:C12)+TOTAL(C2:C12)");
}
function insertRow(row) { s("Sheet1").insertRowsAfter(row, 1); }
function deleteRow(row) { s("Sheet1").deleteRows(row, 1); }
function movePick(row) { SpreadsheetApp.getActive().setNamedRange("PICK", s("Sheet1").getRange(row, 1)); }
function block(tab, cell, value) { s(tab).getRange(cell).setValue(value); }
function formula(tab, cell, text) { s(tab).getRange(cell).setFormula(text); }
function copyTab(n) { SpreadsheetApp.getActive().insertSheet("Copy" + n, 2, { template: s("B") }); }
function linkTo(n) { s("B").getRange("G1").setFormula("=Copy" + n + "!C1+1"); }
function dropTab(n) { SpreadsheetApp.getActive().deleteSheet(s("Copy" + n)); }`;

/** A repeatable sequence of whole numbers below n. */
function dice(seed: number) {
	let state = seed;
	return (n: number) => {
		state = (state * 1103515245 + 12345) & 0x7fffffff;
		return Math.floor((state / 0x7fffffff) * n);
	};
}

type Step = [string, ...(string | number)[]];

/** One change: a call of the script, or something typed. */
function change(roll: (n: number) => number, step: number): Step[] {
	const blocks: Step[] = [
		["block", "Sheet1", `D${2 + roll(4)}`, "x"],
		["block", "B", `A${2 + roll(4)}`, "x"],
		["block", "B", `C${3 + roll(2)}`, 7],
	];
	const all: Step[][] = [
		[["type", "Sheet1", `A${1 + roll(6)}`, String(roll(9))]],
		[["type", "Sheet1", "A3", String(1 + roll(8))]],
		[["insertRow", 1 + roll(5)]],
		[["deleteRow", 7 + roll(5)]],
		[["movePick", 1 + roll(6)]],
		[blocks[roll(3)] ?? ["movePick", 1]],
		[
			["block", "Sheet1", "D2:D8", ""],
			["block", "B", "A2:A8", ""],
			["block", "B", "C3:C8", ""],
		],
		[["formula", "Sheet1", "D1", roll(2) ? "=TO_N(A4)" : "=A1+A2"]],
		[
			[
				"formula",
				"B",
				"A1",
				roll(2) ? "=SEQUENCE(PICK)" : "=ARRAYFORMULA(Sheet1!B1:B5+PICK)",
			],
		],
		[
			["copyTab", step],
			["linkTo", step],
		],
		[
			["copyTab", step],
			["linkTo", step],
			["dropTab", step],
		],
	];
	return all[roll(all.length)] ?? [];
}

async function apply(desk: Desk, steps: Step[]): Promise<void> {
	for (const [name, ...args] of steps)
		if (name === "type") {
			const [tab = "", cell = "", text = ""] = args.map(String);
			desk.type(tab, cell, text);
			await desk.settle();
		} else await desk.call(name, args);
}

const everything = (desk: Desk): Record<string, CellValue[][]> =>
	Object.fromEntries(desk.tabs().map((tab) => [tab, desk.read(tab, "A1:L20")]));

it.each([1, 2, 3, 4, 5, 6, 7, 8, 9, 10])(
	"stays true through random changes of its build, seed %d",
	async (seed) => {
		const roll = dice(seed);
		const desk = await open(CODE);
		await desk.call("prepare");
		const seen: {
			steps: Step[];
			saved: SavedWorkbook;
			cells: Record<string, CellValue[][]>;
		}[] = [];
		for (let step = 0; step < 20; step++) {
			const steps = change(roll, step);
			await apply(desk, steps);
			seen.push({
				steps,
				saved: JSON.parse(JSON.stringify(desk.save())),
				cells: everything(desk),
			});
		}
		close();
		for (const [step, { steps, saved, cells }] of seen.entries()) {
			const anew = await open(CODE, { saved });
			expect({ step, steps, cells }).toEqual({
				step,
				steps,
				cells: everything(anew),
			});
		}
	},
	240_000,
);

it("formulas and names follow a tab that is renamed", async () => {
	const desk = await open(`
function run() {
	var ss = SpreadsheetApp.getActive(), s = ss.getSheets()[0], t = ss.insertSheet("B");
	s.getRange("A1").setValue(5);
	ss.setNamedRange("PICK", s.getRange("A1"));
	t.getRange("A1:A2").setFormulas([["=PICK*2"], ["=Sheet1!A1+1"]]);
}
function rename() { SpreadsheetApp.getActive().getSheets()[0].setName("Our own"); }`);
	await desk.call("run");
	await desk.call("rename");
	desk.type("Our own", "A1", "7");
	await desk.settle();
	expect(desk.read("B", "A1:A2")).toEqual([[14], [8]]);
	expect(desk.errors()).toEqual([]);
});
