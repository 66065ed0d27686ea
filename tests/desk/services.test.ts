/** The services refuse what the platform refuses. */
import { describe, expect, it } from "vitest";
import { entry, open, ran, tabNamed } from "./open";

describe("fails as the platform does", () => {
	it.each([
		[
			"unknown member of a range",
			"s.getRange('A1').setColour('red');",
			"Range.setColour is not a function",
		],
		[
			"unknown member of a sheet",
			"s.getSheetName2();",
			"Sheet.getSheetName2 is not a function",
		],
		[
			"unknown service member",
			"SpreadsheetApp.openById('x');",
			"SpreadsheetApp.openById is not a function",
		],
		[
			"setting a property of a service",
			"s.name = 'x';",
			"Sheet.name cannot be set",
		],
		[
			"too few rows",
			"s.getRange('A1:A2').setValues([[1]]);",
			"The number of rows in the data does not match the number of rows in the range. The data has 1 but the range has 2.",
		],
		[
			"too many columns",
			"s.getRange('A1').setFormulas([['=1', '=2']]);",
			"The number of columns in the data does not match the number of columns in the range. The data has 2 but the range has 1.",
		],
		[
			"formats of another size",
			"s.getRange('A1:B1').setBackgrounds([['#fff']]);",
			"The number of columns in the data",
		],
		[
			"rules of another size",
			"s.getRange('A1').setDataValidations([[null], [null]]);",
			"The number of rows in the data",
		],
		[
			"a value where rows belong",
			"s.getRange('A1').setValues('x');",
			"The parameters (String) don't match the method signature for SpreadsheetApp.Range.setValues.",
		],
		[
			"a number as formula",
			"s.getRange('A1').setFormula(1);",
			"The parameters (Number) don't match the method signature for SpreadsheetApp.Range.setFormula.",
		],
		[
			"an unknown alignment",
			"s.getRange('A1').setHorizontalAlignments([['middle']]);",
			"don't match the method signature",
		],
		[
			"a font size as text",
			"s.getRange('A1').setFontSizes([['10']]);",
			"don't match the method signature",
		],
		[
			"a number format of null",
			"s.getRange('A1').setNumberFormat(null);",
			"don't match the method signature",
		],
		[
			"a range below the grid",
			"s.getRange(1001, 1);",
			"The coordinates of the range are outside the dimensions of the sheet.",
		],
		[
			"a range beside the grid",
			"s.getRange('AA1');",
			"The coordinates of the range are outside the dimensions of the sheet.",
		],
		[
			"row 0",
			"s.getRange(0, 1);",
			"The coordinates of the range are outside the dimensions of the sheet.",
		],
		[
			"no rows",
			"s.getRange(1, 1, 0, 1);",
			"The number of rows in the range must be at least 1.",
		],
		["a range that is none", "s.getRange('nothing');", "Range not found"],
		[
			"a range of words",
			"s.getRange(1, 'A');",
			"The parameters (Number,String) don't match the method signature for SpreadsheetApp.Sheet.getRange.",
		],
		[
			"a tab's name twice",
			"ss.insertSheet('Sheet1');",
			'A sheet with the name "Sheet1" already exists. Please enter another name.',
		],
		[
			"renaming to another tab's name",
			"ss.insertSheet('B').setName('Sheet1');",
			'A sheet with the name "Sheet1" already exists.',
		],
		[
			"the last tab",
			"ss.deleteSheet(s);",
			"You can't remove all the sheets in a document.",
		],
		[
			"a tab that is gone",
			"var t = ss.insertSheet('B'); ss.deleteSheet(t); t.getName();",
			"not found",
		],
		[
			"all rows",
			"s.deleteRows(1, 1000);",
			"You can't delete all the rows on the sheet.",
		],
		["rows that are not there", "s.deleteRows(1000, 2);", "out of bounds"],
		[
			"a name like a cell",
			"ss.setNamedRange('AB12', s.getRange('A1'));",
			"The name AB12 is not a valid name for a range.",
		],
		[
			"a name with a digit in front",
			"ss.setNamedRange('1x', s.getRange('A1'));",
			"not a valid name",
		],
		[
			"a name with a space",
			"ss.setNamedRange('a b', s.getRange('A1'));",
			"not a valid name",
		],
		[
			"a name that is not there",
			"ss.removeNamedRange('nothing');",
			"does not exist",
		],
		[
			"something else where a range belongs",
			"ss.setNamedRange('x', s);",
			"don't match the method signature",
		],
		[
			"a rule without condition",
			"SpreadsheetApp.newConditionalFormatRule().setRanges([s.getRange('A1')]).build();",
			"needs a condition",
		],
		[
			"a rule of another tab's cells",
			"var t = ss.insertSheet('B'); t.setConditionalFormatRules([SpreadsheetApp.newConditionalFormatRule().whenFormulaSatisfied('=A1>0').setRanges([s.getRange('A1')]).build()]);",
			"has a range of Sheet1",
		],
		[
			"a rule that looks at another tab",
			"SpreadsheetApp.newConditionalFormatRule().whenFormulaSatisfied('=Sheet2!A1>0');",
			"Conditional format rule cannot reference a different sheet.",
		],
		[
			"a rule with an own function",
			"SpreadsheetApp.newConditionalFormatRule().whenFormulaSatisfied('=run(A1)>0');",
			"Custom function run does not work in a conditional format.",
		],
		[
			"a rule with a name",
			"ss.setNamedRange('total', s.getRange('A1')); SpreadsheetApp.newConditionalFormatRule().whenFormulaSatisfied('=A2>TOTAL');",
			"Named range total does not work in a conditional format.",
		],
		[
			"a choice without criteria",
			"SpreadsheetApp.newDataValidation().build();",
			"no criteria",
		],
		[
			"an unbuilt rule",
			"s.getRange('A1').setDataValidation(SpreadsheetApp.newDataValidation().requireCheckbox());",
			"don't match the method signature",
		],
		[
			"a number between words",
			"SpreadsheetApp.newDataValidation().requireNumberBetween('1', 2);",
			"don't match the method signature for SpreadsheetApp.DataValidationBuilder.requireNumberBetween.",
		],
		[
			"a property that is no text",
			"PropertiesService.getDocumentProperties().setProperty('a', 1);",
			"don't match the method signature",
		],
		[
			"a property over 9 kB",
			"PropertiesService.getDocumentProperties().setProperty('a', 'x'.repeat(10000));",
			"Argument too large",
		],
		[
			"a page that is not there",
			"HtmlService.createHtmlOutputFromFile('None');",
			"No HTML file named None was found.",
		],
		[
			"a value no cell can hold",
			"s.getRange('A1').setValue({});",
			"cannot be kept in a cell",
		],
		[
			"a text over 50000 characters",
			"s.getRange('A1').setValue('x'.repeat(50001));",
			"more than the maximum of 50000 characters",
		],
	])("%s", async (_, body, message) =>
		expect(ran(body)).rejects.toThrow(message),
	);

	it("with an Error of the script's own context", async () =>
		expect(
			await ran(
				"try { s.getRange('none'); } catch (e) { return [e instanceof Error, e.name, e.message]; }",
			),
		).toEqual([true, "Exception", "Range not found"]));
});

