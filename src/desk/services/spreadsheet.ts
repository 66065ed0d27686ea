/** `Spreadsheet` of the script: the open file. */
import {
	InsertSheetMutation,
	SetWorksheetOrderMutation,
} from "@univerjs/sheets";
import { execute, sheetNamed, sheets } from "../book";
import { namedRange, namedRanges, removeName, setName } from "../names";
import { type Call, signature } from "./call";
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

const NEW_ROWS = 1000;
const NEW_COLUMNS = 26;

const duplicate = (name: string) =>
	new Error(
		`A sheet with the name "${name}" already exists. Please enter another name.`,
	);

function freeId(call: Call): string {
	const taken = new Set(
		sheets(call.host.book).map((sheet) => sheet.getSheetId()),
	);
	let number = taken.size;
	while (taken.has(`tab${number}`)) number += 1;
	return `tab${number}`;
}

function freeName(call: Call): string {
	let number = 1;
	while (sheetNamed(call.host.book, `Sheet${number}`)) number += 1;
	return `Sheet${number}`;
}

function insertSheet(call: Call, args: unknown[]) {
	const { book } = call.host;
	const name = args.find((arg) => typeof arg === "string") as
		| string
		| undefined;
	const index = args.find((arg) => typeof arg === "number") as
		| number
		| undefined;
	const strange = args.some((arg) => arg !== name && arg !== index);
	if (strange) throw signature(args, "SpreadsheetApp.Spreadsheet.insertSheet");
	if (name !== undefined && sheetNamed(book, name)) throw duplicate(name);
	const sheetId = freeId(call);
	const active = book.workbook.getActiveSheet();
	const after = sheets(book).findIndex(
		(sheet) => sheet.getSheetId() === active?.getSheetId(),
	);
	call.written = true;
	execute(book, InsertSheetMutation.id, {
		index: Math.min(index ?? after + 1, sheets(book).length),
		sheet: {
			id: sheetId,
			name: name ?? freeName(call),
			rowCount: NEW_ROWS,
			columnCount: NEW_COLUMNS,
			defaultColumnWidth: 100,
			defaultRowHeight: 21,
			defaultStyle: { ff: "Arial", fs: 10, vt: 3 },
			cellData: {},
			rowData: {},
			columnData: {},
			mergeData: [],
			freeze: { xSplit: 0, ySplit: 0, startRow: -1, startColumn: -1 },
			rowHeader: { width: 46 },
			columnHeader: { height: 20 },
			tabColor: "",
			hidden: 0,
			showGridlines: 1,
			rightToLeft: 0,
			zoomRatio: 1,
			scrollTop: 0,
			scrollLeft: 0,
		},
	});
	activate(call, { sheetId });
	return sheetService(call, { sheetId });
}

function deleteSheet(call: Call, place: SheetPlace): void {
	const { book } = call.host;
	const sheet = sheetAt(call, place);
	const facade = book.workbook.getSheetBySheetId(sheet.getSheetId());
	if (sheets(book).length === 1)
		throw new Error("You can't remove all the sheets in a document.");
	call.written = true;
	if (facade) book.workbook.deleteSheet(facade);
	call.host.protections = call.host.protections.filter(
		(note) => note.sheetId !== place.sheetId,
	);
}

function moveActiveSheet(call: Call, position: unknown): void {
	const { book } = call.host;
	const all = sheets(book);
	if (typeof position !== "number" || position < 1 || position > all.length)
		throw new Error("The sheet position is out of bounds.");
	const active = book.workbook.getActiveSheet().getSheetId();
	call.written = true;
	execute(book, SetWorksheetOrderMutation.id, {
		subUnitId: active,
		fromOrder: all.findIndex((sheet) => sheet.getSheetId() === active),
		toOrder: position - 1,
	});
}

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
