/** What of a tab goes on paper: its cells as they are shown, without what is hidden or empty at the end. */
import type { IStyleData, Worksheet } from "@univerjs/core";
import { type Block, cellA1, columnLetters, parseA1 } from "../a1";
import type { CellValue, Desk, PictureNote } from "../contract";
import type { Drawing } from "../sparkline/drawing";
import { type Borders, bordersOf, cssOf } from "./printlook";

export interface PrintCell {
	text: string;
	drawing: { of: Drawing; width: number; height: number } | undefined;
	rows: number;
	columns: number;
	style: Partial<CSSStyleDeclaration>;
	borders: Borders;
}

export interface PrintedTab {
	widths: number[];
	rows: { height: number; cells: PrintCell[] }[];
	/** Pictures, by the printed row and column of their corner's cell, counted from 0. */
	pictures: { note: PictureNote; row: number; column: number }[];
}

interface Tab {
	sheet: Worksheet;
	texts: string[][];
	values: CellValue[][];
	drawings: (Drawing | undefined)[][];
	styles: IStyleData[][];
}

const count = (from: number, to: number) =>
	Array.from({ length: to - from + 1 }, (_, index) => from + index);

function openTab(desk: Desk): Tab {
	const workbook = desk.engine.api.getActiveWorkbook();
	if (!workbook) throw new Error("there is no open workbook");
	const sheet = workbook.getActiveSheet().getSheet();
	const styles = workbook.getWorkbook().getStyles();
	const rows = sheet.getRowCount();
	const columns = sheet.getColumnCount();
	const whole = `A1:${columnLetters(columns - 1)}${rows}`;
	return {
		sheet,
		texts: desk.display(sheet.getName(), whole),
		values: desk.read(sheet.getName(), whole),
		drawings: count(0, rows - 1).map((row) =>
			count(0, columns - 1).map((column) =>
				desk.drawing(sheet.getName(), cellA1(row, column)),
			),
		),
		// getCell, not getCellRaw: it has the conditional formats in it
		styles: count(0, rows - 1).map((row) =>
			count(0, columns - 1).map(
				(column) => styles.getStyleByCell(sheet.getCell(row, column)) ?? {},
			),
		),
	};
}

/** How many rows or columns, from one on, it takes to hold so many pixels. */
function spanned(
	from: number,
	pixels: number,
	last: number,
	sizeOf: (index: number) => number,
) {
	let index = from;
	let room = sizeOf(from);
	while (room < pixels && index < last) {
		index += 1;
		room += sizeOf(index);
	}
	return index;
}

/** The last row and column that a picture lies on. */
function cellsUnder(sheet: Worksheet, notes: readonly PictureNote[]) {
	const rows = notes.map(({ row, y, height }) =>
		spanned(row - 1, y + height, sheet.getRowCount() - 1, (index) =>
			sheet.getRowHeight(index),
		),
	);
	const columns = notes.map(({ column, x, width }) =>
		spanned(column - 1, x + width, sheet.getColumnCount() - 1, (index) =>
			sheet.getColumnWidth(index),
		),
	);
	return { endRow: Math.max(0, ...rows), endColumn: Math.max(0, ...columns) };
}

/** The tab's print area, where a name ending in `_print` says it; else all cells that say something. */
function printArea(desk: Desk, { sheet, texts, drawings }: Tab): Block {
	const named = desk.engine.api
		.getActiveWorkbook()
		?.getDefinedNames()
		.map((name) => name.getName())
		.filter((name) => name.endsWith("_print"))
		.map((name) => desk.named(name))
		.find((place) => place?.tab === sheet.getName());
	const area =
		named && parseA1(named.range, sheet.getRowCount(), sheet.getColumnCount());
	if (area) return area;
	let { endRow, endColumn } = cellsUnder(sheet, desk.pictures(sheet.getName()));
	texts.forEach((line, row) => {
		line.forEach((text, column) => {
			if (text === "" && !drawings[row]?.[column]) return;
			endRow = Math.max(endRow, row);
			endColumn = Math.max(endColumn, column);
		});
	});
	return { startRow: 0, startColumn: 0, endRow, endColumn };
}

/** A cell on paper, or undefined where a merged one covers it. */
function printCell(
	tab: Tab,
	row: number,
	column: number,
): PrintCell | undefined {
	const { sheet, texts, values, drawings, styles } = tab;
	const merged = sheet.getMergedCell(row, column);
	if (merged && (merged.startRow !== row || merged.startColumn !== column))
		return undefined;
	const style = styles[row]?.[column] ?? {};
	const text = texts[row]?.[column] ?? "";
	const isNumber = typeof values[row]?.[column] === "number";
	const covers = count(column, merged?.endColumn ?? column);
	const next = covers.at(-1) ?? column;
	const css = cssOf(style, isNumber);
	// a text runs on over blank neighbors, and is cut at the next one that says something
	if (texts[row]?.[next + 1] || drawings[row]?.[next + 1])
		css.overflow = "hidden";
	const down = count(row, merged?.endRow ?? row);
	const of = drawings[row]?.[column];
	const total = (sizes: number[]) => sizes.reduce((sum, size) => sum + size, 0);
	return {
		text,
		drawing: of && {
			of,
			width: total(covers.map((each) => sheet.getColumnWidth(each))),
			height: total(down.map((each) => sheet.getRowHeight(each))),
		},
		style: css,
		borders: bordersOf(style),
		rows: down.filter((each) => sheet.getRowVisible(each)).length,
		columns: covers.filter((each) => sheet.getColVisible(each)).length,
	};
}

/** The open tab as it goes on paper. */
export function printedTab(desk: Desk): PrintedTab {
	const tab = openTab(desk);
	const { sheet } = tab;
	const area = printArea(desk, tab);
	const columns = count(area.startColumn, area.endColumn).filter((column) =>
		sheet.getColVisible(column),
	);
	const rows = count(area.startRow, area.endRow).filter((row) =>
		sheet.getRowVisible(row),
	);
	return {
		widths: columns.map((column) => sheet.getColumnWidth(column)),
		rows: rows.map((row) => ({
			height: sheet.getRowHeight(row),
			cells: columns.flatMap((column) => printCell(tab, row, column) ?? []),
		})),
		pictures: desk
			.pictures(sheet.getName())
			.map((note) => ({
				note,
				row: rows.indexOf(note.row - 1),
				column: columns.indexOf(note.column - 1),
			}))
			.filter(({ row, column }) => row >= 0 && column >= 0),
	};
}