describe("read first, write last", () => {
	const prepare =
		"function prepare() { var s = SpreadsheetApp.getActive().getSheets()[0]; s.getRange('A1').setValue(2); s.getRange('B1').setFormula('=SEQUENCE(2)'); }";

	it.each([
		[
			"a formula's cell",
			"s.getRange('C1').setValue(1); return s.getRange('B1').getValue();",
		],
		[
			"a cell that a spill fills",
			"s.getRange('C1').setValue(1); return s.getRange('B2').getValue();",
		],
		[
			"among others",
			"ss.insertSheet('B'); return s.getRange('A1:B1').getValues();",
		],
	])("%s may not be read after a write", async (_, body) => {
		const desk = await open(entry(body, prepare));
		await desk.call("prepare");
		await expect(desk.call("run")).rejects.toThrow(
			/^Sheet1!B[12] is calculated and this call has already written: read first, write last$/,
		);
	});

	it("before the first write, and plain cells at any time, may be read", async () => {
		const desk = await open(
			entry(
				"var before = s.getRange('B1:B2').getValues(); s.getRange('A1').setValue(3); return [before, s.getRange('A1').getValue()];",
				prepare,
			),
		);
		await desk.call("prepare");
		expect(await desk.call("run")).toEqual([[[1], [2]], 3]);
	});
});

