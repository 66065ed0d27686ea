/** What a tab of the script can be asked, and the ranges it gives. */
import type { Worksheet } from "@univerjs/core";
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
import { rangeService } from "./range";

type RangeList = GoogleAppsScript.Spreadsheet.RangeList;

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

/** Many ranges found in one call. */
function rangeList(call: Call, sheet: Worksheet, texts: unknown): RangeList {
	if (!Array.isArray(texts) || texts.length === 0)
		throw signature([texts], "SpreadsheetApp.Sheet.getRangeList");
	const places = Array.from(texts, (text) =>
		placeByText(call, sheet, String(text)),
	);
	const methods: Pick<RangeList, "getRanges"> = {
		getRanges: () => places.map((place) => rangeService(call, place)),
	};
	return call.serve<RangeList>("RangeList", methods);
}

export function readMethods(call: Call, place: SheetPlace) {
	const sheet = () => sheetAt(call, place);
	return {
		getName: () => sheet().getName(),
		getSheetId: () => tabNumber(place.sheetId),
		getIndex: () =>
			call.host.book.workbook
				.getWorkbook()
				.getSheets()
				.findIndex((other) => other.getSheetId() === place.sheetId) + 1,
		getLastRow: () => contentSize(call, sheet()).rows,
		getMaxRows: () => sheet().getRowCount(),
		getMaxColumns: () => sheet().getColumnCount(),
		getImages: () => picturesOf(call, place.sheetId),
		getConditionalFormatRules: () => conditionalFormatRules(call, sheet()),
		getDataRange() {
			const { rows, columns } = contentSize(call, sheet());
			return rangeService(
				call,
				placeBySize(sheet(), [1, 1, Math.max(rows, 1), Math.max(columns, 1)]),
			);
		},
		getRange: (...args: unknown[]) =>
			rangeService(call, placeOf(call, sheet(), args)),
		getRangeList: (texts: unknown) => rangeList(call, sheet(), texts),
	};
}
