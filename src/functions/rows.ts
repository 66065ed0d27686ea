/** Reading columns and tables whose rows belong together. */
import { at, InputError } from "../calc/errors";
import { isBlank } from "./cells";
import type { CellParam, ListParam, TableParam } from "./declare";
import { columnOf, type Grid, gridOf, lastFilled, sameSize } from "./grid";
import type { UnitSystem } from "./units";

export type GroupParam = ListParam<unknown> | TableParam<unknown>;
type Named = readonly [name: string, param: GroupParam];

export interface Rows {
	values: Record<string, unknown[]>;
	/** Of the rows that belong together: how many after trimming, and which of them are filled. */
	count: number;
	filled: number[];
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
		grid.length === 1 && param.kind === "list"
			? readGroup(name, param, grid, row, units)
			: at(place(row), () => readGroup(name, param, grid, row, units)),
	);
}

/** The lists and tables whose rows belong together. */
function readTogether(
	together: readonly Named[],
	raw: Record<string, unknown>,
	units: UnitSystem,
): Rows {
	const values: Record<string, unknown[]> = {};
	const grids = new Map(
		together.map(([name, param]) => [name, groupGrid(name, param, raw[name])]),
	);
	const tall = [...grids].filter(([name]) => Array.isArray(raw[name]));
	const size = tall.length
		? sameSize(tall.map(([name, grid]) => [name, grid.length]))
		: Math.min(1, grids.size);
	const rowOf = (name: string, row: number) => {
		const grid = grids.get(name) ?? [];
		return grid[Array.isArray(raw[name]) ? row : 0];
	};
	const spread = together.filter(
		([name]) => Array.isArray(raw[name]) || tall.length === 0,
	);
	const required = spread.filter(
		([, param]) => !param.optional || (param.kind === "list" && param.decides),
	);
	const deciding = required.length ? required : spread;
	const count = lastFilled(size, (row) =>
		spread.every(([name]) => rowBlank(rowOf(name, row))),
	);
	const filled = [...Array(count).keys()].filter(
		(row) => !deciding.every(([name]) => rowBlank(rowOf(name, row))),
	);
	for (const [name, param] of together)
		if (filled.length === 0 && !param.optional && size <= 1)
			throw new InputError(`${name} is blank`);
	for (const [name, param] of together)
		values[name] = filled.map((row) => {
			const cells = [rowOf(name, row) ?? []];
			const read = () => readGroup(name, param, cells, 0, units, row);
			return size === 1 && param.kind === "list"
				? read()
				: at(`row ${row + 1}`, read);
		});
	return { values, count, filled };
}

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

function readGroup(
	name: string,
	param: GroupParam,
	grid: Grid,
	row: number,
	units: UnitSystem,
	place = row,
): unknown {
	const cells = grid[row] ?? [];
	if (param.kind === "list") return readCell(name, param.of, cells[0], units);
	const columns = Object.entries(param.columns);
	if (cells.length > columns.length && !param.more)
		throw new InputError(
			`${name} must have at most ${columns.length} columns, got ${cells.length}`,
		);
	const read: Record<string, unknown> = { row: place + 1 };
	columns.forEach(([column, cell], index) => {
		read[column] = readCell(words(column), cell, cells[index], units);
	});
	const more = param.more;
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
	for (const [name, { optional, alone }] of params)
		if (!optional && !alone && rows.values[name]?.length === 0)
			throw new InputError(`${name} is blank`);
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
