/**
 * New tabs for pages. All pages lie side by side in one wide tab, which is formatted once; each tab is a copy of it,
 * cut to its page.
 */
import { setForms } from "./forms";
import { MARKS } from "./looks";
import { lookOut } from "./marks";
import { blankCell, type Page, type PageCell } from "./page";
import { type Grid, gridOf, resize } from "./tabranges";
import type { Added } from "./undo";
import { hiddenRuns, widthRuns } from "./widths";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** The tabs of the pages, formatted, with the mark for what is wrong; their cells are blank. */
export function addedTabs(
	pages: readonly Page[],
	added: Added,
	tabsBefore: number,
): Grid[] {
	const [first, ...others] = pages;
	if (!first) return [];
	const wide = insertedSheet(first.name, tabsBefore, added);
	format(wide, pages);
	let columns = columnsOf(pages);
	const grids = others.reverse().map((page) => {
		const own = page.tab.widths.length;
		const sheet = insertedSheet(page.name, tabsBefore + 1, added, wide);
		columns -= own;
		sheet.deleteColumns(1, columns);
		wide.deleteColumns(columns + 1, own);
		return { page, sheet };
	});
	return [{ page: first, sheet: wide }, ...grids.reverse()].map(
		({ page, sheet }) => {
			finish(sheet, page, pages);
			return gridOf(page, sheet);
		},
	);
}

const columnsOf = (pages: readonly Page[]): number =>
	pages.reduce((sum, { tab }) => sum + tab.widths.length, 0);

const rowsOf = (pages: readonly Page[]): number =>
	Math.max(...pages.map(({ tab }) => tab.rows));

/** What most of the tabs have. */
function usual<T>(pages: readonly Page[], of: (page: Page) => T): T {
	const all = pages.map(of);
	const times = (one: T) => all.filter((other) => other === one).length;
	return all.reduce((best, one) => (times(one) > times(best) ? one : best));
}

const colorOf = ({ tab }: Page) => tab.color ?? null;
const frozenRows = ({ tab }: Page): number => tab.frozenRows ?? 0;

/** Sizes the wide tab and formats it as the pages say. */
function format(wide: Sheet, pages: readonly Page[]): void {
	const size = { rows: rowsOf(pages), columns: columnsOf(pages) };
	const fresh = { rows: wide.getMaxRows(), columns: wide.getMaxColumns() };
	resize(wide, fresh, size);
	const widths = pages.flatMap(({ tab }) => widthsOf(tab));
	for (const { first, count, width } of widthRuns(widths))
		wide.setColumnWidths(first, count, width);
	for (const { first, count } of hiddenRuns(widths))
		wide.hideColumns(first, count);
	const all = wide.getRange(1, 1, size.rows, size.columns);
	wide.setConditionalFormatRules([lookOut([all], MARKS.warning)]);
	setForms(all, sideBySide(pages));
	const [color, frozen] = [usual(pages, colorOf), usual(pages, frozenRows)];
	if (color) wide.setTabColor(color);
	if (frozen) wide.setFrozenRows(frozen);
}

/** The widths of the columns; undefined where one is out of sight. */
const widthsOf = ({ widths, hidden = 0, keys }: Page["tab"]) =>
	widths.map((width, at) =>
		at >= widths.length - hidden || at + 1 === keys ? undefined : width,
	);

const sideBySide = (pages: readonly Page[]): PageCell[][] =>
	Array.from({ length: rowsOf(pages) }, (_, row) =>
		pages.flatMap(
			({ cells, tab }) => cells[row] ?? tab.widths.map(() => blankCell()),
		),
	);

/** Cuts a tab to its rows, and sets what it has that most of the pages have not. */
function finish(sheet: Sheet, page: Page, pages: readonly Page[]): void {
	const { rows, frozenColumns = 0 } = page.tab;
	const all = rowsOf(pages);
	if (all > rows) sheet.deleteRows(rows + 1, all - rows);
	if (colorOf(page) !== usual(pages, colorOf)) sheet.setTabColor(colorOf(page));
	if (frozenRows(page) !== usual(pages, frozenRows))
		sheet.setFrozenRows(frozenRows(page));
	if (frozenColumns > 0) sheet.setFrozenColumns(frozenColumns);
}

/** A new tab, which is noted as soon as it is there. */
function insertedSheet(
	name: string,
	index: number,
	{ spreadsheet, tabs }: Added,
	template?: Sheet,
): Sheet {
	const sheet = template
		? spreadsheet.insertSheet(name, index, { template })
		: spreadsheet.insertSheet(name, index);
	tabs.push({ name, sheet });
	return sheet;
}
