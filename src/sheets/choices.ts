/** Dropdowns and limits of what may be typed. */
import type { Choice } from "../template/plan";
import type { Page } from "./page";
import { filled } from "./tokens";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Range = GoogleAppsScript.Spreadsheet.Range;
type Builder = GoogleAppsScript.Spreadsheet.DataValidationBuilder;

/** Sets the tab's choices; `at` answers the ranges they speak of. */
export function setChoices(
	page: Page,
	at: (a1: string) => Range,
	spreadsheet: Spreadsheet,
): void {
	for (const choice of page.tab.choices ?? []) {
		const builder = demanded(choice, page, spreadsheet);
		if (choice.strict) builder.setAllowInvalid(false);
		if (choice.help) builder.setHelpText(filled(choice.help, page.tokens));
		at(choice.range).setDataValidation(builder.build());
	}
}

function demanded(
	{ range, list, from, between }: Choice,
	page: Page,
	spreadsheet: Spreadsheet,
): Builder {
	const builder = SpreadsheetApp.newDataValidation();
	if (list) return builder.requireValueInList([...list], true);
	if (between) return builder.requireNumberBetween(...between);
	const name = filled(from ?? "", page.tokens);
	const source = spreadsheet.getRangeByName(name);
	if (!source) throw new Error(`${page.name}!${range}: no range named ${name}`);
	return builder.requireValueInRange(source, true);
}
