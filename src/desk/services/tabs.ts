/** New tabs, tabs taken away, tabs moved. */
import {
	InsertSheetMutation,
	SetWorksheetOrderMutation,
} from "@univerjs/sheets";
import { execute, sheetNamed, sheets } from "../book";
import { type Call, signature } from "./call";
import { activate, type SheetPlace, sheetAt } from "./place";
import { sheetService } from "./sheet";

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

export function insertSheet(call: Call, args: unknown[]) {
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

export function deleteSheet(call: Call, place: SheetPlace): void {
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

export function moveActiveSheet(call: Call, position: unknown): void {
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
