/** `Sheet` of the script. */
import { BooleanNumber, type Worksheet } from "@univerjs/core";
import {
	SetFrozenMutation,
	SetTabColorMutation,
	SetWorksheetHideMutation,
	ToggleGridlinesMutation,
} from "@univerjs/sheets";
import { sheetNamed } from "../book";
import { type Call, signature } from "./call";
import { change } from "./change";
import { setConditionalFormatRules } from "./conditional-rules";
import { clearCells } from "./fill";
import { insertImage } from "./pictures";
import { activate, placeBySize, type SheetPlace, sheetAt } from "./place";
import { protect } from "./protection";
import { gridMethods, sizeMethods } from "./sheet-grid";
import { readMethods } from "./sheet-reading";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Methods = Pick<
	Sheet,
	| "activate"
	| "clear"
	| "clearConditionalFormatRules"
	| "clearContents"
	| "deleteColumn"
	| "deleteColumns"
	| "deleteRow"
	| "deleteRows"
	| "getColumnWidth"
	| "getConditionalFormatRules"
	| "getDataRange"
	| "getFrozenColumns"
	| "getFrozenRows"
	| "getImages"
	| "getIndex"
	| "getLastColumn"
	| "getLastRow"
	| "getMaxColumns"
	| "getMaxRows"
	| "getName"
	| "getParent"
	| "getProtections"
	| "getRange"
	| "getRangeList"
	| "getRowHeight"
	| "getSheetId"
	| "getTabColor"
	| "hideColumns"
	| "hideRows"
	| "hideSheet"
	| "insertColumnsAfter"
	| "insertImage"
	| "insertRowsAfter"
	| "isColumnHiddenByUser"
	| "isRowHiddenByUser"
	| "isSheetHidden"
	| "protect"
	| "setColumnWidth"
	| "setColumnWidths"
	| "setConditionalFormatRules"
	| "setFrozenColumns"
	| "setFrozenRows"
	| "setHiddenGridlines"
	| "setName"
	| "setRowHeight"
	| "setRowHeights"
	| "setTabColor"
	| "showColumns"
	| "showRows"
	| "showSheet"
>;

function rename(call: Call, sheet: Worksheet, name: unknown): void {
	if (typeof name !== "string" || name === "")
		throw signature([name], "SpreadsheetApp.Sheet.setName");
	const other = sheetNamed(call.host.book, name);
	if (other && other !== sheet)
		throw new Error(
			`A sheet with the name "${name}" already exists. Please enter another name.`,
		);
	call.written = true;
	call.host.book.workbook.getSheetBySheetId(sheet.getSheetId())?.setName(name);
}

function lookMethods(call: Call, place: SheetPlace, self: () => Sheet) {
	const sheet = () => sheetAt(call, place);
	const freeze = (rows: number, columns: number) =>
		change(call, sheet(), SetFrozenMutation.id, {
			startRow: rows || -1,
			startColumn: columns || -1,
			ySplit: rows,
			xSplit: columns,
		});
	const hide = (hidden: BooleanNumber) => {
		change(call, sheet(), SetWorksheetHideMutation.id, { hidden });
		return self();
	};
	const { setWidths, setHeights, ...hiding } = sizeMethods(call, place);
	return {
		...hiding,
		setName(name: unknown) {
			rename(call, sheet(), name);
			return self();
		},
		setColumnWidth(column: number, width: number) {
			setWidths(column, 1, width);
			return self();
		},
		setColumnWidths(column: number, count: number, width: number) {
			setWidths(column, count, width);
			return self();
		},
		setRowHeight(row: number, height: number) {
			setHeights(row, 1, height);
			return self();
		},
		setRowHeights(row: number, count: number, height: number) {
			setHeights(row, count, height);
			return self();
		},
		setFrozenRows: (rows: number) => freeze(rows, sheet().getFreeze().xSplit),
		setFrozenColumns: (columns: number) =>
			freeze(sheet().getFreeze().ySplit, columns),
		setTabColor(color: string | null) {
			change(call, sheet(), SetTabColorMutation.id, { color: color ?? "" });
			return self();
		},
		setHiddenGridlines(hidden: boolean) {
			change(call, sheet(), ToggleGridlinesMutation.id, {
				showGridlines: hidden ? BooleanNumber.FALSE : BooleanNumber.TRUE,
			});
			return self();
		},
		hideSheet: () => hide(BooleanNumber.TRUE),
		showSheet: () => hide(BooleanNumber.FALSE),
		setConditionalFormatRules(rules: unknown) {
			if (!Array.isArray(rules))
				throw signature(
					[rules],
					"SpreadsheetApp.Sheet.setConditionalFormatRules",
				);
			setConditionalFormatRules(call, sheet(), rules);
		},
		clearConditionalFormatRules: () =>
			setConditionalFormatRules(call, sheet(), []),
		protect: () => protect(call, sheet(), undefined),
		insertImage: (...args: unknown[]) => insertImage(call, sheet(), args),
		activate() {
			activate(call, place);
			return self();
		},
	};
}

export function sheetService(call: Call, place: SheetPlace): Sheet {
	const self = () => served;
	const all = () => {
		const sheet = sheetAt(call, place);
		return placeBySize(sheet, [
			1,
			1,
			sheet.getRowCount(),
			sheet.getColumnCount(),
		]);
	};
	const clearing = (format: boolean) => () => {
		clearCells(call, [all()], { content: true, format });
		return served;
	};
	const methods: Methods = {
		...readMethods(call, place),
		...gridMethods(call, place, self),
		...lookMethods(call, place, self),
		clear: clearing(true),
		clearContents: clearing(false),
	};
	const served: Sheet = call.serve<Sheet>("Sheet", methods, place);
	return served;
}
