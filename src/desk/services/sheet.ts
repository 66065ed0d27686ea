/** `Sheet` of the script. */
import { BooleanNumber, type Worksheet } from "@univerjs/core";
import {
	SetFrozenMutation,
	SetTabColorMutation,
	SetWorksheetHideMutation,
	ToggleGridlinesMutation,
} from "@univerjs/sheets";
import { sheetNamed, tabNumber } from "../book";
import { rawAt } from "../values";
import { type Call, signature } from "./call";
import { change } from "./change";
import {
	conditionalFormatRules,
	setConditionalFormatRules,
} from "./conditional";
import { clearCells } from "./fill";
import { insertImage, picturesOf } from "./pictures";
import {
	activate,
	type Place,
	placeBySize,
	placeByText,
	type SheetPlace,
	sheetAt,
} from "./place";
import { protect, protectionsOf } from "./protection";
import { rangeService } from "./range";
import { rangeListService } from "./range-list";
import { gridMethods, sizeMethods } from "./sheet-grid";
import { spreadsheetService } from "./spreadsheet";

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

/** The last row and column that hold anything, from 1; 0 in a blank tab. */
function contentSize(call: Call, sheet: Worksheet) {
	let rows = 0;
	let columns = 0;
	for (let row = 0; row < sheet.getRowCount(); row++)
		for (let column = 0; column < sheet.getColumnCount(); column++)
			if (rawAt(call.host.book, sheet, row, column) !== "") {
				rows = row + 1;
				columns = Math.max(columns, column + 1);
			}
	return { rows, columns };
}

function placeOf(call: Call, sheet: Worksheet, args: unknown[]): Place {
	const [first, ...rest] = args;
	if (typeof first === "string" && rest.length === 0)
		return placeByText(call, sheet, first);
	const numbers = args.every((arg) => typeof arg === "number");
	if (!numbers || args.length < 2 || args.length > 4)
		throw signature(args, "SpreadsheetApp.Sheet.getRange");
	const [row = 1, column = 1, rows = 1, columns = 1] = args as number[];
	return placeBySize(sheet, [row, column, rows, columns]);
}

function readMethods(call: Call, place: SheetPlace) {
	const sheet = () => sheetAt(call, place);
	const size = () => contentSize(call, sheet());
	return {
		getName: () => sheet().getName(),
		getSheetId: () => tabNumber(place.sheetId),
		getIndex: () =>
			call.host.book.workbook
				.getWorkbook()
				.getSheets()
				.findIndex((other) => other.getSheetId() === place.sheetId) + 1,
		getParent: () => spreadsheetService(call),
		getMaxRows: () => sheet().getRowCount(),
		getMaxColumns: () => sheet().getColumnCount(),
		getLastRow: () => size().rows,
		getLastColumn: () => size().columns,
		getFrozenRows: () => sheet().getFreeze().ySplit,
		getFrozenColumns: () => sheet().getFreeze().xSplit,
		getTabColor: () => sheet().getTabColor() || null,
		isSheetHidden: () => sheet().isSheetHidden() === BooleanNumber.TRUE,
		getImages: () => picturesOf(call, place.sheetId),
		getProtections: (kind: unknown) => protectionsOf(call, place.sheetId, kind),
		getConditionalFormatRules: () => conditionalFormatRules(call, sheet()),
		getDataRange() {
			const { rows, columns } = size();
			return rangeService(
				call,
				placeBySize(sheet(), [1, 1, Math.max(rows, 1), Math.max(columns, 1)]),
			);
		},
		getRange: (...args: unknown[]) =>
			rangeService(call, placeOf(call, sheet(), args)),
		getRangeList: (texts: unknown) => {
			if (!Array.isArray(texts))
				throw signature([texts], "SpreadsheetApp.Sheet.getRangeList");
			return rangeListService(
				call,
				Array.from(texts, (text) => placeByText(call, sheet(), String(text))),
			);
		},
	};
}

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
