/** Reading columns and tables whose rows belong together. */
import { at, InputError } from "../calc/errors";
import { isBlank } from "../job/reading/cells";
import type { UnitSystem } from "../job/reading/units";
import type { CellParam, ListParam, TableParam } from "./declare";
import {
	type CountedRows,
	columnOf,
	countedRows,
	type Grid,
	gridOf,
	lastFilled,
	sameSize,
} from "./grid";

export type GroupParam = ListParam<unknown> | TableParam<unknown>;
type Named = readonly [name: string, param: GroupParam];

/** What lists and tables hold, by name; the rows are of those that belong together. */
export interface Rows extends CountedRows {
	values: Record<string, unknown[]>;
}

/** Reads the lists and tables; rows that are blank in all that must be filled are passed over. */
export function readRows(
	params: readonly Named[],
	raw: Record<string, unknown>,
	units: UnitSystem,
): Rows {
	const alone = params.filter(([, param]) => param.alone);
	const rows = readTogether(
		params.filter(([, param]) => !param.alone),
		raw,
		units,
	);
	for (const [name, param] of alone)
		rows.values[name] = readAlone(name, param, raw[name], units);
	return rows;
}

/** A list or table that stands by itself; blank rows of a table are passed over. */
function readAlone(
	name: string,
	param: GroupParam,
	raw: unknown,
	units: UnitSystem,
): unknown[] {
	const grid = groupGrid(name, param, raw);
	const last = lastFilled(grid.length, (row) => rowBlank(grid[row]));
	const place = (row: number) =>
		param.kind === "table" ? `${name} row ${row + 1}` : `row ${row + 1}`;
	const kept = [...Array(last).keys()].filter(
		(row) => param.kind === "list" || !rowBlank(grid[row]),
	);
	if (kept.length === 0 && !mayBeEmpty(param, grid))
		throw new InputError(`${name} is blank`);
	return kept.map((row) =>
		placed(grid.length, param, place(row), () =>
			readGroup(name, param, grid[row] ?? [], row, units),
		),
	);
}

/** The lists and tables whose rows belong together; one that is a single cell is the same in every row. */
function readTogether(
	together: readonly Named[],
	raw: Record<string, unknown>,
	units: UnitSystem,
): Rows {
	const grids = new Map(
		together.map(([name, param]) => [name, groupGrid(name, param, raw[name])]),
	);
	const ranges = together.filter(([name]) => Array.isArray(raw[name]));
	const spread = ranges.length ? ranges : together;
	const size = sameSize(
		spread.map(([name]) => [name, grids.get(name)?.length ?? 0]),
	);
	const cellsIn = (name: string, row: number) => {
		const grid = grids.get(name) ?? [];
		return grid[Math.min(row, grid.length - 1)] ?? [];
	};
	const rows = countedRows(
		size,
		spread.map(([name]) => name),
		spread.filter(([, param]) => decides(param)).map(([name]) => name),
		(name, row) => rowBlank(cellsIn(name, row)),
	);
	if (size <= 1 && rows.filled.length === 0) mustBeOptional(together);
	const read = ([name, param]: Named, row: number) =>
		placed(size, param, `row ${row + 1}`, () =>
			readGroup(name, param, cellsIn(name, row), row, units),
		);
	const values = Object.fromEntries(
		together.map((named) => [
			named[0],
			rows.filled.map((row) => read(named, row)),
		]),
	);
	return { values, ...rows };
}

/** What is read, its place told where it is wrong; a list of one value has none to tell. */
const placed = (
	size: number,
	{ kind }: GroupParam,
	place: string,
	read: () => unknown,
): unknown => (size === 1 && kind === "list" ? read() : at(place, read));

function mustBeOptional(blank: readonly Named[]): void {
	for (const [name, { optional }] of blank)
		if (!optional) throw new InputError(`${name} is blank`);
}

/** Whether a row without it is a mistake where others of the row are filled. */
const decides = (param: GroupParam): boolean =>
	!param.optional || (param.kind === "list" && param.decides);

/** A blank cell is a slip; a range of blanks may be meant. */
const mayBeEmpty = (param: GroupParam, { length }: Grid): boolean =>
	param.optional || (param.kind === "list" && param.mayBeEmpty && length > 1);

const rowBlank = (row: readonly unknown[] | undefined): boolean =>
	row?.every(isBlank) ?? true;

/** A list as a column whatever way it lies; a table as it is. */
function groupGrid(name: string, param: GroupParam, raw: unknown): Grid {
	if (raw === undefined) return param.kind === "list" ? [[undefined]] : [[]];
	if (param.kind === "table") return gridOf(raw);
	const column = columnOf(name, raw);
	return column ? column.map((cell) => [cell]) : gridOf(raw);
}

/** One row of a list or table, whose place in the argument a table's row is told. */
function readGroup(
	name: string,
	param: GroupParam,
	cells: readonly unknown[],
	place: number,
	units: UnitSystem,
): unknown {
	if (param.kind === "list") return readCell(name, param.of, cells[0], units);
	const { more } = param;
	const columns = Object.entries(param.columns);
	if (cells.length > columns.length && !more)
		throw new InputError(
			`${name} must have at most ${columns.length} columns, got ${cells.length}`,
		);
	const read: Record<string, unknown> = { row: place + 1 };
	for (const [index, [column, cell]] of columns.entries())
		read[column] = readCell(words(column), cell, cells[index], units);
	if (more)
		read.more = cells
			.slice(columns.length)
			.map((cell, index) =>
				readCell(`${more.help} ${index + 1}`, more, cell, units),
			);
	return read;
}

/** `dropHeight` as a person reads it: drop height. */
const words = (name: string): string =>
	name.length === 1
		? name.toUpperCase()
		: name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** Where no answer stands beside the rows, nothing but blank rows is nothing to answer. */
export function mustHaveRows(params: readonly Named[], rows: Rows): void {
	mustBeOptional(
		params.filter(
			([name, { alone }]) => !alone && rows.values[name]?.length === 0,
		),
	);
}

/** One cell by its declaration; a blank is what the declaration says it means. */
export function readCell(
	name: string,
	param: CellParam<unknown>,
	cell: unknown,
	units: UnitSystem,
): unknown {
	return param.optional && isBlank(cell)
		? param.blank
		: param.read(name, cell, units);
}
