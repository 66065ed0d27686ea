/** The open workbook: its tabs, and the engine's commands that change it. */
import {
	type ICellData,
	ICommandService,
	type IObjectMatrixPrimitiveType,
	type Nullable,
	type Worksheet,
} from "@univerjs/core";
import { type Block, parseA1 } from "./a1";
import type { Engine, Locale } from "./contract";
import { partOf } from "./engine-private";

export type Workbook = NonNullable<ReturnType<Engine["api"]["getWorkbook"]>>;

export interface Book {
	engine: Engine;
	workbook: Workbook;
	locale: Locale;
	timeZone: string;
}

/** A cell as the engine keeps it. */
export type Cell = Nullable<ICellData>;

/** Cells by row and column, counted from 0. */
export type Cells = IObjectMatrixPrimitiveType<Cell>;

/**
 * Runs one of the engine's commands or mutations.
 *
 * @throws Error when the engine refuses it.
 */
export function execute(book: Book, id: string, params: object): void {
	const commands = partOf(book.engine, ICommandService);
	const done = commands.syncExecuteCommand(id, {
		unitId: book.workbook.getId(),
		...params,
	});
	if (!done) throw new Error(`the workbook refused ${id}`);
}

export function sheets(book: Book): Worksheet[] {
	return book.workbook.getWorkbook().getSheets();
}

export function sheetNamed(book: Book, name: string): Worksheet | undefined {
	return book.workbook.getWorkbook().getSheetBySheetName(name) ?? undefined;
}

/** @throws Error when there is no such tab. */
export function tabNamed(book: Book, name: string): Worksheet {
	const sheet = sheetNamed(book, name);
	if (!sheet) throw new Error(`there is no tab ${name}`);
	return sheet;
}

/** @throws Error when the text names no cells of the tab. */
export function blockOf(sheet: Worksheet, range: string): Block {
	const rows = sheet.getRowCount();
	const columns = sheet.getColumnCount();
	const block = parseA1(range, rows, columns);
	if (!block || block.endRow >= rows || block.endColumn >= columns)
		throw new Error(`${sheet.getName()} has no cells ${range}`);
	return block;
}

/** Every cell of a block through a function, in rows. */
export function mapBlock<T>(
	block: Block,
	each: (row: number, column: number) => T,
): T[][] {
	const rows = block.endRow - block.startRow + 1;
	const columns = block.endColumn - block.startColumn + 1;
	return Array.from({ length: rows }, (_, row) =>
		Array.from({ length: columns }, (_, column) =>
			each(block.startRow + row, block.startColumn + column),
		),
	);
}

/** What rows of a block's size have for a cell of the block. */
export const inBlock =
	<T>(block: Block, rows: readonly (readonly T[])[]) =>
	(row: number, column: number): T | undefined =>
		rows[row - block.startRow]?.[column - block.startColumn];

/** The number a tab has in links; its id in the engine is a text. */
export function tabNumber(sheetId: string): number {
	return [...sheetId].reduce(
		(sum, letter) => (sum * 31 + letter.charCodeAt(0)) % 2147483647,
		7,
	);
}
