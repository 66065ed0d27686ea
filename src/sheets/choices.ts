/** Dropdowns and limits of what may be typed. */
import type { Choice } from "../template/plan";
import type { Page } from "./page";
import { filled } from "./tokens";

type Range = GoogleAppsScript.Spreadsheet.Range;
type Builder = GoogleAppsScript.Spreadsheet.DataValidationBuilder;

/** Sets the tab's choices; `at` answers the ranges they speak of, `named` those they take their lists from. */
export function setChoices(
	page: Page,
	at: (a1: string) => Range,
	named: (name: string) => Range,
): void {
	for (const choice of page.tab.choices ?? []) {
		const builder = demanded(choice, page, named);
		if (choice.help) builder.setHelpText(filled(choice.help, page.tokens));
		at(choice.range).setDataValidation(builder.build());
	}
}

function demanded(
	{ list, from, between }: Choice,
	page: Page,
	named: (name: string) => Range,
): Builder {
	const builder = SpreadsheetApp.newDataValidation();
	if (list) return builder.requireValueInList([...list], true);
	if (between) return builder.requireNumberBetween(...between);
	return builder.requireValueInRange(
		named(filled(from ?? "", page.tokens)),
		true,
	);
}
