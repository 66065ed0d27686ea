/** New tabs, and tabs taken away. */
import type { IWorksheetData, Worksheet } from "@univerjs/core";
import { InsertSheetMutation } from "@univerjs/sheets";
import { execute, sheetNamed, sheets } from "../book";
import { removeNamesOf } from "../names";
import { type Call, signature } from "./call";
import { clearChoices } from "./choice";
import { copiedData, copyBesideCells } from "./copied-tab";
import { tabsMentioning } from "./mentions";
import { activate, type SheetPlace, sheetAt } from "./place";
import { sheetService } from "./sheet";

const NEW_ROWS = 1000;
const NEW_COLUMNS = 26;

const duplicate = (name: string) =>
	new Error(
		`A sheet with the name "${name}" already exists. Please enter another name.`,
	);

function freeId(call: Call): string {
	const { host } = call;
	const taken = new Set(sheets(host.book).map((sheet) => sheet.getSheetId()));
	// not the id of a tab that is gone: a link to that one would lead here
	host.lastTab = Math.max(host.lastTab, taken.size - 1) + 1;
	while (taken.has(`tab${host.lastTab}`)) host.lastTab += 1;
	return `tab${host.lastTab}`;
}

function freeName(call: Call): string {
	let number = 1;
	while (sheetNamed(call.host.book, `Sheet${number}`)) number += 1;
	return `Sheet${number}`;
}

/** A tab as new ones are. */
const blankData = (id: string, name: string): IWorksheetData => ({
	id,
	name,
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
});

interface Wanted {
	name: string | undefined;
	index: number | undefined;
	template: Worksheet | undefined;
}

/** The tab in `{ template: sheet }`. */
function templateIn(call: Call, options: object, refuse: () => Error) {
	const { template, ...others } = options as { template?: unknown };
	if (Object.keys(others).length > 0) throw refuse();
	if (template === undefined || template === null) return undefined;
	return sheetAt(call, call.inner<SheetPlace>(template, "Sheet"));
}

/** `([name][, index][, options])`. */
function wantedTab(call: Call, args: readonly unknown[]): Wanted {
	const rest = [...args];
	const refuse = () =>
		signature(args, "SpreadsheetApp.Spreadsheet.insertSheet");
	const take = (type: string) =>
		typeof rest[0] === type && rest[0] !== null ? rest.shift() : undefined;
	const name = take("string") as string | undefined;
	const index = take("number") as number | undefined;
	const options = take("object") as object | undefined;
	if (rest.length > 0) throw refuse();
	const template = options && templateIn(call, options, refuse);
	return { name, index, template };
}

/** Adds a tab behind the open one, or where it is wanted, and opens it. */
export function insertSheet(call: Call, args: readonly unknown[]) {
	const { book } = call.host;
	const { name = freeName(call), index, template } = wantedTab(call, args);
	if (sheetNamed(book, name)) throw duplicate(name);
	const sheetId = freeId(call);
	const active = book.workbook.getActiveSheet();
	const after = sheets(book).findIndex(
		(sheet) => sheet.getSheetId() === active?.getSheetId(),
	);
	call.written = true;
	execute(book, InsertSheetMutation.id, {
		index: Math.min(index ?? after + 1, sheets(book).length),
		sheet: template
			? copiedData(template, sheetId, name)
			: blankData(sheetId, name),
	});
	const made = sheetAt(call, { sheetId });
	if (template) copyBesideCells(call, template, made);
	activate(call, { sheetId });
	return sheetService(call, { sheetId });
}

export function deleteSheet(call: Call, place: SheetPlace): void {
	const { book } = call.host;
	const sheet = sheetAt(call, place);
	const facade = book.workbook.getSheetBySheetId(sheet.getSheetId());
	if (sheets(book).length === 1)
		throw new Error("You can't remove all the sheets in a document.");
	const { written } = call;
	for (const sheetId of tabsMentioning(book, sheet.getName()))
		call.outdated.add(sheetId);
	// the engine sometimes keeps the choices of a tab that is gone
	clearChoices(call, sheet, {
		startRow: 0,
		startColumn: 0,
		endRow: sheet.getRowCount() - 1,
		endColumn: sheet.getColumnCount() - 1,
	});
	if (facade) book.workbook.deleteSheet(facade);
	// what is drawn may still be the tab that is gone: the engine then takes no values
	activate(call, { sheetId: book.workbook.getActiveSheet().getSheetId() });
	// nothing else calculates
	call.written = written;
	removeNamesOf(book, place.sheetId);
	const { host } = call;
	const elsewhere = (note: SheetPlace) => note.sheetId !== place.sheetId;
	host.protections = host.protections.filter(elsewhere);
	host.pictures = host.pictures.filter(elsewhere);
}
