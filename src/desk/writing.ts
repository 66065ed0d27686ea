/** Puts values and formulas into cells. */
import { CellValueType, type Worksheet } from "@univerjs/core";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import { type Book, type Cell, type Cells, execute, tabNamed } from "./book";
import { closeRanges, typedFormula, writtenFormula } from "./separators";
import { type Typed, typed } from "./typed";
import { patternAt } from "./values";

/** Whose text it is: scripts must write formulas that every locale reads. */
export type Writer = "script" | "person";

export const NO_CONTENT = { v: null, t: null, f: null, si: null, p: null };

/** A formula of a script or a person in the engine's own form. */
export function engineFormula(
	book: Book,
	sheet: Worksheet,
	formula: string,
	by: Writer,
): string {
	const whole = formula.startsWith("=") ? formula : `=${formula}`;
	const translated =
		by === "script"
			? writtenFormula(whole, book.locale)
			: typedFormula(whole, book.locale);
	return closeRanges(translated, (tab) =>
		(tab === undefined ? sheet : tabNamed(book, tab)).getRowCount(),
	);
}

function cellFor(
	book: Book,
	sheet: Worksheet,
	input: Typed,
	pattern: string,
	by: Writer,
): Cell {
	switch (input.kind) {
		case "blank":
			return NO_CONTENT;
		case "text":
			return { ...NO_CONTENT, v: input.text, t: CellValueType.STRING };
		case "boolean":
			return {
				...NO_CONTENT,
				v: input.value ? 1 : 0,
				t: CellValueType.BOOLEAN,
			};
		case "formula":
			return {
				...NO_CONTENT,
				f: engineFormula(book, sheet, input.formula, by),
			};
		case "number": {
			const takes = input.pattern && /^general$/i.test(pattern);
			return {
				...NO_CONTENT,
				v: input.value,
				t: CellValueType.NUMBER,
				...(takes ? { s: { n: { pattern: input.pattern ?? "" } } } : {}),
			};
		}
	}
}

/** A cell that holds what a text becomes when it is typed there. */
export function typedCell(
	book: Book,
	sheet: Worksheet,
	row: number,
	column: number,
	text: string,
	by: Writer,
): Cell {
	const pattern = patternAt(book, sheet, row, column);
	return cellFor(book, sheet, typed(text, pattern, book.locale), pattern, by);
}

export function writeCells(book: Book, sheet: Worksheet, cells: Cells): void {
	execute(book, SetRangeValuesMutation.id, {
		subUnitId: sheet.getSheetId(),
		cellValue: cells,
	});
}
