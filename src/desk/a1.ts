/** A block of cells, counted from 0, both ends included. */
export interface Block {
	startRow: number;
	startColumn: number;
	endRow: number;
	endColumn: number;
}

/** Column letters to a count from 0: `A` is 0, `AA` is 26. */
export function columnIndex(letters: string): number {
	return (
		[...letters.toUpperCase()].reduce(
			(sum, letter) => sum * 26 + letter.charCodeAt(0) - 64,
			0,
		) - 1
	);
}

/** Letters of a column counted from 0. */
export function columnLetters(index: number): string {
	const rest = Math.floor(index / 26);
	const last = String.fromCharCode(65 + (index % 26));
	return rest === 0 ? last : columnLetters(rest - 1) + last;
}

const CORNER = /^\$?([A-Z]{1,3})?\$?(\d+)?$/i;

/** The block an A1 text stands for (`B2`, `A1:C4`, `C:D`, `3:5`, `A2:B`), or undefined where it is none. */
export function parseA1(
	text: string,
	rows: number,
	columns: number,
): Block | undefined {
	const [first, second = first, more] = text.split(":");
	const from = CORNER.exec(first ?? "");
	const to = CORNER.exec(second ?? "");
	if (!first || !second || more !== undefined || !from || !to) return undefined;
	if (first === second && !(from[1] && from[2]) && !text.includes(":"))
		return undefined;
	const row = (part: string | undefined, open: number) =>
		part === undefined ? open : Number(part) - 1;
	const column = (part: string | undefined, open: number) =>
		part === undefined ? open : columnIndex(part);
	const ends = {
		row: [row(from[2], 0), row(to[2], rows - 1)] as const,
		column: [column(from[1], 0), column(to[1], columns - 1)] as const,
	};
	return {
		startRow: Math.min(...ends.row),
		endRow: Math.max(...ends.row),
		startColumn: Math.min(...ends.column),
		endColumn: Math.max(...ends.column),
	};
}

/** `B2` or `A1:C4`. */
export function formatA1(block: Block): string {
	const first = `${columnLetters(block.startColumn)}${block.startRow + 1}`;
	const last = `${columnLetters(block.endColumn)}${block.endRow + 1}`;
	return first === last ? first : `${first}:${last}`;
}

/** `B2` of row and column counted from 0. */
export function cellA1(row: number, column: number): string {
	return `${columnLetters(column)}${row + 1}`;
}

/** A block with `$`: what a named range holds. */
export function formatAbsolute(block: Block): string {
	return formatA1(block).replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
}

/** A tab's name as formulas write it. */
export function quoteTab(name: string): string {
	return `'${name.replace(/'/g, "''")}'`;
}

/** Tab and range of `'14 Tones'!$A$1:$B$2`; no tab where none is named. */
export function splitReference(text: string): {
	tab: string | undefined;
	range: string;
} {
	const parts = /^(?:'((?:[^']|'')+)'|([^'!]+))!(.+)$/.exec(text);
	if (!parts) return { tab: undefined, range: text };
	return {
		tab: parts[1]?.replace(/''/g, "'") ?? parts[2],
		range: parts[3] ?? "",
	};
}
