/** Copies of tabs and cells. */
import { describe, expect, it } from "vitest";
import { entry, open, ran, tabNamed } from "./open";

/** A tab with something of everything that a copy takes over. */
const FULL = `
	s.getRange('A1:C2').setValues([['a', 2, true], ['x', '', '']]);
	s.getRange('B2').setFormula('=B1*3').setNumberFormat('0.00');
	s.getRange('A1').setBackground('#ff0000').setNote('why').setFontWeights([['bold']]);
	s.getRange('C1').setDataValidation(SpreadsheetApp.newDataValidation().requireValueInList(['p', 'q']).setAllowInvalid(false).build());
	s.setConditionalFormatRules([SpreadsheetApp.newConditionalFormatRule().whenFormulaSatisfied('=B1>1').setBackground('#00ff00').setRanges([s.getRange('B1')]).build()]);
	s.setColumnWidths(1, 1, 222).setTabColor('#123456');
	s.setFrozenRows(1);
	s.hideColumns(3);
	s.getRange('D5').setValue(4);
`;
const COPY = `${FULL} var t = ss.insertSheet('Copy', 0, { template: s });`;

describe("a tab made of a template", () => {
	it("has its contents, and formulas that look at themselves", async () => {
		const desk = await open(entry(COPY));
		await desk.call("run");
		expect(desk.tabs()).toEqual(["Copy", "Sheet1"]);
		desk.type("Copy", "B1", "5");
		await desk.settle();
		expect(desk.read("Copy", "A1:C2")).toEqual([
			["a", 5, true],
			["x", 15, ""],
		]);
		expect(desk.display("Copy", "B2")).toEqual([["15.00"]]);
		expect(desk.read("Sheet1", "B2")).toEqual([[6]]);
	});

	it.each([
		["is open", "ss.getActiveSheet().getName()", "Copy"],
		["format", "t.getRange('A1').getBackground()", "#ff0000"],
		["note", "t.getRange('A1').getNote()", "why"],
		["rules", "t.getConditionalFormatRules().length", 1],
		["size", "[t.getMaxRows(), t.getMaxColumns()]", [1000, 26]],
		["another id", "t.getSheetId() !== s.getSheetId()", true],
	])("%s", async (_, read, expected) =>
		expect(await ran(`${COPY} return ${read};`)).toEqual(expected),
	);

	it("has its sizes, color, and what is frozen, merged and out of sight", async () => {
		const desk = await open(entry(COPY));
		const own = desk.engine.api.getActiveWorkbook()?.getSheetByName("Sheet1");
		own?.setRowHeight(1, 44);
		own?.getRange("A2:B2").merge();
		await desk.call("run");
		const copy = tabNamed(desk, "Copy");
		expect([0, 1].map((column) => copy.getColumnWidth(column))).toEqual([
			222, 100,
		]);
		expect(copy.getRowHeight(1)).toBe(44);
		expect(copy.getTabColor()).toBe("#123456");
		expect(copy.getFreeze().ySplit).toBe(1);
		expect([1, 2].map((column) => copy.getColVisible(column))).toEqual([
			true,
			false,
		]);
		expect(copy.getMergedCell(1, 1)).toMatchObject({ endColumn: 1 });
	});

	it("has its choices", async () => {
		await expect(
			ran(`${COPY} t.getRange('C1').setValue('z');`),
		).rejects.toThrow("violates the data validation rules");
	});

	it("goes its own way afterwards", async () => {
		const desk = await open(
			entry(`${COPY} t.getRange('A1').setValue('b').setBackground('#0000ff').setNote('now'); t.setColumnWidths(1, 1, 50);
			return [s.getRange('A1').getValue(), s.getRange('A1').getBackground(), s.getRange('A1').getNote()];`),
		);
		expect(await desk.call("run")).toEqual(["a", "#ff0000", "why"]);
		expect(tabNamed(desk, "Sheet1").getColumnWidth(0)).toBe(222);
	});

	it("of a hidden one is in sight", async () => {
		const body =
			"ss.insertSheet('B'); s.hideSheet(); ss.insertSheet('C', { template: s });";
		const desk = await open(entry(body));
		await desk.call("run");
		expect(tabNamed(desk, "C").isSheetHidden()).toBe(0);
	});

	it.each([
		["an unknown option", "ss.insertSheet('B', { templates: s });"],
		["no tab", "ss.insertSheet('B', { template: 'Sheet1' });"],
		["a wrong order", "ss.insertSheet({ template: s }, 'B');"],
	])("refuses %s", async (_, body) =>
		expect(ran(body)).rejects.toThrow("method signature"),
	);
});

describe("tabs have ids", () => {
	it("that are not used again", async () => {
		const body =
			"var b = ss.insertSheet('B'); var id = b.getSheetId(); ss.deleteSheet(b); return ss.insertSheet('C').getSheetId() === id;";
		expect(await ran(body)).toBe(false);
	});

	it("that are numbers of their own, in a kept workbook the same", async () => {
		const ids =
			"return ss.getSheets().map(function (t) { return t.getSheetId(); });";
		const desk = await open(
			entry(`if (a) for (var i = 0; i < 12; i++) ss.insertSheet(); ${ids}`),
		);
		const made = (await desk.call("run", [true])) as number[];
		expect(new Set(made).size).toBe(13);
		const again = await open(entry(ids), { saved: desk.save() });
		expect(await again.call("run")).toEqual(made);
	});
});

