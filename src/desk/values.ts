/** What cells hold and show, spills included. */
import {
	CellValueType,
	type IStyleData,
	numfmt,
	type Worksheet,
} from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { Book, Cell } from "./book";
import { shownError } from "./bridge";
import type { CellValue } from "./contract";
import { dateOf, isDatePattern } from "./dates";
import { partOf } from "./engine-private";
import { shownFormula } from "./separators";

const spilledCell = (
	book: Book,
	sheet: Worksheet,
	row: number,
	column: number,
) =>
	partOf(book.engine, FormulaDataModel).getArrayFormulaCellData()[
		book.workbook.getId()
	]?.[sheet.getSheetId()]?.[row]?.[column];

/** The cell's content: its own, or what a spill puts there. */
function contentAt(
	book: Book,
	sheet: Worksheet,
	row: number,
	column: number,
): Cell {
	const own = sheet.getCellRaw(row, column);
	if (own?.f || (own?.v !== undefined && own.v !== null)) return own;
	return spilledCell(book, sheet, row, column) ?? own;
}

/** Whether the engine calculates the cell: it has a formula, or a spill fills it. */
export function isCalculated(
	book: Book,
	sheet: Worksheet,
	row: number,
	column: number,
): boolean {
	const own = sheet.getCellRaw(row, column);
	if (own?.f || own?.si) return true;
	return (
		(own?.v === undefined || own.v === null) &&
		Boolean(spilledCell(book, sheet, row, column))
	);
}

export function styleAt(
	book: Book,
	sheet: Worksheet,
	row: number,
	column: number,
): IStyleData {
	const cell = sheet.getCellRaw(row, column);
	return book.workbook.getWorkbook().getStyles().getStyleByCell(cell) ?? {};
}

/** The number format, `General` where none is set. */
export function patternAt(
	book: Book,
	sheet: Worksheet,
	row: number,
	column: number,
): string {
	return styleAt(book, sheet, row, column).n?.pattern ?? "General";
}

/** The bare value: number, text, truth value, `""`; errors as their text. */
export function rawAt(
	book: Book,
	sheet: Worksheet,
	row: number,
	column: number,
): string | number | boolean {
	const cell = contentAt(book, sheet, row, column);
	if (cell?.v === undefined || cell.v === null) return "";
	if (cell.t === CellValueType.BOOLEAN) return Boolean(cell.v);
	return typeof cell.v === "string" ? shownError(cell.v) : cell.v;
}

/** The value as `getValues` gives it: a number in a date format is a Date. */
export function valueAt(
	book: Book,
	sheet: Worksheet,
	row: number,
	column: number,
): CellValue {
	const value = rawAt(book, sheet, row, column);
	return typeof value === "number" &&
		isDatePattern(patternAt(book, sheet, row, column))
		? dateOf(value, book.timeZone)
		: value;
}

/** The text that is shown. */
export function displayAt(
	book: Book,
	sheet: Worksheet,
	row: number,
	column: number,
): string {
	const value = rawAt(book, sheet, row, column);
	if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
	if (typeof value === "string") return value;
	const pattern = patternAt(book, sheet, row, column);
	if (/^general$/i.test(pattern) || pattern === "@")
		return String(Number(value.toPrecision(10)));
	return numfmt.format(pattern, value);
}

/** The formula as the file shows it, `""` where there is none. */
export function formulaAt(
	book: Book,
	sheet: Worksheet,
	row: number,
	column: number,
): string {
	const formula = sheet.getCellRaw(row, column)?.f;
	return formula ? shownFormula(formula, book.locale) : "";
}
