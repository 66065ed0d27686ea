/** Puts values, formats and lines into cells. */
import { CellValueType, type Worksheet } from "@univerjs/core";
import type { Cell } from "../book";
import { isDate, isDatePattern, serialOf } from "../dates";
import { patternAt } from "../values";
import { NO_CONTENT, typedCell } from "../writing";
import type { Call } from "./call";
import { changeCells } from "./change";
import { type Place, sheetAt } from "./place";
import { bordersAt, type Sides, STYLES } from "./style";
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
			v: serialOf(value),
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

/** Puts a format on all cells of the places, in one command a tab. */
export function writeStyle(
	call: Call,
	places: readonly Place[],
	method: keyof typeof STYLES,
	value: unknown,
): void {
	const style = STYLES[method](value, `SpreadsheetApp.Range.${method}`);
	for (const sheetId of new Set(places.map((place) => place.sheetId))) {
		const own = places.filter((place) => place.sheetId === sheetId);
		changeCells(
			call,
			sheetAt(call, { sheetId }),
			own.map(({ block }) => block),
			() => ({ s: style }),
		);
	}
}

/** Draws lines around and inside each place. */
export function writeBorders(
	call: Call,
	places: readonly Place[],
	sides: Sides,
): void {
	for (const place of places)
		changeCells(
			call,
			sheetAt(call, place),
			[place.block],
			(row, column, block) => ({
				s: {
					bd: bordersAt(sides, {
						top: row === block.startRow,
						bottom: row === block.endRow,
						left: column === block.startColumn,
						right: column === block.endColumn,
					}),
				},
			}),
		);
}

/** The arguments of `setBorder`, which Range and RangeList share. */
export function sidesOf(args: readonly unknown[]): Sides {
	const on = (index: number) => (args[index] ?? null) as boolean | null;
	return {
		top: on(0),
		left: on(1),
		bottom: on(2),
		right: on(3),
		vertical: on(4),
		horizontal: on(5),
		color: (args[6] ?? null) as string | null,
		style: (args[7] ?? null) as string | null,
	};
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