describe("cells copied", () => {
	const BEGIN =
		"s.getRange('A1:B1').setValues([[2, '=A1*10']]); s.getRange('A1').setBackground('#ff0000').setNote('n');";
	const LOOK =
		"return [s.getRange('D3:E3').getFormulas(), s.getRange('D3').getValue(), s.getRange('D3').getBackground(), s.getRange('D3').getNote()];";
	const to = (how: string) =>
		`${BEGIN} s.getRange('A1:B1').copyTo(s.getRange('D3')${how}); ${LOOK}`;

	it.each([
		["whole", "", [[["", "=D3*10"]], 2, "#ff0000", "n"]],
		[
			"as formulas",
			", SpreadsheetApp.CopyPasteType.PASTE_FORMULA, false",
			[[["", "=D3*10"]], 2, "#ffffff", ""],
		],
		[
			"as formats",
			", SpreadsheetApp.CopyPasteType.PASTE_FORMAT, false",
			[[["", ""]], "", "#ff0000", ""],
		],
		[
			"as formats, the other way",
			", { formatOnly: true }",
			[[["", ""]], "", "#ff0000", ""],
		],
	])("%s", async (_, how, expected) =>
		expect(await ran(to(how))).toEqual(expected),
	);

	it("as choices", async () => {
		const body =
			"s.getRange('A1').setDataValidation(SpreadsheetApp.newDataValidation().requireValueInList(['p']).setAllowInvalid(false).build()).copyTo(s.getRange('B1'), SpreadsheetApp.CopyPasteType.PASTE_DATA_VALIDATION, false); s.getRange('B1').setValue('z');";
		// setDataValidation answers the range
		await expect(ran(body)).rejects.toThrow("violates the data validation");
	});

	const SPILL =
		"function prepare() { var s = SpreadsheetApp.getActive().getSheets()[0]; s.getRange('A1').setValue(2); s.getRange('B1').setFormula('=SEQUENCE(3)*A1'); s.getRange('C1').setFormula('=DATE(2027;3;9)').setNumberFormat('yyyy-mm-dd'); s.getRange('D1').setFormula('=1/0'); s.getRange('E1').setFormula('=A1>1'); s.getRange('F1').setNumberFormat('@').setValue('=1'); }";

	it.each([
		"{ contentsOnly: true }",
		"SpreadsheetApp.CopyPasteType.PASTE_VALUES, false",
	])("onto themselves as values with %s no longer calculate", async (how) => {
		const desk = await open(
			entry(`s.getRange('A1:F3').copyTo(s.getRange('A1:F3'), ${how});`, SPILL),
		);
		await desk.call("prepare");
		await desk.call("run");
		desk.type("Sheet1", "A1", "100");
		await desk.settle();
		expect(desk.read("Sheet1", "B1:B3")).toEqual([[2], [4], [6]]);
		expect(desk.display("Sheet1", "C1:F1")).toEqual([
			["2027-03-09", "#DIV/0!", "TRUE", "=1"],
		]);
		for (const cell of ["B1", "B2", "C1", "D1", "E1", "F1"])
			expect(desk.formula("Sheet1", cell)).toBe("");
	});

	it("as values may not be read after a write", async () => {
		const desk = await open(
			entry(
				"s.getRange('H1').setValue(1); s.getRange('B1').copyTo(s.getRange('C1'), { contentsOnly: true });",
				SPILL,
			),
		);
		await desk.call("prepare");
		await expect(desk.call("run")).rejects.toThrow("read first, write last");
	});

	it("fill a destination that is twice as large", async () => {
		const body =
			"s.getRange('A1:B1').setValues([[1, 2]]).copyTo(s.getRange('A2:D3')); return s.getRange('A2:D3').getValues();";
		expect(await ran(body)).toEqual([
			[1, 2, 1, 2],
			[1, 2, 1, 2],
		]);
	});

	it("keep what is absolute in a formula", async () => {
		const body =
			"s.getRange('B2').setFormula('=$A$1+A$1+$A1+A1'); s.getRange('B2').copyTo(s.getRange('C4')); return s.getRange('C4').getFormula();";
		expect(await ran(body)).toBe("=$A$1+B$1+$A3+B3");
	});

	it.each([
		["transposed", ", SpreadsheetApp.CopyPasteType.PASTE_NORMAL, true"],
		["an unknown way", ", 'PASTE_ALL', false"],
		["an unknown option", ", { valuesOnly: true }"],
		["outside the grid", null],
	])("refuse %s", async (_, how) => {
		const body =
			how === null
				? "s.getRange('A1:B1').copyTo(s.getRange('Z1'));"
				: `s.getRange('A1').copyTo(s.getRange('B1')${how});`;
		await expect(ran(body)).rejects.toThrow(
			how === null ? "outside the dimensions" : "method signature",
		);
	});
});
