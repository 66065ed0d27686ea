/** What practitioners report of the platform and a script falls into. */
import { describe, expect, it } from "vitest";
import { entry, open, ran } from "./open";

const RULE = (cells: string, when = "=A1>1") =>
	`s.setConditionalFormatRules([SpreadsheetApp.newConditionalFormatRule().whenFormulaSatisfied('${when}').setBackground('#00ff00').setRanges([s.getRange('${cells}')]).build()]);`;
const CHOICE = (cells: string) =>
	`s.getRange('${cells}').setDataValidation(SpreadsheetApp.newDataValidation().requireValueInList(['p']).setAllowInvalid(false).build());`;

describe("a paste of formats", () => {
	interface Kept {
		ranges: object[];
		rule: { value: string };
	}
	/** Where the rules of the tab are now, and their formulas. */
	async function rulesAfter(body: string) {
		const desk = await open(entry(body));
		await desk.call("run");
		const [, resources] = JSON.parse(desk.state()) as [
			unknown,
			[string, Record<string, Kept[]>][],
		];
		const found = resources.find(([name]) => /CONDITIONAL/.test(name));
		return Object.values(found?.[1] ?? {})
			.flat()
			.map(({ ranges, rule }) => ({ ranges, formula: rule.value }));
	}
	const cell = (row: number, column: number) => ({
		startRow: row,
		endRow: row,
		startColumn: column,
		endColumn: column,
	});

	it.each([
		["{ formatOnly: true }"],
		["SpreadsheetApp.CopyPasteType.PASTE_FORMAT, false"],
	])("with %s brings the source's rules, moved along", async (how) => {
		expect(
			await rulesAfter(
				`${RULE("A1")} s.getRange('A1').copyTo(s.getRange('C3'), ${how});`,
			),
		).toEqual([
			{ ranges: [cell(0, 0)], formula: "=A1>1" },
			{ ranges: [cell(2, 2)], formula: "=C3>1" },
		]);
	});

	it("takes the destination's rules away where the source has none", async () => {
		expect(
			await rulesAfter(
				`${RULE("C3:D3")} s.getRange('A1').copyTo(s.getRange('C3'), { formatOnly: true });`,
			),
		).toEqual([{ ranges: [cell(2, 3)], formula: "=B1>1" }]);
	});

	it("brings the source's choices, and takes away the destination's where it has none", async () => {
		const paste = "copyTo(s.getRange('B1'), { formatOnly: true });";
		await expect(
			ran(
				`${CHOICE("A1")} s.getRange('A1').${paste} s.getRange('B1').setValue('z');`,
			),
		).rejects.toThrow("violates the data validation");
		expect(
			await ran(
				`${CHOICE("B1")} s.getRange('A1').${paste} s.getRange('B1').setValue('z'); return s.getRange('B1').getValue();`,
			),
		).toBe("z");
	});
});

describe("a tab made of a live one", () => {
	const MADE =
		"ss.setNamedRange('total', s.getRange('B2')); s.protect().setWarningOnly(true); var t = ss.insertSheet('Copy', 1, { template: s });";
	const NAMES =
		"ss.getNamedRanges().map(function (n) { return n.getName() + ' ' + n.getRange().getSheet().getName(); })";

	it("has the names as its own", async () => {
		expect(await ran(`${MADE} return ${NAMES};`)).toEqual([
			"total Sheet1",
			"'Copy'!total Copy",
		]);
	});

	it("is protected like it", async () => {
		const desk = await open(entry(MADE));
		await desk.call("run");
		expect(desk.state()).toContain('"sheetId":"tab1","warningOnly":true');
	});

	it("takes its own names along when it goes", async () => {
		expect(await ran(`${MADE} ss.deleteSheet(t); return ${NAMES};`)).toEqual([
			"total Sheet1",
		]);
	});
});

describe("a run that is killed", () => {
	const CARELESS = `
function run() {
	var ss = SpreadsheetApp.getActive(), sheet;
	try { sheet = ss.insertSheet('New'); sheet.getRange('A1').setValue(1); }
	catch (e) { if (sheet) ss.deleteSheet(sheet); return 'taken back'; }
}`;
	it.each([
		[1, ["Sheet1"]],
		[2, ["Sheet1"]],
		[3, ["Sheet1", "New"]],
		[4, ["Sheet1", "New"]],
	])("at call %d takes nothing back", async (killAt, tabs) => {
		const desk = await open(CARELESS);
		await expect(desk.call("run", [], { killAt })).rejects.toThrow(
			"Exceeded maximum execution time",
		);
		expect(desk.tabs()).toEqual(tabs);
		await desk.call("run", [], { killAt: 5 }).catch(() => undefined);
	});
});