describe("writes what can be read again", () => {
	it.each([
		[
			"values",
			"s.getRange('A1:B2').setValues([[1, 'a'], [true, '']]); return s.getRange('A1:B2').getValues();",
			[
				[1, "a"],
				[true, ""],
			],
		],
		[
			"undefined clears",
			"s.getRange('A1').setValue(1).setValue(undefined); return s.getRange('A1').getValue();",
			"",
		],
		[
			"formulas",
			"s.getRange('A1:A2').setFormulas([['=SUM(B1;2)'], ['']]); return s.getRange('A1:A2').getFormulas();",
			[["=SUM(B1,2)"], [""]],
		],
		[
			"a text that looks like a formula, marked",
			"s.getRange('A1').setValue(\"'=1+1\"); return [s.getRange('A1').getValue(), s.getRange('A1').getFormula()];",
			["=1+1", ""],
		],
		[
			"a length in a plain-text cell",
			"s.getRange('A1').setNumberFormat('@').setValue('3/4'); return s.getRange('A1').getValue();",
			"3/4",
		],
		[
			"a length in a plain cell becomes a date",
			"s.getRange('A1').setValue('3/4'); return s.getRange('A1').getValue() instanceof Date;",
			true,
		],
		[
			"a date",
			"var d = new Date(2027, 2, 9); s.getRange('A1').setValue(d); return s.getRange('A1').getValue().getTime() === d.getTime();",
			true,
		],
		[
			"notes, null removes",
			"s.getRange('A1:A2').setNote('x'); s.getRange('A1').setNote(null); return [s.getRange('A1').getNote(), s.getRange('A2').getNote()];",
			["", "x"],
		],
		[
			"a note a cell, none for a blank one",
			"s.getRange('A1:B2').setNotes([['x', ''], ['', 'y']]); return ['A1', 'B1', 'A2', 'B2'].map(function (a) { return s.getRange(a).getNote(); });",
			["x", "", "", "y"],
		],
		[
			"cells so many rows and columns from the first",
			"return s.getRange('B2:D9').offset(1, 2, 3, 1).getA1Notation();",
			"D3:D5",
		],
		[
			"formats",
			"s.getRange('A1:B1').setNumberFormats([['0.00', 'General']]); return s.getRange('A1:B1').getNumberFormats();",
			[["0.00", "General"]],
		],
		[
			"backgrounds, null removes",
			"s.getRange('A1:B1').setBackgrounds([['#ff0000', '#00ff00']]); s.getRange('B1').setBackground(null); return [s.getRange('A1').getBackground(), s.getRange('B1').getBackground()];",
			["#ff0000", "#ffffff"],
		],
		[
			"names",
			"ss.setNamedRange('a_b', s.getRange('B2:C3')); return [ss.getRangeByName('A_B').getA1Notation(), ss.getNamedRanges().length, ss.getRangeByName('none')];",
			["B2:C3", 1, null],
		],
		[
			"a name moved",
			"ss.setNamedRange('a', s.getRange('A1')); ss.setNamedRange('a', s.getRange('B1')); return ss.getNamedRanges().map(function (n) { return n.getRange().getA1Notation(); });",
			["B1"],
		],
		[
			"a name removed",
			"ss.setNamedRange('a', s.getRange('A1')); ss.removeNamedRange('a'); return ss.getNamedRanges().length;",
			0,
		],
		[
			"tabs at their place",
			"ss.insertSheet('B', 0); ss.insertSheet('C'); return ss.getSheets().map(function (t) { return t.getName(); });",
			["B", "C", "Sheet1"],
		],
		[
			"the new tab is open",
			"ss.insertSheet('B'); return ss.getActiveSheet().getName();",
			"B",
		],
		[
			"a cut grid",
			"s.deleteRows(11, 990); s.deleteColumns(6, 21); return [s.getMaxRows(), s.getMaxColumns()];",
			[10, 5],
		],
		[
			"a grown grid",
			"s.insertRowsAfter(1000, 5); s.insertColumnsAfter(26, 2); return [s.getMaxRows(), s.getMaxColumns()];",
			[1005, 28],
		],
		[
			"what is selected, where it is still there",
			"ss.setActiveRange(s.getRange('C7')); s.insertColumnsAfter(1, 2); s.deleteColumns(9, 4); var cells = [ss.getCurrentCell().getA1Notation()]; s.deleteRows(5, 900); return cells.concat(ss.getCurrentCell().getA1Notation());",
			["C7", "C7"],
		],
		[
			"what has content",
			"s.getRange('C7').setValue(1); return s.getDataRange().getA1Notation();",
			"A1:C7",
		],
		[
			"rules replace rules",
			"function rule(c) { return SpreadsheetApp.newConditionalFormatRule().whenFormulaSatisfied('=A1>0').setBackground(c).setRanges([s.getRange('A1')]).build(); } s.setConditionalFormatRules([rule('#111111'), rule('#222222')]); s.setConditionalFormatRules(s.getConditionalFormatRules().slice(1)); return s.getConditionalFormatRules().length;",
			1,
		],
		[
			"properties",
			"var p = PropertiesService.getDocumentProperties(); p.setProperty('a', '1').setProperties({ b: '2' }); p.deleteProperty('a'); return [p.getProperties(), p.getProperty('a')];",
			[{ b: "2" }, null],
		],
		[
			"the current cell",
			"ss.setActiveRange(s.getRange('C4:D5')); return ss.getCurrentCell().getA1Notation();",
			"C4",
		],
		[
			"cleared",
			"s.getRange('A1').setValue(1).setBackground('#111111').clearContent(); return [s.getRange('A1').getValue(), s.getRange('A1').getBackground()];",
			["", "#111111"],
		],
	])("%s", async (_, body, answer) => expect(await ran(body)).toEqual(answer));

	it.each([
		["s.getRange('A1').setValue(0.125).setNumberFormat('0.0%');", "12.5%"],
		["s.getRange('A1').setValue(0.1 + 0.2);", "0.3"],
	])("%s shows %s", async (body, text) => {
		const desk = await open(entry(body));
		await desk.call("run");
		expect(desk.display("Sheet1", "A1")).toEqual([[text]]);
	});

	it("sizes, colors, frozen and hidden parts of a tab", async () => {
		const desk = await open(
			entry(
				"var t = ss.insertSheet('B'); t.setColumnWidths(2, 2, 55).setTabColor('#123456'); t.setFrozenRows(2); t.setFrozenColumns(1); t.hideColumns(4); t.hideSheet();",
			),
		);
		await desk.call("run");
		const tab = tabNamed(desk, "B");
		expect([0, 1, 2, 3].map((column) => tab.getColumnWidth(column))).toEqual([
			100, 55, 55, 100,
		]);
		expect(tab.getTabColor()).toBe("#123456");
		expect(tab.getFreeze()).toMatchObject({ ySplit: 2, xSplit: 1 });
		expect([2, 3].map((column) => tab.getColVisible(column))).toEqual([
			true,
			false,
		]);
		expect(tab.isSheetHidden()).toBe(1);
	});

	it("a protected tab with free cells", async () => {
		const desk = await open(
			entry(
				"s.protect().setWarningOnly(true).setUnprotectedRanges([s.getRange('A1')]);",
			),
		);
		await desk.call("run");
		const free = { startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 };
		expect(desk.save().beside).toMatchObject({
			protections: [{ warningOnly: true, unprotected: [free] }],
		});
	});

	it("and a formula that only gets a format stays", async () => {
		const desk = await open(
			entry(
				"s.getRange('A1').setFormula('=1+1').setNumberFormat('0.00').setBackground('#eeeeee');",
			),
		);
		await desk.call("run");
		expect(desk.display("Sheet1", "A1")).toEqual([["2.00"]]);
	});
});

