/**
 * How typed cells stand in a region of a tab, and what a file makes of them.
 *
 * A region is a rectangle without formulas: labels with what was typed beside them, and headings with rows below. It is read by
 * these words, so that a column or row put in, or rows in another order, change nothing.
 */
import { InputError } from "../../calc/errors";
import { nameKey } from "../../calc/names";
import type { Field, Fields, Row, Typed } from "../fields/field";
import { isBlank } from "../reading/cells";
import { dayIn } from "../reading/days";
import { type Quantity, type UnitSystem, unitName } from "../reading/units";

/** Cells as a range gives them. */
export type Grid = readonly (readonly unknown[])[];

const UNIT = /\{(\w+)\}/g;

/** A label with the unit in place of its token. */
export const labelText = (label: string, units: UnitSystem): string =>
	label.replace(UNIT, (_, quantity: Quantity) => unitName(quantity, units));

/** The words by which a field is found. */
const wordsOf = (
	{ label, formerly = [] }: Field,
	units: UnitSystem,
): string[] =>
	[label, ...formerly].map((text) => nameKey(labelText(text, units)));

const wordOf = (cell: unknown): string =>
	typeof cell === "string" ? nameKey(cell) : "";

/** A cell's value as a file keeps it; nothing where it is blank. */
export function typedIn(field: Field, cell: unknown): Typed | undefined {
	if (isBlank(cell)) return undefined;
	if (field.kind === "day") return dayOrText(cell);
	if (typeof cell === "number") return cell;
	return typeof cell === "boolean" ? (cell ? "TRUE" : "FALSE") : String(cell);
}

/** A text that is no day is kept as it was typed: the answers say what is wrong with it. */
function dayOrText(cell: unknown): Typed {
	try {
		return dayIn("day", cell);
	} catch (error) {
		if (error instanceof InputError) return String(cell);
		throw error;
	}
}

const withoutBlanks = <F extends Fields>(
	entries: readonly (readonly [string, Typed | undefined])[],
): Row<F> =>
	Object.fromEntries(
		entries.filter(([, typed]) => typed !== undefined),
	) as Row<F>;

/** The column that is headed so. @throws InputError where the heading is gone. */
export function columnUnder(heading: string, grid: Grid): number {
	const word = nameKey(heading);
	for (const row of grid) {
		const at = row.findIndex((cell) => wordOf(cell) === word);
		if (at >= 0) return at;
	}
	throw new InputError(
		`the heading ${heading} is gone: bring it back, for its column is not read without`,
	);
}

/** Where a label stands: more to the left than what is typed, which may say the same. */
function labelPlace(
	grid: Grid,
	words: readonly string[],
): { row: readonly unknown[]; column: number } | undefined {
	const widest = Math.max(0, ...grid.map(({ length }) => length));
	for (let column = 0; column < widest; column++) {
		const row = grid.find((cells) => words.includes(wordOf(cells[column])));
		if (row) return { row, column };
	}
	return undefined;
}

/**
 * What was typed beside the labels of a record: in the column of this heading, or where there is none, in the first cell to the
 * right of the label that holds something.
 *
 * @throws InputError for a label or a heading that is gone.
 */
export function listIn<F extends Fields>(
	fields: F,
	grid: Grid,
	units: UnitSystem,
	heading?: string,
): Row<F> {
	const under = heading === undefined ? undefined : columnUnder(heading, grid);
	return withoutBlanks(
		Object.entries(fields).map(([key, field]) => {
			const place = labelPlace(grid, wordsOf(field, units));
			if (!place)
				throw new InputError(
					`the label ${labelText(field.label, units)} is gone: bring it back, for what stands beside it is not read without`,
				);
			const { row, column } = place;
			const cell =
				under === undefined
					? row.slice(column + 1).find((one) => !isBlank(one))
					: row[under];
			return [key, typedIn(field, cell)];
		}),
	);
}

/** A table in a region: where its headings are, and which column is whose. */
export interface TablePlace {
	/** Row of the headings, counted from 0. */
	row: number;
	/** Column of each field. */
	columns: Readonly<Record<string, number>>;
	/** Headings that are no field's, such as the names of pigments, by column. */
	others: readonly (readonly [column: number, heading: string])[];
	/** First row behind it. */
	end: number;
}

/** Which words head the column of each field. */
const headingsOf = (fields: Fields, units: UnitSystem) =>
	Object.entries(fields).map(
		([key, field]) => [key, wordsOf(field, units)] as const,
	);

/** How many of the headings stand in the row. */
function matchesIn(
	row: readonly unknown[],
	headings: ReturnType<typeof headingsOf>,
): number {
	const there = row.map(wordOf);
	return headings.filter(([, any]) => any.some((word) => there.includes(word)))
		.length;
}

const isFilled = (row: readonly unknown[]): boolean =>
	row.some((cell) => !isBlank(cell));

/** Tables that may stand below another, by their titles. */
export type Titled = Readonly<Record<string, Fields>>;

/** Whether a table begins in this row: its title alone, and its headings in the next row that holds anything. */
function beginsTable(
	grid: Grid,
	index: number,
	tables: Titled,
	units: UnitSystem,
): boolean {
	const [title, ...others] = (grid[index] ?? []).filter(
		(cell) => !isBlank(cell),
	);
	const [, fields] =
		Object.entries(tables).find(([text]) => nameKey(text) === wordOf(title)) ??
		[];
	if (!fields || others.length > 0) return false;
	const next = grid.slice(index + 1).find(isFilled) ?? [];
	return matchesIn(next, headingsOf(fields, units)) > 1;
}

/**
 * The table with these headings.
 *
 * It ends at the region's end or where one of the tables `below` begins.
 *
 * @throws InputError where a heading is gone.
 */
export function placeOf(
	fields: Fields,
	grid: Grid,
	units: UnitSystem,
	below: Titled = {},
): TablePlace {
	const words = headingsOf(fields, units);
	const matches = grid.map((row) => matchesIn(row, words));
	const most = Math.max(0, ...matches);
	const row = most > 0 ? matches.indexOf(most) : -1;
	const headings = (grid[row] ?? []).map(wordOf);
	const columns: Record<string, number> = {};
	for (const [key, any] of words) {
		const at = headings.findIndex((heading) => any.includes(heading));
		if (at < 0)
			throw new InputError(
				`the heading ${labelText(fields[key]?.label ?? key, units)} is gone: bring it back, for its column is not read without`,
			);
		columns[key] = at;
	}
	const own = new Set(Object.values(columns));
	const end = grid.findIndex(
		(_, index) => index > row && beginsTable(grid, index, below, units),
	);
	return {
		row,
		columns,
		others: (grid[row] ?? []).flatMap((cell, column) =>
			own.has(column) || isBlank(cell) ? [] : [[column, String(cell)] as const],
		),
		end: end < 0 ? grid.length : end,
	};
}

/** Rows of a table as they stand, blank ones too. */
export const rowsIn = <F extends Fields>(
	fields: F,
	grid: Grid,
	{ row, columns, end }: TablePlace,
): Row<F>[] =>
	grid
		.slice(row + 1, end)
		.map((cells) =>
			withoutBlanks(
				Object.entries(fields).map(([key, field]) => [
					key,
					typedIn(field, cells[columns[key] ?? -1]),
				]),
			),
		);

export const isEmpty = (row: object): boolean => Object.keys(row).length === 0;
