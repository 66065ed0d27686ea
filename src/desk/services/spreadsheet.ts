/** `Spreadsheet` of the script. */
import { formatA1 } from "../a1";
import { sheetNamed, sheets } from "../book";
import { showSelected } from "../hand";
import { namedRange, namedRanges, removeName, setName } from "../names";
import type { Call } from "./call";
import { tabsMentioning } from "./mentions";
import {
	activate,
	type Place,
	placeByText,
	placeOn,
	type SheetPlace,
	sheetAt,
} from "./place";
import { rangeService } from "./range";
import { sheetService } from "./sheet";
import { deleteSheet, insertSheet } from "./tabs";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type NamedRange = GoogleAppsScript.Spreadsheet.NamedRange;
type Methods = Pick<
	Spreadsheet,
	| "deleteSheet"
	| "getActiveSheet"
	| "getCurrentCell"
	| "getId"
	| "getNamedRanges"
	| "getNumSheets"
	| "getRange"
	| "getRangeByName"
	| "getSheetByName"
	| "getSheets"
	| "getSpreadsheetLocale"
	| "getSpreadsheetTimeZone"
	| "insertSheet"
	| "removeNamedRange"
	| "setActiveRange"
	| "setActiveSheet"
	| "setNamedRange"
>;

/** Takes a name away; formulas that have it calculate. */
function takeName(call: Call, name: string): void {
	const { book } = call.host;
	for (const sheetId of tabsMentioning(book, name)) call.outdated.add(sheetId);
	removeName(book, name);
}

function namedRangeService(call: Call, name: string): NamedRange {
	const methods: Pick<NamedRange, "getName" | "getRange" | "remove"> = {
		getName: () => name,
		getRange() {
			const cells = namedRange(call.host.book, name)?.cells;
			if (!cells) throw new Error("Range not found");
			return rangeService(call, placeOn(cells.sheet, cells.block));
		},
		remove: () => takeName(call, name),
	};
	return call.serve<NamedRange>("NamedRange", methods);
}

function nameMethods(call: Call) {
	const { book } = call.host;
	return {
		getRangeByName(name: string) {
			const cells = namedRange(book, String(name))?.cells;
			return cells
				? rangeService(call, placeOn(cells.sheet, cells.block))
				: null;
		},
		getNamedRanges: () =>
			namedRanges(book)
				.filter(({ cells }) => cells)
				.map(({ name }) => namedRangeService(call, name)),
		setNamedRange(name: string, range: unknown) {
			const place = call.inner<Place>(range, "Range");
			call.written = true;
			setName(book, String(name), sheetAt(call, place), place.block);
		},
		removeNamedRange: (name: string) => takeName(call, String(name)),
	};
}

/** The first of the selected cells of the open tab. */
function currentPlace(call: Call): Place {
	const sheet = call.host.book.workbook.getActiveSheet();
	const cells = sheet.getSelection()?.getActiveRange()?.getRange();
	const { startRow, startColumn } = cells ?? { startRow: 0, startColumn: 0 };
	return {
		sheetId: sheet.getSheetId(),
		block: { startRow, startColumn, endRow: startRow, endColumn: startColumn },
	};
}

/** Opens the tab and selects the cells. */
function activateCells(call: Call, place: Place): void {
	activate(call, place);
	const sheet = call.host.book.workbook.getSheetBySheetId(place.sheetId);
	if (sheet) showSelected(sheet, formatA1(place.block));
}

function activeMethods(call: Call) {
	const { workbook } = call.host.book;
	const activeSheet = () => workbook.getActiveSheet();
	return {
		getActiveSheet: () =>
			sheetService(call, { sheetId: activeSheet().getSheetId() }),
		setActiveSheet(sheet: unknown) {
			const place = call.inner<SheetPlace>(sheet, "Sheet");
			activate(call, place);
			return sheetService(call, place);
		},
		setActiveRange(range: unknown) {
			const place = call.inner<Place>(range, "Range");
			activateCells(call, place);
			return rangeService(call, place);
		},
		getCurrentCell: () => rangeService(call, currentPlace(call)),
	};
}

export function spreadsheetService(call: Call): Spreadsheet {
	const { book } = call.host;
	const methods: Methods = {
		...nameMethods(call),
		...activeMethods(call),
		getId: () => call.host.fileId,
		getSpreadsheetLocale: () => book.locale,
		getSpreadsheetTimeZone: () => book.timeZone,
		getSheets: () =>
			sheets(book).map((sheet) =>
				sheetService(call, { sheetId: sheet.getSheetId() }),
			),
		getNumSheets: () => sheets(book).length,
		getSheetByName(name) {
			const sheet = sheetNamed(book, String(name));
			return sheet ? sheetService(call, { sheetId: sheet.getSheetId() }) : null;
		},
		getRange(text) {
			const active = sheetAt(call, {
				sheetId: book.workbook.getActiveSheet().getSheetId(),
			});
			return rangeService(call, placeByText(call, active, String(text)));
		},
		insertSheet: (...args: unknown[]) => insertSheet(call, args),
		deleteSheet: (sheet) =>
			deleteSheet(call, call.inner<SheetPlace>(sheet, "Sheet")),
	};
	return call.serve<Spreadsheet>("Spreadsheet", methods);
}
