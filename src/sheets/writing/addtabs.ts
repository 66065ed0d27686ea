/** New tabs for pages: the first is made, and the others are copied from it while it is blank. */

import { LOOKS, MARKS, TEXT_SIZE } from "./looks";
import { lookOut } from "./marks";
import type { Page } from "./page";
import { type Grid, gridOf, resize, type Size } from "./tabranges";
import type { Added } from "./undo";
import { commonWidth, widthRuns } from "./widths";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** What a tab has from the one that it was copied from. */
interface Frame {
	sheet: Sheet;
	color: string | undefined;
	frozenRows: number;
	frozenColumns: number;
}

const frameOf = (page: Page, sheet: Sheet): Frame => ({
	sheet,
	color: page.tab.color,
	frozenRows: page.tab.frozenRows ?? 0,
	frozenColumns: page.tab.frozenColumns ?? 0,
});

/**
 * A tab for each page, cut to its size, with its color, widths and what stays in view, and the mark for what is wrong.
 *
 * The first is as large as the largest, so that the others need only be cut: a mark on all cells stays one.
 */
export function addedTabs(
	pages: readonly Page[],
	added: Added,
	tabsBefore: number,
): Grid[] {
	const [first] = pages;
	if (!first) return [];
	const width = commonWidth(pages.map(seenWidths));
	const frames = [firstTab(pages, added, tabsBefore, width)];
	for (const [index, page] of pages.slice(1).entries())
		frames.push(copiedTab(page, frames, added, tabsBefore + index + 1));
	const largest = largestOf(pages);
	return pages.flatMap((page, index) => {
		const own = frames[index]?.sheet;
		if (!own) return [];
		cut(own, largest, page);
		for (const run of widthRuns(seenWidths(page), width))
			own.setColumnWidths(run.first, run.count, run.width);
		if (page.tab.keys) own.hideColumns(page.tab.keys);
		return [gridOf(page, own)];
	});
}

const seenColumns = ({ tab: { widths, hidden = 0 } }: Page): number =>
	widths.length - hidden;

/** A column that is out of sight has whatever width it has. */
const seenWidths = (page: Page): number[] =>
	page.tab.widths.slice(0, seenColumns(page));

interface Largest extends Size {
	/** How many of the columns, the last, are out of sight. */
	hidden: number;
}

function largestOf(pages: readonly Page[]): Largest {
	const hidden = Math.max(...pages.map(({ tab }) => tab.hidden ?? 0));
	return {
		rows: Math.max(...pages.map(({ tab }) => tab.rows)),
		columns: Math.max(...pages.map(seenColumns)) + hidden,
		hidden,
	};
}

/** Takes rows away at the end, and columns before those out of sight. */
function cut(sheet: Sheet, from: Size, page: Page): void {
	const { rows, widths } = page.tab;
	if (from.rows > rows) sheet.deleteRows(rows + 1, from.rows - rows);
	if (from.columns > widths.length)
		sheet.deleteColumns(seenColumns(page) + 1, from.columns - widths.length);
}

function firstTab(
	pages: readonly Page[],
	added: Added,
	index: number,
	width: number | undefined,
): Frame {
	const [page] = pages;
	if (!page) throw new Error("There is no page");
	const largest = largestOf(pages);
	const sheet = insertedSheet(page.name, index, added);
	const fresh = { rows: sheet.getMaxRows(), columns: sheet.getMaxColumns() };
	resize(sheet, fresh, largest);
	if (width) sheet.setColumnWidths(1, largest.columns, width);
	if (largest.hidden)
		sheet.hideColumns(largest.columns - largest.hidden + 1, largest.hidden);
	const all = sheet.getRange(1, 1, largest.rows, largest.columns);
	sheet.setConditionalFormatRules([lookOut([all], MARKS.warning)]);
	// every tab begins with its title
	all.setFontSizes(
		Array.from({ length: largest.rows }, (_, row) =>
			Array.from({ length: largest.columns }, (_, column) =>
				row + column === 0 ? (LOOKS.title.size ?? TEXT_SIZE) : TEXT_SIZE,
			),
		),
	);
	const blank = { sheet, color: undefined, frozenRows: 0, frozenColumns: 0 };
	setFrame(sheet, page, blank);
	return frameOf(page, sheet);
}

/** Copied from the earlier tab that is most like it. */
function copiedTab(
	page: Page,
	frames: readonly Frame[],
	added: Added,
	index: number,
): Frame {
	const [like] = [...frames].sort(
		(a, b) => differences(page, a).length - differences(page, b).length,
	);
	if (!like) throw new Error("There is no tab to copy");
	const sheet = insertedSheet(page.name, index, added, like.sheet);
	setFrame(sheet, page, like);
	return frameOf(page, sheet);
}

/** What a copy of the tab still needs to be framed as the page says. */
function differences(
	{ tab: { color, frozenRows = 0, frozenColumns = 0 } }: Page,
	has: Frame,
): ((sheet: Sheet) => unknown)[] {
	return [
		...(color !== has.color
			? [(sheet: Sheet) => sheet.setTabColor(color ?? null)]
			: []),
		...(frozenRows !== has.frozenRows
			? [(sheet: Sheet) => sheet.setFrozenRows(frozenRows)]
			: []),
		...(frozenColumns !== has.frozenColumns
			? [(sheet: Sheet) => sheet.setFrozenColumns(frozenColumns)]
			: []),
	];
}

function setFrame(sheet: Sheet, page: Page, has: Frame): void {
	for (const set of differences(page, has)) set(sheet);
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
