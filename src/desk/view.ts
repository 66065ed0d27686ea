/** What can be seen of the workbook without touching it. */
import type { Worksheet } from "@univerjs/core";
import { cellA1, formatA1 } from "./a1";
import {
	type Book,
	blockOf,
	mapBlock,
	sheets,
	tabNamed,
	tabNumber,
} from "./book";
import type { CellError, Desk } from "./contract";
import type { CellFunctions } from "./functions";
import { placeInFile } from "./links";
import { namedRange } from "./names";
import { drawingIn } from "./sparkline/cells";
import { displayAt, formulaAt, isCalculated, rawAt, valueAt } from "./values";
import { neverLoading } from "./volatile";

type View = Pick<
	Desk,
	| "display"
	| "drawing"
	| "errorAt"
	| "errors"
	| "formula"
	| "linkAt"
	| "named"
	| "read"
	| "tabs"
>;

const ERROR_TEXT =
	/^#(?:ERROR!|REF!|N\/A|NAME\?|VALUE!|NUM!|DIV\/0!|NULL!|CALC!)$/;

export function viewOf(book: Book, functions: CellFunctions): View {
	const errorAt = (tab: string, cell: string): CellError | undefined => {
		const sheet = tabNamed(book, tab);
		const { startRow: row, startColumn: column } = blockOf(sheet, cell);
		const shown = rawAt(book, sheet, row, column);
		const isError =
			typeof shown === "string" &&
			ERROR_TEXT.test(shown) &&
			isCalculated(book, sheet, row, column);
		if (!isError) return undefined;
		const caller = { sheetId: sheet.getSheetId(), row, column };
		return {
			tab,
			cell,
			shown,
			message: functions
				.messagesAt(caller, formulaAt(book, sheet, row, column))
				.join("; "),
		};
	};

	const linkAt: View["linkAt"] = (tab, cell) => {
		const sheet = tabNamed(book, tab);
		const { startRow: row, startColumn: column } = blockOf(sheet, cell);
		const address = functions.linkAt({
			sheetId: sheet.getSheetId(),
			row,
			column,
		});
		const isLink = /\bHYPERLINK\s*\(/i.test(
			sheet.getCellRaw(row, column)?.f ?? "",
		);
		if (!isLink || address === undefined) return undefined;
		const place = placeInFile(address);
		const to = sheets(book).find(
			(other) => tabNumber(other.getSheetId()) === place?.number,
		);
		return place && to
			? { address, tab: to.getName(), range: place.range }
			: { address };
	};

	const errorsOf = (sheet: Worksheet) => {
		const whole = {
			startRow: 0,
			startColumn: 0,
			endRow: sheet.getRowCount() - 1,
			endColumn: sheet.getColumnCount() - 1,
		};
		const cells = mapBlock(whole, (row, column) => {
			const value = rawAt(book, sheet, row, column);
			if (typeof value !== "string" || !value.startsWith("#")) return [];
			return errorAt(sheet.getName(), cellA1(row, column)) ?? [];
		});
		return cells.flat(2);
	};
	return {
		read(tab, range) {
			const sheet = tabNamed(book, tab);
			return mapBlock(blockOf(sheet, range), (row, column) =>
				valueAt(book, sheet, row, column),
			);
		},
		display(tab, range) {
			const sheet = tabNamed(book, tab);
			return mapBlock(blockOf(sheet, range), (row, column) =>
				displayAt(book, sheet, row, column),
			);
		},
		drawing(tab, cell) {
			const sheet = tabNamed(book, tab);
			const { startRow: row, startColumn: col } = blockOf(sheet, cell);
			const unitId = book.workbook.getId();
			const place = { unitId, subUnitId: sheet.getSheetId(), row, col };
			return drawingIn(book.engine, place, sheet.getCellRaw(row, col));
		},
		formula(tab, cell) {
			const sheet = tabNamed(book, tab);
			const { startRow, startColumn } = blockOf(sheet, cell);
			return formulaAt(book, sheet, startRow, startColumn);
		},
		named(name) {
			const cells = namedRange(book, name)?.cells;
			return (
				cells && { tab: cells.sheet.getName(), range: formatA1(cells.block) }
			);
		},
		tabs: () => sheets(book).map((sheet) => sheet.getName()),
		errorAt,
		linkAt,
		errors: () => [
			...sheets(book).flatMap((sheet) => errorsOf(sheet)),
			...neverLoading(book, functions.names),
		],
	};
}
