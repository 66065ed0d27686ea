/** Every change a call makes to the workbook goes through here, so that the call knows that it has written. */
import { CellValueType, type Worksheet } from "@univerjs/core";
import type { Block } from "../a1";
import { type Cell, type Cells, execute } from "../book";
import { formWriter, hasContent } from "../forms";
import { writeCells } from "../writing";
import type { Call } from "./call";

/** Runs one of the engine's commands on a tab. */
export function change(
	call: Call,
	sheet: Worksheet,
	id: string,
	params: object,
): void {
	call.written = true;
	execute(call.host.book, id, { subUnitId: sheet.getSheetId(), ...params });
}

/** Writes each cell of the blocks of one tab; what is blank and stays blank is left alone. */
export function changeCells(
	call: Call,
	sheet: Worksheet,
	blocks: readonly Block[],
	cellAt: (row: number, column: number, block: Block) => Cell,
): void {
	const cells: Cells = {};
	const forms = formWriter(call.host.book, sheet);
	for (const block of blocks)
		for (let row = block.startRow; row <= block.endRow; row++)
			for (
				let column = block.startColumn;
				column <= block.endColumn;
				column++
			) {
				const there = sheet.getCellRaw(row, column);
				const cell = cellAt(row, column, block);
				// a format makes nothing calculate
				if (cell && ("v" in cell || "f" in cell)) call.written = true;
				if (hasContent(there) || !cell || hasContent(cell)) {
					cells[row] ??= {};
					(cells[row] as Record<number, Cell>)[column] = whole(cell, there);
				} else if (cell.s !== undefined) forms.put(row, column, cell.s);
			}
	if (Object.keys(cells).length > 0) writeCells(call.host.book, sheet, cells);
	forms.write();
}

/** Of a cell that is given a format alone the engine would forget a formula not calculated yet, and read a text anew. */
function whole(cell: Cell, there: Cell): Cell {
	if (!cell || "v" in cell || "f" in cell) return cell;
	if (there?.f) return { f: there.f, ...cell };
	return there?.t === CellValueType.STRING
		? { v: there.v ?? null, t: there.t, ...cell }
		: cell;
}
