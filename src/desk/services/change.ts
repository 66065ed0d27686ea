/** Every change a call makes to the workbook goes through here, so that the call knows that it has written. */
import { CellValueType, type Worksheet } from "@univerjs/core";
import type { Block } from "../a1";
import { type Cell, type Cells, execute } from "../book";
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

/** Writes each cell of the blocks of one tab, in one command. */
export function changeCells(
	call: Call,
	sheet: Worksheet,
	blocks: readonly Block[],
	cellAt: (row: number, column: number, block: Block) => Cell,
): void {
	call.written = true;
	const cells: Cells = {};
	// of a cell that is given a format alone the engine would forget a formula not calculated yet, and read a text anew
	const whole = (row: number, column: number, cell: Cell): Cell => {
		if (!cell || "v" in cell || "f" in cell) return cell;
		const there = sheet.getCellRaw(row, column);
		if (there?.f) return { f: there.f, ...cell };
		return there?.t === CellValueType.STRING
			? { v: there.v ?? null, t: there.t, ...cell }
			: cell;
	};
	for (const block of blocks)
		for (let row = block.startRow; row <= block.endRow; row++) {
			cells[row] ??= {};
			for (let column = block.startColumn; column <= block.endColumn; column++)
				(cells[row] as Record<number, Cell>)[column] = whole(
					row,
					column,
					cellAt(row, column, block),
				);
		}
	writeCells(call.host.book, sheet, cells);
}
