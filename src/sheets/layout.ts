/** Whether a tab still is laid out as its template: numbers are read by their place, and a wrong one ruins a pour. */
import { a1Of } from "./a1";
import type { Page } from "./page";

interface Text {
	row: number;
	column: number;
	text: string;
}

/** Texts that a page has once, by which one sees where things are: labels, headings and titles, and no formula. */
function landmarks({ cells }: Page): Text[] {
	const texts = cells.flatMap((line, row) =>
		line.flatMap(({ value, look }, column): Text[] =>
			look !== "input" && typeof value === "string" && /^'./.test(value)
				? [{ row, column, text: value.slice(1) }]
				: [],
		),
	);
	return texts.filter(
		({ text }) => texts.filter((other) => other.text === text).length === 1,
	);
}

/**
 * The first of the page's texts that has moved in a tab's values, as a sentence; undefined where all are in place.
 *
 * One that is nowhere in the tab was worded in another way, which moves nothing.
 */
export function movedIn(
	page: Page,
	values: readonly (readonly unknown[])[],
): string | undefined {
	const somewhere = new Set(values.flat());
	const moved = landmarks(page).find(
		({ row, column, text }) =>
			values[row]?.[column] !== text && somewhere.has(text),
	);
	if (!moved) return undefined;
	const place = a1Of({ ...moved, rows: 1, columns: 1 });
	return movedText(page.name, `"${moved.text}" belongs in ${place}`);
}

/** What is said of a tab that is laid out otherwise by now. */
export const movedText = (tab: string, how: string): string =>
	`On the ${tab} tab rows or columns were added, moved or taken away: ${how}. Undo that, then try again`;
