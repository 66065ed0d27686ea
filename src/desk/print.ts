/** A tab as text: what a person sees of it, in columns. */

export interface ShownCell {
	text: string;
	/** Numbers stand to the right of their column. */
	isNumber: boolean;
}

type Row = readonly ShownCell[];

const GAP = 2;

const isBlank = (cell: ShownCell | undefined) => !cell?.text;

/** Rows between blank ones: each stands by itself and has columns of its own. */
function sections(rows: readonly Row[]): Row[][] {
	const found: Row[][] = [[]];
	for (const row of rows) {
		const last = found[found.length - 1];
		if (row.every(isBlank)) found.push([]);
		else last?.push(row);
	}
	return found.filter((section) => section.length > 0);
}

/** A row of headings has many texts; a column with nothing under its heading is room to write on paper. */
const HEADINGS = 4;

function isWorthShowing(section: readonly Row[], column: number): boolean {
	const filled = section.filter((row) => !isBlank(row[column]));
	const [only] = filled;
	if (!only || filled.length > 1) return filled.length > 0;
	const texts = only.filter((cell) => !isBlank(cell)).length;
	return section.length === 1 || texts < HEADINGS;
}

/** Where the next filled cell to the right is; the row's length when there is none. */
function nextFilled(row: Row, column: number): number {
	const next = row.findIndex((cell, index) => index > column && !isBlank(cell));
	return next < 0 ? row.length : next;
}

/** Widths in which every text fits: a text runs on over the blank cells to its right. */
function columnWidths(section: readonly Row[]): number[] {
	const widths = Array.from(section[0] ?? [], () => 0);
	const needs = section.flatMap((row) =>
		row.flatMap((cell, column) => {
			const until = cell.isNumber ? column + 1 : nextFilled(row, column);
			const free = isBlank(cell) || (!cell.isNumber && until === row.length);
			return free ? [] : [{ column, until, length: cell.text.length }];
		}),
	);
	needs.sort((a, b) => a.until - a.column - (b.until - b.column));
	for (const { column, until, length } of needs) {
		const gaps = GAP * (until - column - 1);
		const room = widths.slice(column, until).reduce((a, b) => a + b, gaps);
		widths[until - 1] = (widths[until - 1] ?? 0) + Math.max(0, length - room);
	}
	return widths;
}

function line(row: Row, widths: readonly number[]): string {
	let text = "";
	let start = 0;
	row.forEach((cell, column) => {
		const width = widths[column] ?? 0;
		if (!isBlank(cell))
			text =
				text.padEnd(start) +
				(cell.isNumber ? cell.text.padStart(width) : cell.text);
		start += width + GAP;
	});
	return text;
}

function sectionText(section: readonly Row[]): string {
	const columns = Array.from(section[0] ?? [], (_, column) => column).filter(
		(column) => isWorthShowing(section, column),
	);
	const kept = section.map((row) =>
		columns.map((column) => row[column] ?? { text: "", isNumber: false }),
	);
	const widths = columnWidths(kept);
	return kept.map((row) => line(row, widths)).join("\n");
}

/** The cells as aligned text, a blank line between sections. */
export function textTable(rows: readonly Row[]): string {
	const flat = rows.map((row) =>
		row.map((cell) => ({
			...cell,
			text: cell.text.replace(/\s+/g, " ").trim(),
		})),
	);
	return sections(flat).map(sectionText).join("\n\n");
}
