/**
 * Colors, fonts, number formats and dropdowns of all pages, in few calls: they are put on a tab of their own, a page
 * below the other, and copied from there to the tabs they are for. That tab is gone again at the end.
 */
import { a1Of } from "./a1";
import { insertedSheet } from "./addtabs";
import { plainChoices } from "./choices";
import { type Grid, resize, type Size } from "./grid";
import { LOOKS, PAPER, TEXT_SIZE } from "./looks";
import { blankCell, type PageCell } from "./page";
import type { Added } from "./undo";

type Range = GoogleAppsScript.Spreadsheet.Range;

/** Seen for as long as the writing takes. */
const BOARD = "Tonefold is writing …";

/** Gives every grid its form; `fresh` is the size of a new tab, `index` the place behind all others. */
export function setForms(
	grids: readonly Grid[],
	added: Added,
	{ fresh, index }: { fresh: Size; index: number },
): void {
	const columns = Math.max(...grids.map(({ page }) => page.tab.widths.length));
	const cells = stacked(
		grids.map(({ page }) => page.cells),
		columns,
		blankCell,
	);
	const size = { rows: cells.length, columns };
	const sheet = insertedSheet(BOARD, index, added);
	resize(sheet, fresh, {
		rows: Math.max(fresh.rows, size.rows),
		columns: Math.max(fresh.columns, size.columns),
	});
	const [board, ...parts] = sheet
		.getRangeList([a1Of({ row: 0, column: 0, ...size }), ...areas(grids)])
		.getRanges();
	const choices = plainChoices(grids.map(({ page }) => page));
	if (board) {
		format(board, cells);
		board.setDataValidations(stacked(choices, columns, () => null));
	}
	const { PASTE_DATA_VALIDATION } = SpreadsheetApp.CopyPasteType;
	grids.forEach(({ cells }, index) => {
		const part = parts[index];
		part?.copyTo(cells, { formatOnly: true });
		if (choices[index]?.flat().some(Boolean))
			part?.copyTo(cells, PASTE_DATA_VALIDATION, false);
	});
	added.spreadsheet.deleteSheet(sheet);
	added.tabs.pop();
}

/** Where each page lies on the board. */
function areas(grids: readonly Grid[]): string[] {
	let row = 0;
	return grids.map(({ page: { tab } }) => {
		const area = { row, column: 0, rows: tab.rows, columns: tab.widths.length };
		row += tab.rows;
		return a1Of(area);
	});
}

/** The cells of all pages as rows of one width. */
const stacked = <T>(
	pages: readonly (readonly (readonly T[])[])[],
	columns: number,
	blank: () => T,
): T[][] =>
	pages
		.flat()
		.map((row) =>
			Array.from({ length: columns }, (_, column) => row[column] ?? blank()),
		);

/** One call for each property. */
function format(board: Range, cells: readonly PageCell[][]): void {
	const each = <T>(of: (cell: PageCell) => T): T[][] =>
		cells.map((row) => row.map(of));
	board
		.setBackgrounds(
			each(({ look, paper }) =>
				orNone(LOOKS[look].background ?? (paper ? PAPER : undefined)),
			),
		)
		.setFontColors(each(({ look }) => orNone(LOOKS[look].color)))
		.setFontWeights(each(({ look }) => (LOOKS[look].bold ? "bold" : "normal")))
		.setFontSizes(each(({ look }) => LOOKS[look].size ?? TEXT_SIZE))
		.setNumberFormats(each((cell) => cell.format))
		.setHorizontalAlignments(each(({ align }) => align))
		.setWraps(each(({ wrap }) => wrap));
}

/** `null` is the usual color; the published types do not know it. */
const orNone = (color: string | undefined): string => (color ?? null) as string;
