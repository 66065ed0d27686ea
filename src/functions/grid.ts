/** Ranges as rows of cells: their size, a column out of them, a single cell. */
import { InputError } from "../calc/errors";

export type Grid = readonly (readonly unknown[])[];

/** Rows of cells, whatever came: a value, a range, or a plain list (which counts as a column). */
export function gridOf(raw: unknown): Grid {
	if (!Array.isArray(raw)) return [[raw]];
	return raw.map((row) => (Array.isArray(row) ? row : [row]));
}

export const sizeOf = (grid: Grid): [number, number] => [
	grid.length,
	grid[0]?.length ?? 0,
];

/** The values of a column or a row; undefined for a single cell. */
export function columnOf(name: string, raw: unknown): unknown[] | undefined {
	const grid = gridOf(raw);
	const [rows, columns] = sizeOf(grid);
	if (rows === 1 && columns === 1) return undefined;
	if (rows !== 1 && columns !== 1)
		throw new InputError(
			`${name} must be one value, column or row, got ${rows} × ${columns} cells`,
		);
	return grid.flat();
}

export function single(name: string, raw: unknown): unknown {
	const [rows, columns] = sizeOf(gridOf(raw));
	if (rows !== 1 || columns !== 1)
		throw new InputError(
			`${name} must be one value, got ${rows} × ${columns} cells`,
		);
	return gridOf(raw)[0]?.[0];
}

export function sameSize(
	sizes: readonly (readonly [string, number])[],
): number {
	const [first, ...others] = sizes;
	if (first === undefined) return 0;
	for (const [name, size] of others)
		if (size !== first[1])
			throw new InputError(
				`${first[0]} has ${first[1]} rows and ${name} has ${size}: they must be of one size`,
			);
	return first[1];
}

/** Rows of columns that belong together. */
export interface CountedRows {
	/** How many there are without the blank ones at the end. */
	count: number;
	/** Which of them are filled, from 0. */
	filled: number[];
}

/**
 * The rows up to the last in which a column has something; a row is filled when one of the deciding columns has, which are
 * all where none is named.
 */
export function countedRows(
	size: number,
	columns: readonly string[],
	deciding: readonly string[],
	blank: (column: string, row: number) => boolean,
): CountedRows {
	const blankIn = (names: readonly string[], row: number) =>
		names.every((name) => blank(name, row));
	const count = lastFilled(size, (row) => blankIn(columns, row));
	const names = deciding.length > 0 ? deciding : columns;
	return {
		count,
		filled: [...Array(count).keys()].filter((row) => !blankIn(names, row)),
	};
}

/** How many rows there are without the blank ones at the end. */
export function lastFilled(
	size: number,
	blank: (row: number) => boolean,
): number {
	let last = size;
	while (last > 0 && blank(last - 1)) last -= 1;
	return last;
}
