/** New tabs, and the ranges of them that a page speaks of. */
import { rangesOf } from "./marks";
import type { Page } from "./page";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

/** A page and the new tab it is written to. */
export interface Grid {
	page: Page;
	sheet: Sheet;
	/** All the cells of the page; the tab may still be larger. */
	cells: Range;
	/** The range of an A1 text that the page speaks of. */
	at(a1: string): Range;
}

/** Rows and columns of a tab. */
export interface Size {
	rows: number;
	columns: number;
}

/** Cuts a tab, or lengthens it. */
export function resize(sheet: Sheet, from: Size, to: Size): void {
	if (from.rows < to.rows)
		sheet.insertRowsAfter(from.rows, to.rows - from.rows);
	if (from.rows > to.rows) sheet.deleteRows(to.rows + 1, from.rows - to.rows);
	if (from.columns < to.columns)
		sheet.insertColumnsAfter(from.columns, to.columns - from.columns);
	if (from.columns > to.columns)
		sheet.deleteColumns(to.columns + 1, from.columns - to.columns);
}

/** The page's ranges in its tab, all fetched in two calls. */
export function gridOf(page: Page, sheet: Sheet): Grid {
	const { whole } = page;
	const { rules = [] } = page.tab;
	const texts = [
		...new Set([
			whole,
			...Object.values(page.names),
			...page.inputs,
			...rules.flatMap(rangesOf),
		]),
	];
	const ranges = sheet.getRangeList(texts).getRanges();
	const at = (a1: string): Range => {
		const range = ranges[texts.indexOf(a1)];
		if (!range) throw new Error(`${page.name} does not speak of ${a1}`);
		return range;
	};
	return { page, sheet, cells: at(whole), at };
}
