/** Puts values into cells, and takes away what is in them. */
import { CellValueType, type Worksheet } from "@univerjs/core";
import type { Cell } from "../book";
import { isDate, isDatePattern, serialOf } from "../dates";
import { patternAt } from "../values";
import { NO_CONTENT, typedCell } from "../writing";
import type { Call } from "./call";
import { changeCells } from "./change";
import { type Place, sheetAt } from "./place";
import { checkValid } from "./valid";

function contentFor(
	call: Call,
	sheet: Worksheet,
	row: number,
	column: number,
	value: unknown,
): Cell {
	const { book } = call.host;
	if (value === null || value === undefined || value === "") return NO_CONTENT;
	if (isDate(value)) {
		const dated = isDatePattern(patternAt(book, sheet, row, column));
		const style = dated ? {} : { s: { n: { pattern: "yyyy-mm-dd" } } };
		return {
			...NO_CONTENT,
			v: serialOf(value, book.timeZone),
			t: CellValueType.NUMBER,
			...style,
		};
	}
	if (typeof value === "boolean")
		return { ...NO_CONTENT, v: value ? 1 : 0, t: CellValueType.BOOLEAN };
	if (typeof value === "number" && Number.isFinite(value))
		return { ...NO_CONTENT, v: value, t: CellValueType.NUMBER };
	if (typeof value !== "string")
		throw new Error(`${String(value)} cannot be kept in a cell`);
	if (value.length > 50_000)
		throw new Error(
			"Your input contains more than the maximum of 50000 characters in a single cell.",
		);
	return typedCell(book, sheet, row, column, value, "script");
}

/** Writes values into places; each is parsed as if it were typed there. */
export function writeValues(
	call: Call,
	place: Place,
	inputAt: (row: number, column: number) => unknown,
): void {
	const sheet = sheetAt(call, place);
	changeCells(call, sheet, [place.block], (row, column) => {
		const value = inputAt(row, column);
		const cell = contentFor(call, sheet, row, column, value);
		if (cell?.v !== null && cell?.v !== undefined)
			checkValid(call.host.book, sheet, row, column, cell.v);
		return cell;
	});
}

/** Takes away content, formats or both. */
export function clearCells(
	call: Call,
	places: readonly Place[],
	what: { content: boolean; format: boolean },
): void {
	for (const place of places)
		changeCells(call, sheetAt(call, place), [place.block], () => ({
			...(what.content ? NO_CONTENT : {}),
			...(what.format ? { s: null } : {}),
		}));
}
