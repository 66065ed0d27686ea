/** `Sheet` of the script. */
import { BooleanNumber, type Worksheet } from "@univerjs/core";
import {
	SetFrozenMutation,
	SetTabColorMutation,
	SetWorksheetHideMutation,
} from "@univerjs/sheets";
import { sheetNamed } from "../book";
import { type Call, signature } from "./call";
import { change } from "./change";
import { setConditionalFormatRules } from "./conditional-rules";
import { insertImage } from "./pictures";
import { type SheetPlace, sheetAt } from "./place";
import { protect } from "./protection";
import { gridMethods, sizeMethods } from "./sheet-grid";
import { readMethods } from "./sheet-reading";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Methods = Pick<
	Sheet,
	| "deleteColumns"
	| "deleteRows"
	| "getConditionalFormatRules"
	| "getDataRange"
	| "getImages"
	| "getIndex"
	| "getMaxColumns"
	| "getLastRow"
	| "getMaxRows"
	| "getName"
	| "getRange"
	| "getRangeList"
	| "getSheetId"
	| "hideColumns"
	| "hideSheet"
	| "insertColumnsAfter"
	| "insertImage"
	| "insertRowsAfter"
	| "protect"
	| "setColumnWidths"
	| "setConditionalFormatRules"
	| "setFrozenColumns"
	| "setFrozenRows"
	| "setName"
	| "setTabColor"
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
	return {
		setName(name: unknown) {
			rename(call, sheet(), name);
			return self();
		},
		setFrozenRows: (rows: number) => freeze(rows, sheet().getFreeze().xSplit),
		setFrozenColumns: (columns: number) =>
			freeze(sheet().getFreeze().ySplit, columns),
		setTabColor(color: string | null) {
			change(call, sheet(), SetTabColorMutation.id, { color: color ?? "" });
			return self();
		},
		hideSheet() {
			change(call, sheet(), SetWorksheetHideMutation.id, {
				hidden: BooleanNumber.TRUE,
			});
			return self();
		},
		setConditionalFormatRules(rules: unknown) {
			if (!Array.isArray(rules))
				throw signature(
					[rules],
					"SpreadsheetApp.Sheet.setConditionalFormatRules",
				);
			setConditionalFormatRules(call, sheet(), rules);
		},
		protect: () => protect(call, sheet()),
		insertImage: (...args: unknown[]) => insertImage(call, sheet(), args),
	};
}

export function sheetService(call: Call, place: SheetPlace): Sheet {
	const self = () => served;
	const methods: Methods = {
		...readMethods(call, place),
		...gridMethods(call, place, self),
		...sizeMethods(call, place, self),
		...lookMethods(call, place, self),
	};
	const served: Sheet = call.serve<Sheet>("Sheet", methods, place);
	return served;
}
