/** Marks that come and go with the numbers. */
import type { Rule } from "../../../templates/plan";
import { MARKS } from "./looks";
import type { Page } from "./page";
import { filled } from "./tokens";

type Range = GoogleAppsScript.Spreadsheet.Range;

/** A1 of each range that the rule marks. */
export const rangesOf = ({ range }: Rule): string[] => range.split(/\s*,\s*/);

/** What every text about something wrong begins with, in all tabs. */
const WRONG = "Look:";

/** Marks what is wrong, in these ranges. */
export const lookOut = (ranges: Range[], color: string) =>
	SpreadsheetApp.newConditionalFormatRule()
		.whenTextStartsWith(WRONG)
		.setRanges(ranges)
		.setBackground(color)
		.build();

/** Adds the tab's own rules to the mark that it was copied with; the first that holds wins. */
export function setRules(
	page: Page,
	sheet: GoogleAppsScript.Spreadsheet.Sheet,
	at: (a1: string) => Range,
): void {
	const { rules = [] } = page.tab;
	sheet.setConditionalFormatRules([
		...sheet.getConditionalFormatRules(),
		...rules.map((rule) => built(rule, page, rangesOf(rule).map(at))),
	]);
}

const built = ({ when, look }: Rule, page: Page, ranges: Range[]) =>
	SpreadsheetApp.newConditionalFormatRule()
		.whenFormulaSatisfied(filled(when, page.tokens))
		.setRanges(ranges)
		.setBackground(MARKS[look])
		.build();
