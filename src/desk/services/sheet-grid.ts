/** Rows and columns of a tab: how many, how wide, out of sight or not. */
import type { Worksheet } from "@univerjs/core";
import {
	SetColHiddenMutation,
	SetWorksheetColWidthMutation,
} from "@univerjs/sheets";
import { formatA1 } from "../a1";
import { showSelected } from "../hand";
import type { Call } from "./call";
import { change } from "./change";
import { placeBySize, type SheetPlace, sheetAt } from "./place";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

const TOP_LEFT = { startRow: 0, startColumn: 0 };

const columnsFrom = (sheet: Worksheet, column: number, count: number) => ({
	startRow: 0,
	endRow: sheet.getRowCount() - 1,
	startColumn: column - 1,
	endColumn: column + count - 2,
});
export function gridMethods(call: Call, place: SheetPlace, self: () => Sheet) {
	const sheet = () => sheetAt(call, place);
	const facade = () => {
		call.written = true;
		const found = call.host.book.workbook.getSheetBySheetId(place.sheetId);
		if (!found) throw new Error(`Sheet ${place.sheetId} not found`);
		return found;
	};
	/** What is selected stays so, where it is still there: the engine selects what was put in or taken out. */
	const withSelection = (change: () => void) => {
		const { startRow = 0, startColumn = 0 } =
			facade().getSelection()?.getActiveRange()?.getRange() ?? {};
		change();
		const isThere =
			startRow < sheet().getRowCount() &&
			startColumn < sheet().getColumnCount();
		const cell = isThere ? { startRow, startColumn } : TOP_LEFT;
		showSelected(
			facade(),
			formatA1({
				...cell,
				endRow: cell.startRow,
				endColumn: cell.startColumn,
			}),
		);
	};
	/** In the open tab: of another the engine would take the rows and leave the formulas that read them as they were. */
	const whileOpen = (cut: () => void) => {
		const { workbook } = call.host.book;
		const open = workbook.getActiveSheet();
		const isOpen = open.getSheetId() === place.sheetId;
		if (!isOpen) workbook.setActiveSheet(facade());
		withSelection(cut);
		if (!isOpen) workbook.setActiveSheet(open);
	};
	const checkCut = (first: number, count: number, all: number, of: string) => {
		if (first < 1 || count < 1 || first + count - 1 > all)
			throw new Error("Those rows or columns are out of bounds.");
		if (count >= all)
			throw new Error(`You can't delete all the ${of} on the sheet.`);
	};
	return {
		deleteRows(first: number, count: number) {
			checkCut(first, count, sheet().getRowCount(), "rows");
			whileOpen(() => facade().deleteRows(first - 1, count));
		},
		deleteColumns(first: number, count: number) {
			checkCut(first, count, sheet().getColumnCount(), "columns");
			whileOpen(() => facade().deleteColumns(first - 1, count));
		},
		insertRowsAfter: (row: number, count: number) => {
			withSelection(() => facade().insertRowsAfter(row - 1, count));
			return self();
		},
		insertColumnsAfter: (column: number, count: number) => {
			withSelection(() => facade().insertColumnsAfter(column - 1, count));
			return self();
		},
	};
}

/** How wide columns are, and which are out of sight. */
export function sizeMethods(call: Call, place: SheetPlace, self: () => Sheet) {
	const columns = (id: string, column: number, count: number, rest = {}) => {
		const sheet = sheetAt(call, place);
		placeBySize(sheet, [1, column, 1, count]);
		const ranges = [columnsFrom(sheet, column, count)];
		change(call, sheet, id, { ranges, ...rest });
	};
	return {
		setColumnWidths(column: number, count: number, colWidth: number) {
			columns(SetWorksheetColWidthMutation.id, column, count, { colWidth });
			return self();
		},
		hideColumns: (column: number, count = 1) =>
			columns(SetColHiddenMutation.id, column, count),
	};
}
