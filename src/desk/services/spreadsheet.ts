/** `Spreadsheet` of the script. */
import { sheetNamed, sheets } from "../book";
import { namedRange, namedRanges, removeName, setName } from "../names";
import type { Call } from "./call";
import {
	activate,
	type Place,
	placeByText,
	placeOn,
	type SheetPlace,
	sheetAt,
} from "./place";
import { activateCells, rangeService } from "./range";
import { sheetService } from "./sheet";
import { deleteSheet, insertSheet, moveActiveSheet } from "./tabs";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type NamedRange = GoogleAppsScript.Spreadsheet.NamedRange;
type Methods = Pick<
	Spreadsheet,
	| "deleteSheet"
	| "getActiveCell"
	| "getActiveRange"
	| "getActiveSheet"
	| "getCurrentCell"
	| "getName"
	| "getNamedRanges"
	| "getNumSheets"
	| "getRange"
	| "getRangeByName"
	| "getSheetByName"
	| "getSheets"
	| "getSpreadsheetLocale"
	| "getSpreadsheetTimeZone"
	| "insertSheet"
	| "moveActiveSheet"
	| "removeNamedRange"
	| "setActiveRange"
	| "setActiveSheet"
	| "setNamedRange"
	| "toast"
>;

function namedRangeService(call: Call, name: string): NamedRange {
	const methods: Pick<NamedRange, "getName" | "getRange" | "remove"> = {
		getName: () => name,
		getRange() {
			const cells = namedRange(call.host.book, name)?.cells;
			if (!cells) throw new Error("Range not found");
			return rangeService(call, placeOn(cells.sheet, cells.block));
		},
		remove() {
			call.written = true;
			removeName(call.host.book, name);
		},
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
		removeNamedRange(name: string) {
			call.written = true;
			removeName(book, String(name));
		},
	};
}

/** The selected cells of the open tab. */
export function activePlace(call: Call): Place {
	const sheet = call.host.book.workbook.getActiveSheet();
	const cells = sheet.getSelection()?.getActiveRange()?.getRange();
	const { startRow, startColumn, endRow, endColumn } = cells ?? {
		startRow: 0,
		startColumn: 0,
		endRow: 0,
		endColumn: 0,
	};
	return {
		sheetId: sheet.getSheetId(),
		block: { startRow, startColumn, endRow, endColumn },
	};
}

function activeMethods(call: Call) {
	const { workbook } = call.host.book;
	const activeSheet = () => workbook.getActiveSheet();
	const current = () => {
		const { sheetId, block } = activePlace(call);
		const { startRow, startColumn } = block;
		return rangeService(call, {
			sheetId,
			block: {
				startRow,
				startColumn,
				endRow: startRow,
				endColumn: startColumn,
			},
		});
	};
	return {
		getActiveSheet: () =>
			sheetService(call, { sheetId: activeSheet().getSheetId() }),
		setActiveSheet(sheet: unknown) {
			const place = call.inner<SheetPlace>(sheet, "Sheet");
			activate(call, place);
			return sheetService(call, place);
		},
		getActiveRange: () => rangeService(call, activePlace(call)),
		setActiveRange(range: unknown) {
			const place = call.inner<Place>(range, "Range");
			activateCells(call, place);
			return rangeService(call, place);
		},
		getCurrentCell: current,
		getActiveCell: current,
	};
}

export function spreadsheetService(call: Call): Spreadsheet {
	const { book, person } = call.host;
	const methods: Methods = {
		...nameMethods(call),
		...activeMethods(call),
		getName: () => book.workbook.getName(),
		getSpreadsheetLocale: () => book.locale,
		getSpreadsheetTimeZone: () => "Etc/UTC",
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
		moveActiveSheet: (position) => moveActiveSheet(call, position),
		toast: (text: unknown, title: unknown = "") =>
			person.toast?.(String(text), String(title ?? "")),
	};
	return call.serve<Spreadsheet>("Spreadsheet", methods);
}
