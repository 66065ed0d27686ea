/** Formats of blank cells, which most cells of a new tab are. */
import type { ICellData, Worksheet } from "@univerjs/core";
import { SetRangeValuesMutation, SetStyleCommand } from "@univerjs/sheets";
import { type Book, type Cell, type Cells, execute } from "./book";

type Style = ICellData["s"];

/** Whether there is more in a cell than a format; a deleted part is `null`. */
export function hasContent(cell: Cell | undefined): boolean {
	for (const part in cell)
		if (part !== "s" && (cell[part as keyof ICellData] ?? null) !== null)
			return true;
	return false;
}

export interface FormWriter {
	/** A format for a blank cell; what is the same for many cells is one and the same object. */
	put(row: number, column: number, style: Style): void;
	write(): void;
}

/** A first cell, and the others that are like it. */
interface Kind {
	row: number;
	column: number;
	rows: number[];
	columns: number[];
}

type Matrix = ReturnType<Worksheet["getCellMatrix"]>;

/**
 * Writes formats of one tab: of all cells that have the same and are given the same the engine is asked about the first,
 * and the others take over what it made of it. Asked about each, it takes most of the time that a job's writing takes.
 */
export function formWriter(book: Book, sheet: Worksheet): FormWriter {
	const matrix = sheet.getCellMatrix();
	const asked: Cells = {};
	const kinds = new Map<Style, Map<Style, Kind>>();
	const kindOf = (style: Style, has: Style): Kind | undefined =>
		kinds.get(style)?.get(has);
	const addKind = (style: Style, has: Style, row: number, column: number) => {
		const alike = kinds.get(style) ?? new Map<Style, Kind>();
		kinds.set(style, alike);
		alike.set(has, { row, column, rows: [], columns: [] });
		asked[row] = { ...asked[row], [column]: { s: style } };
	};
	return {
		put(row, column, style) {
			const has = matrix.getValue(row, column)?.s;
			const kind = kindOf(style, has);
			if (!kind) addKind(style, has, row, column);
			else {
				kind.rows.push(row);
				kind.columns.push(column);
			}
		},
		write() {
			if (kinds.size === 0) return;
			execute(book, SetRangeValuesMutation.id, {
				subUnitId: sheet.getSheetId(),
				cellValue: asked,
				trigger: SetStyleCommand.id,
			});
			for (const alike of kinds.values())
				for (const kind of alike.values()) follow(matrix, kind);
		},
	};
}

/** Gives the format of the first cell to all others. */
function follow(matrix: Matrix, { row, column, rows, columns }: Kind): void {
	const style = matrix.getValue(row, column)?.s ?? undefined;
	rows.forEach((at, index) => {
		const across = columns[index] ?? 0;
		const cell = matrix.getValue(at, across);
		if (style === undefined) {
			if (cell) matrix.realDeleteValue(at, across);
		} else if (cell) cell.s = style;
		else matrix.setValue(at, across, { s: style });
	});
}
