/** What a partner does to a workbook by hand, and whether any number is another for it. */
import type { Desk } from "../../../src/desk/contract";
import { columnLetters } from "../../../src/sheets/reading/a1";

interface Cell {
	text: string;
	value: unknown;
}

export type Shown = Readonly<Record<string, readonly (readonly Cell[])[]>>;

export const sheetOf = (desk: Desk, tab: string) => {
	const sheet = desk.engine.api.getActiveWorkbook()?.getSheetByName(tab);
	if (!sheet) throw new Error(`There is no tab ${tab}`);
	return sheet;
};

/** Puts a column in before this one, counted from 0. */
export async function insertColumn(desk: Desk, tab: string, at: number) {
	sheetOf(desk, tab).insertColumnsBefore(at, 1);
	await desk.settle();
}

export async function deleteColumn(desk: Desk, tab: string, at: number) {
	sheetOf(desk, tab).deleteColumns(at, 1);
	await desk.settle();
}

const hasAnswers = (tab: string): boolean => /^(1 |Jobs$)/.test(tab);

/** What every cell of a job's tabs, of Jobs and of this tab shows. */
export const shownIn = (desk: Desk, also: string): Shown =>
	Object.fromEntries(
		[...new Set([...desk.tabs().filter(hasAnswers), also])].map((tab) => {
			const sheet = sheetOf(desk, tab);
			const last =
				columnLetters(sheet.getMaxColumns() - 1) + sheet.getMaxRows();
			const values = desk.read(tab, `A1:${last}`);
			const cells = desk
				.display(tab, `A1:${last}`)
				.map((row, down) =>
					row.map((text, right) => ({ text, value: values[down]?.[right] })),
				);
			return [tab, cells];
		}),
	);

/** An error, a sentence or nothing is seen for what it is; a number is believed. */
const isBelieved = (text: string): boolean =>
	/\d/.test(text) && !/^#|Look:/.test(text);

/** How many checks to look at, and how many errors: these numbers are meant to change. */
const COUNTS: readonly string[] = ["1 Job!7,15"];

/**
 * Cells that show a number which they did not show before a column was put into a tab.
 * What is typed moves with the column; an answer that fills many cells stays whole where it begins, headings and all.
 */
export function otherNumbers(
	before: Shown,
	now: Shown,
	changed: string,
	at: number,
): string[] {
	return Object.entries(now).flatMap(([tab, rows]) =>
		rows.flatMap((row, down) =>
			row.flatMap(({ text, value }, right) => {
				const place = `${tab}!${down + 1},${right + 1}`;
				if (!isBelieved(text) || COUNTS.includes(place)) return [];
				const from =
					tab === changed && right >= at ? [right, right - 1] : [right];
				const was = from.map((column) => before[tab]?.[down]?.[column]);
				return was.some((cell) => String(cell?.value) === String(value))
					? []
					: [`${place}: ${was.map((cell) => cell?.text)} became ${text}`];
			}),
		),
	);
}