describe("a calculated cell", () => {
	const PREPARE =
		"function prepare() { var s = SpreadsheetApp.getActive().getSheets()[0]; s.getRange('A1:B1').setValues([[2, '=A1*3']]); }";

	it("answers Loading... while it calculates, a typed one never", async () => {
		const desk = await open(
			entry("return s.getRange('A1:B1').getValues();", PREPARE),
		);
		await desk.call("prepare");
		expect(await desk.call("run", [], { loading: true })).toEqual([
			[2, "Loading..."],
		]);
		expect(await desk.call("run")).toEqual([[2, 6]]);
	});

	const GOES = `
function prepare() {
	var ss = SpreadsheetApp.getActive(), s = ss.getSheets()[0];
	ss.insertSheet('Other').getRange('A1').setValue(1);
	ss.setNamedRange('one', ss.getSheetByName('Other').getRange('A1'));
	ss.setActiveSheet(s);
	s.getRange('A1:B1').setValues([[2, '=A1*3']]);
	if (FORMULA) s.getRange('C1').setFormula(FORMULA);
}`;
	it.each([
		["a tab", "ss.deleteSheet(ss.getSheetByName('Other'));", "=Other!A1"],
		["a name", "ss.removeNamedRange('one');", "=one+1"],
	])(
		"can be read after %s was taken away that no formula mentions",
		async (_, take, formula) => {
			const read = `${take} return s.getRange('B1').getValue();`;
			const free = await open(entry(read, `var FORMULA = ''; ${GOES}`));
			await free.call("prepare");
			expect(await free.call("run")).toBe(6);
			const bound = await open(
				entry(read, `var FORMULA = '${formula}'; ${GOES}`),
			);
			await bound.call("prepare");
			await expect(bound.call("run")).rejects.toThrow("read first, write last");
		},
	);
});

describe("the order of a call", () => {
	it("says which calls wrote a formula", async () => {
		const desk = await open(
			entry(
				"s.getRange('A1:B1').setValues([['x', '=1+1']]); s.getRange('A2').setValues([['=']]); s.getRange('A3').setFormulas([['=A1']]);",
			),
		);
		await desk.call("run");
		expect(
			desk.counts().order.filter((name) => name.startsWith("Range.set")),
		).toEqual(["Range.setValues =", "Range.setValues", "Range.setFormulas ="]);
	});
});

describe("a file in another time zone", () => {
	// IANA: 2027-03-28 is the night of the change in Berlin, 2027-03-14 in Los Angeles, 2027-04-04 in Auckland
	it.each([
		["Europe/Berlin", "2027-03-28", "2027-03-27T23:00:00.000Z"],
		["Europe/Berlin", "2027-03-29", "2027-03-28T22:00:00.000Z"],
		["America/Los_Angeles", "2027-03-14", "2027-03-14T08:00:00.000Z"],
		["America/Los_Angeles", "2027-03-15", "2027-03-15T07:00:00.000Z"],
		["Pacific/Auckland", "2027-04-04", "2027-04-03T11:00:00.000Z"],
		["Pacific/Auckland", "2027-04-05", "2027-04-04T12:00:00.000Z"],
	])("%s: %s begins at %s", async (timeZone, day, moment) => {
		const desk = await open(
			entry(
				"var d = s.getRange('A1').getValue(); s.getRange('A2').setValue(d); return [d.toISOString(), Utilities.formatDate(d, ss.getSpreadsheetTimeZone(), 'yyyy-MM-dd HH:mm')];",
			),
			{ timeZone },
		);
		desk.type("Sheet1", "A1", day);
		await desk.settle();
		expect(await desk.call("run")).toEqual([moment, `${day} 00:00`]);
		expect(desk.display("Sheet1", "A1:A2").flat()).toEqual([day, day]);
	});

	it("has times of day", async () => {
		const desk = await open(
			entry(
				"return Utilities.formatDate(s.getRange('A1').getValue(), ss.getSpreadsheetTimeZone(), 'yyyy-MM-dd HH:mm');",
			),
			{ timeZone: "Pacific/Auckland" },
		);
		desk.type("Sheet1", "A1", "14:05");
		await desk.settle();
		expect(await desk.call("run")).toBe("1899-12-30 14:05");
	});
});

it("a file keeps no properties for a script that is neither published nor bound", async () => {
	const desk = await open(
		entry("return PropertiesService.getDocumentProperties();"),
		{ bound: false },
	);
	expect(await desk.call("run")).toBeNull();
});
