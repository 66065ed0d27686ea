import type { Block } from "../src/template/plan";

/** Guards of what leans on how many columns there are: an answer that fills several does not move with one put in between. */

const number = (letters: string) =>
	[...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);

/** Whether the cells, e.g. `A1:K1`, have as many columns as when they were made. */
const asMade = (cells: string) => {
	const [, first = "", last = ""] =
		/([A-Z]+)\$?\d+:\$?([A-Z]+)\$?\d+$/.exec(cells) ?? [];
	return asMany(cells, number(last) - number(first) + 1);
};

/** Whether cells have this many columns. */
export const asMany = (cells: string, columns: number) =>
	`(COLUMNS(${cells})=${columns})`;

/** The formula while all these cells have the columns they were made with; an error after that, never a number. */
export const whileIntact = (cells: readonly string[], formula: string) =>
	`=IF(${cells.map(asMade).join("*")};${formula.slice(1)};NA())`;

/** The headings from the first to each column's own: a formula that counts them finds it where others were put in between. */
export const headingsTo = (
	at: string,
	columns: Readonly<Record<string, number>>,
): Block[] =>
	Object.entries(columns).map(([slot, count]) => ({
		at,
		look: "heading",
		size: [1, count],
		slot,
	}));

/** What a tab says whose columns are not those that it was made with. */
export const MOVED =
	"Look: a column was put in or taken out on this tab: undo that, for numbers would be wrong";
