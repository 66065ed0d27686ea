/** What a tab of the script can be asked, and the ranges it gives. */
import { BooleanNumber, type Worksheet } from "@univerjs/core";
import { tabNumber } from "../book";
import { rawAt } from "../values";
import { type Call, signature } from "./call";
import { conditionalFormatRules } from "./conditional-rules";
import { picturesOf } from "./pictures";
import {
	type Place,
	placeBySize,
	placeByText,
	type SheetPlace,
	sheetAt,
} from "./place";
import { protectionsOf } from "./protection";
import { rangeService } from "./range";
import { rangeListService } from "./range-list";
import { spreadsheetService } from "./spreadsheet";

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

export function readMethods(call: Call, place: SheetPlace) {
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