describe("a choice", () => {
	const body = (strict: boolean) =>
		`s.getRange('D1:D2').setValues([['x'], ['y']]);
		var rule = SpreadsheetApp.newDataValidation().requireValueInRange(s.getRange('D1:D2'), true).setAllowInvalid(${!strict}).build();
		s.getRange('A1').setDataValidation(rule);
		s.getRange('B1').setDataValidation(SpreadsheetApp.newDataValidation().requireNumberBetween(0, 1).setAllowInvalid(${!strict}).build());
		if (a) s.getRange(a).setValue(b);`;

	it.each([
		["A1", "z"],
		["B1", 2],
		["B1", "x"],
	])(
		"that is strict refuses %s = %s from script and person",
		async (cell, value) => {
			const desk = await open(entry(body(true)));
			const refusal = `The data you entered in cell ${cell} violates the data validation rules set on this cell.`;
			await expect(desk.call("run", [cell, value])).rejects.toThrow(refusal);
			expect(() => desk.type("Sheet1", cell, String(value))).toThrow(refusal);
		},
	);

	it.each([
		["A1", "x"],
		["A1", ""],
		["B1", 0.5],
	])("that is strict takes %s = %s", async (cell, value) => {
		const desk = await open(entry(body(true)));
		await desk.call("run", [cell, value]);
		expect(desk.read("Sheet1", cell)).toEqual([[value]]);
	});

	it("that only warns takes anything", async () => {
		const desk = await open(entry(body(false)));
		await desk.call("run", ["A1", "z"]);
		expect(desk.read("Sheet1", "A1")).toEqual([["z"]]);
	});

	it("can be taken away", async () => {
		const desk = await open(
			entry(
				`${body(true)} s.getRange('A1').setDataValidation(null); s.getRange('A1').setValue('z');`,
			),
		);
		await desk.call("run");
		expect(desk.read("Sheet1", "A1")).toEqual([["z"]]);
	});
});
