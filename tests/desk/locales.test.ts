import { expect, it } from "vitest";
import type { Locale } from "../../src/desk/desk";
import { entry, open } from "./open";

const LOCALES = ["en_US", "de_DE", "fr_FR", "pt_BR"] as const;
const FUNCTION = "function SHARE(part, whole) { return part / whole; }";

it.each(LOCALES)(
	"a portable workbook has the same numbers in %s",
	async (locale) => {
		const desk = await open(
			entry(
				`s.getRange("A1:A2").setValues([[3], [8]]);
			s.getRange("B1:B4").setFormulas([["=SHARE(A1;A2)"], ["=IF(A1>2;ROUND(A1/7;2);0)"], ["=SUM(A1:A)"], ['=TEXTJOIN("; ";TRUE;A1:A2)']]);
			return ss.getSpreadsheetLocale();`,
				FUNCTION,
			),
			{ locale },
		);
		expect(await desk.call("run")).toBe(locale);
		// 3/8; 3/7 = 0.4286; 3 + 8
		expect(desk.read("Sheet1", "B1:B4")).toEqual([
			[0.375],
			[0.43],
			[11],
			["3; 8"],
		]);
	},
);

it.each(["=SHARE(A1,A2)", "=A1*0.5", "=SUM({1,2})"])(
	"%s as a script's formula fails in decimal-comma files",
	async (formula) => {
		for (const locale of ["de_DE", "fr_FR", "pt_BR"] satisfies Locale[]) {
			const desk = await open(
				entry("s.getRange('C1').setFormula(a);", FUNCTION),
				{ locale },
			);
			await expect(desk.call("run", [formula])).rejects.toThrow(/parse error/);
			const values = await open(
				entry("s.getRange('C1').setValues([[a]]);", FUNCTION),
				{ locale },
			);
			await expect(values.call("run", [formula])).rejects.toThrow(
				/parse error/,
			);
			const rules = await open(
				entry(
					"s.setConditionalFormatRules([SpreadsheetApp.newConditionalFormatRule().whenFormulaSatisfied(a).setRanges([s.getRange('C1')]).build()]);",
				),
				{ locale },
			);
			await expect(rules.call("run", [formula])).rejects.toThrow(/parse error/);
		}
	},
);

it.each(LOCALES)(
	"numbers and formulas are typed and shown in the way of %s",
	async (locale) => {
		const desk = await open("", { locale });
		const comma = locale !== "en_US";
		desk.type("Sheet1", "A1", comma ? "0,5" : "0.5");
		desk.type("Sheet1", "B1", comma ? "=SUM(A1;1,5)" : "=SUM(A1,1.5)");
		await desk.settle();
		expect(desk.read("Sheet1", "A1:B1")).toEqual([[0.5, 2]]);
		expect(desk.formula("Sheet1", "B1")).toBe(
			comma ? "=SUM(A1;1,5)" : "=SUM(A1,1.5)",
		);
	},
);

it("; typed into the grid itself reaches the engine", async () => {
	const desk = await open("");
	const sheet = desk.engine.api.getActiveWorkbook()?.getSheetByName("Sheet1");
	sheet?.getRange("A1").setValue(4);
	sheet?.getRange("B1").setFormula('=IF(A1>3;SUM(A1:A);"a;b")');
	await desk.settle();
	expect(desk.read("Sheet1", "B1")).toEqual([[4]]);
});
