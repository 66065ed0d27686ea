/**
 * Colors, fonts and number formats of all pages, in few calls: they are put on a tab of their own, a page below the
 * other, and copied from there to the tabs they are for. That tab is gone again at the end.
 */
import { a1Of } from "./a1";
import { insertedSheet } from "./addtabs";
import { type Grid, resize, type Size } from "./grid";
import { LOOKS, TEXT_SIZE } from "./looks";
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
	const cells = stacked(grids);
	const size = { rows: cells.length, columns: cells[0]?.length ?? 0 };
	const sheet = insertedSheet(BOARD, index, added);
	resize(sheet, fresh, {
		rows: Math.max(fresh.rows, size.rows),
		columns: Math.max(fresh.columns, size.columns),
	});
	const [board, ...parts] = sheet
		.getRangeList([a1Of({ row: 0, column: 0, ...size }), ...areas(grids)])
		.getRanges();
	if (board) format(board, cells);
	grids.forEach((grid, part) => {
		parts[part]?.copyTo(grid.cells, { formatOnly: true });
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
function stacked(grids: readonly Grid[]): PageCell[][] {
	const columns = Math.max(...grids.map(({ page }) => page.tab.widths.length));
	return grids.flatMap(({ page }) =>
		page.cells.map((row) =>
			Array.from(
				{ length: columns },
				(_, column) => row[column] ?? blankCell(),
			),
		),
	);
}

/** One call for each property. */
function format(board: Range, cells: readonly PageCell[][]): void {
	const each = <T>(of: (cell: PageCell) => T): T[][] =>
		cells.map((row) => row.map(of));
	board
		.setBackgrounds(each(({ look }) => orNone(LOOKS[look].background)))
		.setFontColors(each(({ look }) => orNone(LOOKS[look].color)))
		.setFontWeights(each(({ look }) => (LOOKS[look].bold ? "bold" : "normal")))
		.setFontSizes(each(({ look }) => LOOKS[look].size ?? TEXT_SIZE))
		.setNumberFormats(each((cell) => cell.format))
		.setHorizontalAlignments(each(({ align }) => align))
		.setWraps(each(({ wrap }) => wrap));
}

/** `null` is the usual color; the published types do not know it. */
const orNone = (color: string | undefined): string => (color ?? null) as string;
