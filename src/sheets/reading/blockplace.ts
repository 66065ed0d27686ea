/** Where a block of a template lies now: found by the words that stand beside or above it. */
import { nameKey } from "../../calc/names";
import { type Area, areaOf } from "./a1";

/** Cells as they are, with the place of their first on the tab. */
export interface PlacedGrid {
	row: number;
	column: number;
	grid: readonly (readonly unknown[])[];
}

const wordOf = (cell: unknown): string =>
	typeof cell === "string" ? nameKey(cell) : "";

/** True where the block lies in these cells. */
const isWithin = (inner: Area, outer: Area): boolean =>
	inner.row >= outer.row &&
	inner.column >= outer.column &&
	inner.row + inner.rows <= outer.row + outer.rows &&
	inner.column + inner.columns <= outer.column + outer.columns;

interface Landmark {
	word: string;
	row: number;
	column: number;
}

/**
 * The place of a block of a region; undefined where it is none of it, or where its words are gone.
 *
 * The heading above says its column; one row stands beside a label, and more of them below the heading. A table reaches to the
 * end of its region, however long it is now.
 *
 * @param made the region's A1 in the template, and the texts that the template has in all of the tab
 */
export function blockPlace(
	block: Area,
	made: { region: string; texts: Texts },
	now: PlacedGrid,
): Area | undefined {
	const region = areaOf(made.region);
	if (!isWithin(block, region)) return undefined;
	const heading = moved(headingOf(block, region, made.texts), now);
	const label =
		block.rows === 1 ? moved(labelOf(block, made.texts), now) : undefined;
	const [down, right] = [label ?? heading, heading ?? label];
	if (!down || !right) return undefined;
	const row = block.row + down.rows;
	const isToEnd = block.row + block.rows === region.row + region.rows;
	return {
		row,
		column: block.column + right.columns,
		rows: isToEnd ? now.row + now.grid.length - row : block.rows,
		columns: block.columns,
	};
}

type Texts = readonly (readonly unknown[])[];

/** The nearest text to the left. */
function labelOf({ row, column }: Area, texts: Texts): Landmark | undefined {
	for (let at = column - 1; at >= 0; at--) {
		const word = wordOf(texts[row]?.[at]);
		if (word !== "") return { word, row, column: at };
	}
	return undefined;
}

/** The nearest text above, in the region. */
function headingOf(
	{ row, column }: Area,
	region: Area,
	texts: Texts,
): Landmark | undefined {
	for (let at = row - 1; at >= region.row; at--) {
		const word = wordOf(texts[at]?.[column]);
		if (word !== "") return { word, row: at, column };
	}
	return undefined;
}

/** How far the word has moved; undefined where it is gone. */
function moved(
	made: Landmark | undefined,
	{ row, column, grid }: PlacedGrid,
): { rows: number; columns: number } | undefined {
	if (!made) return undefined;
	for (const [down, cells] of grid.entries()) {
		const right = cells.findIndex((cell) => wordOf(cell) === made.word);
		if (right >= 0)
			return {
				rows: row + down - made.row,
				columns: column + right - made.column,
			};
	}
	return undefined;
}
