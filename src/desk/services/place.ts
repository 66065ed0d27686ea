/** What stands behind a range or a sheet of the script. */
import type { Worksheet } from "@univerjs/core";
import { type Block, parseA1, splitReference } from "../a1";
import { sheetNamed } from "../book";
import { namedRange } from "../names";
import type { Call } from "./call";

export interface Place {
	sheetId: string;
	block: Block;
}

export interface SheetPlace {
	sheetId: string;
}

const OUTSIDE =
	"The coordinates of the range are outside the dimensions of the sheet.";

/** @throws Error when the tab has been deleted since. */
export function sheetAt(call: Call, place: SheetPlace): Worksheet {
	const sheet = call.host.book.workbook
		.getWorkbook()
		.getSheetBySheetId(place.sheetId);
	if (!sheet) throw new Error(`Sheet ${place.sheetId} not found`);
	return sheet;
}

/** A place on the grid. @throws Error outside it. */
export function placeOn(sheet: Worksheet, block: Block): Place {
	const fits =
		block.startRow >= 0 &&
		block.startColumn >= 0 &&
		block.endRow >= block.startRow &&
		block.endColumn >= block.startColumn &&
		block.endRow < sheet.getRowCount() &&
		block.endColumn < sheet.getColumnCount();
	if (!fits) throw new Error(OUTSIDE);
	return { sheetId: sheet.getSheetId(), block };
}

/** Row and column from 1, and sizes. @throws Error for sizes below 1 and outside the grid. */
export function placeBySize(
	sheet: Worksheet,
	[row, column, rows, columns]: readonly [number, number, number, number],
): Place {
	if (rows < 1)
		throw new Error("The number of rows in the range must be at least 1.");
	if (columns < 1)
		throw new Error("The number of columns in the range must be at least 1.");
	return placeOn(sheet, {
		startRow: row - 1,
		startColumn: column - 1,
		endRow: row + rows - 2,
		endColumn: column + columns - 2,
	});
}

/** A1 notation, with or without a tab, or a named range. @throws Error for anything else. */
export function placeByText(call: Call, sheet: Worksheet, text: string): Place {
	const { book } = call.host;
	const { tab, range } = splitReference(text);
	const on = tab === undefined ? sheet : sheetNamed(book, tab);
	const block = on && parseA1(range, on.getRowCount(), on.getColumnCount());
	if (on && block) return placeOn(on, block);
	const named = tab === undefined ? namedRange(book, text)?.cells : undefined;
	if (!named) throw new Error("Range not found");
	return placeOn(named.sheet, named.block);
}

/** Opens a tab, as a click on it would. */
export function activate(call: Call, place: SheetPlace): void {
	const { workbook } = call.host.book;
	const sheet = workbook.getSheetBySheetId(place.sheetId);
	if (sheet) workbook.setActiveSheet(sheet);
}
