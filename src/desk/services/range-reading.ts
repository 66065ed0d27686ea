/** What a range of the script can be asked. */
import type { Worksheet } from "@univerjs/core";
import { type Block, cellA1, formatA1 } from "../a1";
import { mapBlock } from "../book";
import {
	formulaAt,
	isCalculated,
	patternAt,
	styleAt,
	valueAt,
} from "../values";
import type { Call } from "./call";
import { height } from "./fitting";
import { noteAt } from "./notes";
import { type Place, sheetAt } from "./place";

/** @throws Error for a calculated cell once the call has written: it may still be calculating. */
export function checkReadable(
	call: Call,
	sheet: Worksheet,
	block: Block,
): void {
	const calculating = [...call.outdated].some((sheetId) =>
		call.host.book.workbook.getSheetBySheetId(sheetId),
	);
	if (!call.written && !calculating) return;
	mapBlock(block, (row, column) => {
		if (!isCalculated(call.host.book, sheet, row, column)) return;
		const cell = cellA1(row, column);
		throw new Error(
			`${sheet.getName()}!${cell} is calculated and this call has already written: read first, write last`,
		);
	});
}

export function readMethods(call: Call, place: Place) {
	const { book } = call.host;
	const { block } = place;
	const sheet = () => sheetAt(call, place);
	const each = <T>(read: (on: Worksheet, row: number, column: number) => T) => {
		const on = sheet();
		return mapBlock(block, (row, column) => read(on, row, column));
	};
	const values = () => {
		checkReadable(call, sheet(), block);
		return each((on, row, column) =>
			call.loading && isCalculated(book, on, row, column)
				? "Loading..."
				: valueAt(book, on, row, column),
		);
	};
	const formulas = () =>
		each((on, row, column) => formulaAt(book, on, row, column));
	const first = <T>(rows: T[][]) => rows[0]?.[0] as T;
	return {
		getValues: values,
		getValue: () => first(values()),
		getFormulas: formulas,
		getFormula: () => first(formulas()),
		getNote: () => noteAt(call, sheet(), block.startRow, block.startColumn),
		getNumberFormats: () =>
			each((on, row, column) => patternAt(book, on, row, column)),
		getBackground: () =>
			styleAt(book, sheet(), block.startRow, block.startColumn).bg?.rgb ??
			"#ffffff",
		isBlank: () =>
			values()
				.flat()
				.every((value) => value === ""),
		getA1Notation: () => formatA1(block),
		getRow: () => block.startRow + 1,
		getColumn: () => block.startColumn + 1,
		getNumRows: () => height(block),
	};
}
