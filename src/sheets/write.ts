/** Writes pages into the workbook: tabs first, then their names, since formulas want both, then everything else. */
import { a1Of, columnsOf } from "./a1";
import { setChoices } from "./choices";
import { LOOKS, TEXT_SIZE } from "./looks";
import type { Page, PageCell } from "./page";
import { setRules } from "./rules";
import type { Added } from "./undo";
import { widthRuns } from "./widths";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

/** A page and the new tab it is written to. */
interface Written {
	page: Page;
	sheet: Sheet;
	/** The whole tab. */
	grid: Range;
	/** The range of an A1 text that the page speaks of. */
	at(a1: string): Range;
}

/** Adds a tab for each page, behind all others, and writes it; `added` says at every moment what there is to undo. */
export function writePages(
	pages: readonly Page[],
	added: Added,
	tabsBefore: number,
): void {
	const tabs = pages.map((page, index) =>
		addedTab(page, tabsBefore + index, added),
	);
	for (const tab of tabs) setNames(tab, added);
	for (const { page, grid } of tabs)
		grid.setValues(matrix(page, ({ value }) => value));
	for (const tab of tabs) {
		setForms(tab);
		setFrame(tab);
		setNotes(tab);
		setChoices(tab.page, tab.at, added.spreadsheet);
		setRules(tab.page, tab.sheet, tab.at);
		protect(tab);
	}
}

/** A new tab of exactly the page's size. */
function addedTab(page: Page, index: number, added: Added): Written {
	const sheet = added.spreadsheet.insertSheet(page.name, index);
	added.tabs.push({ name: page.name, sheet });
	const { rows, widths } = page.tab;
	cutTo(sheet.getMaxRows(), rows, {
		more: (after, count) => sheet.insertRowsAfter(after, count),
		fewer: (from, count) => sheet.deleteRows(from, count),
	});
	cutTo(sheet.getMaxColumns(), widths.length, {
		more: (after, count) => sheet.insertColumnsAfter(after, count),
		fewer: (from, count) => sheet.deleteColumns(from, count),
	});
	return { page, sheet, ...rangesOf(page, sheet) };
}

function cutTo(
	there: number,
	wanted: number,
	grid: {
		more(after: number, count: number): void;
		fewer(from: number, count: number): void;
	},
): void {
	if (there < wanted) grid.more(there, wanted - there);
	if (there > wanted) grid.fewer(wanted + 1, there - wanted);
}

/** Every range the page speaks of, fetched in two calls. */
function rangesOf(page: Page, sheet: Sheet): Pick<Written, "grid" | "at"> {
	const { tab } = page;
	const whole = a1Of({
		row: 0,
		column: 0,
		rows: tab.rows,
		columns: tab.widths.length,
	});
	const texts = [
		...new Set([
			whole,
			...Object.values(page.names),
			...page.inputs,
			...Object.keys(page.notes),
			...(tab.choices ?? []).map(({ range }) => range),
			...(tab.rules ?? []).flatMap(({ range }) => range.split(",")),
		]),
	];
	const ranges = sheet.getRangeList(texts).getRanges();
	const at = (a1: string): Range => {
		const range = ranges[texts.indexOf(a1)];
		if (!range) throw new Error(`${page.name} does not speak of ${a1}`);
		return range;
	};
	return { grid: at(whole), at };
}

function setNames({ page, at }: Written, { spreadsheet, names }: Added): void {
	for (const [name, a1] of Object.entries(page.names)) {
		names.push(name);
		spreadsheet.setNamedRange(name, at(a1));
	}
}

const matrix = <T>(page: Page, of: (cell: PageCell) => T): T[][] =>
	page.cells.map((row) => row.map(of));

/** Formats go in after the values: a cell that is plain text already would keep the mark in front of a text. */
function setForms({ page, grid }: Written): void {
	const put = <T>(
		of: (cell: PageCell) => T,
		usual: T,
		set: (values: T[][]) => unknown,
	) => {
		const values = matrix(page, of);
		if (values.some((row) => row.some((value) => value !== usual))) set(values);
	};
	put(
		({ look }) => LOOKS[look].background ?? null,
		null,
		(values) => grid.setBackgrounds(values as string[][]),
	);
	put(
		({ look }) => LOOKS[look].color ?? null,
		null,
		(values) => grid.setFontColors(values as string[][]),
	);
	put<"bold" | "normal">(
		({ look }) => (LOOKS[look].bold ? "bold" : "normal"),
		"normal",
		(values) => grid.setFontWeights(values),
	);
	put(
		({ look }) => LOOKS[look].size ?? TEXT_SIZE,
		TEXT_SIZE,
		(values) => grid.setFontSizes(values),
	);
	put(
		({ format }) => format,
		"General",
		(values) => grid.setNumberFormats(values),
	);
	put(
		({ align }) => align,
		null,
		(values) => grid.setHorizontalAlignments(values as "left"[][]),
	);
	put(
		({ wrap }) => wrap,
		false,
		(values) => grid.setWraps(values),
	);
}

/** Widths, what stays in view, what is out of sight. */
function setFrame({ page: { tab }, sheet }: Written): void {
	for (const { first, count, width } of widthRuns(tab.widths))
		sheet.setColumnWidths(first, count, width);
	if (tab.frozenRows) sheet.setFrozenRows(tab.frozenRows);
	if (tab.frozenColumns) sheet.setFrozenColumns(tab.frozenColumns);
	for (const columns of tab.hidden ?? [])
		sheet.hideColumns(...columnsOf(columns));
	sheet.setTabColor(tab.color);
}

function setNotes({ page, at }: Written): void {
	for (const [cell, note] of Object.entries(page.notes)) at(cell).setNote(note);
}

/** Asks before anything but an input is changed; where all is input there is nothing to ask. */
function protect({ page, sheet, at }: Written): void {
	const results = page.tab.blocks.some(
		({ look }) => look === "result" || look === "total",
	);
	if (!results) return;
	sheet
		.protect()
		.setWarningOnly(true)
		.setUnprotectedRanges(page.inputs.map(at));
}
