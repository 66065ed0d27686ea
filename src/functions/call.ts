/** What a cell calls: reads the arguments by the declaration, computes, and answers in the person's units. */
import { at, InputError } from "../calc/errors";
import { isBlank, wordIn } from "./cells";
import type {
	CellParam,
	CellValue,
	Column,
	ListParam,
	SheetFunction,
	TableParam,
} from "./declare";
import { fromSi, type UnitSystem } from "./units";

type Grid = readonly (readonly unknown[])[];
type Named = readonly [name: string, param: GroupParam];
type GroupParam = ListParam<unknown> | TableParam<unknown>;

/**
 * The answer a cell gets: a value, or rows of values.
 *
 * @throws InputError with one sentence for everything a person can correct.
 */
export function callFunction(
	fn: SheetFunction,
	given: readonly unknown[],
): CellValue | CellValue[][] {
	const params = Object.entries(fn.params);
	if (given.length > params.length)
		throw new InputError(
			`${fn.name} takes at most ${params.length} arguments, got ${given.length}`,
		);
	const raw = Object.fromEntries(
		params.map(([name], index) => [name, given[index]]),
	);
	const units = unitsOf(fn, raw);
	const cells = params.filter(
		(entry): entry is [string, CellParam<unknown>] => entry[1].kind === "cell",
	);
	const groups = params.filter(
		(entry): entry is [string, GroupParam] =>
			entry[1].kind === "list" || entry[1].kind === "table",
	);
	const rows = readRows(groups, raw, units);
	if (!fn.answer.beside) mustHaveRows(groups, rows);
	const compute = (scalars: Record<string, unknown>) =>
		fn.compute(
			{ ...scalars, ...rows.values },
			units,
			rows.filled.map((row) => row + 1),
		);
	const answers =
		fn.answer.shape === "value" || fn.answer.shape === "row"
			? mapScalars(fn, cells, raw, units, compute)
			: oneTable(fn, cells, raw, units, rows, compute);
	return asCells(answers);
}

/** Where no answer stands beside the rows, nothing but blank rows is nothing to answer. */
function mustHaveRows(params: readonly Named[], rows: Rows): void {
	for (const [name, { optional, alone }] of params)
		if (!optional && !alone && rows.values[name]?.length === 0)
			throw new InputError(`${name} is blank`);
}

function unitsOf(fn: SheetFunction, raw: Record<string, unknown>): UnitSystem {
	if (fn.params.units?.kind !== "units") return "metric";
	const cell = single("units", raw.units);
	return isBlank(cell) ? "metric" : wordIn("units", cell, ["metric", "us"]);
}

/** Rows of cells, whatever came: a value, a range, or a plain list (which counts as a column). */
function gridOf(raw: unknown): Grid {
	if (!Array.isArray(raw)) return [[raw]];
	return raw.map((row) => (Array.isArray(row) ? row : [row]));
}

const sizeOf = (grid: Grid): [number, number] => [
	grid.length,
	grid[0]?.length ?? 0,
];

/** The values of a column or a row; undefined for a single cell. */
function columnOf(name: string, raw: unknown): unknown[] | undefined {
	const grid = gridOf(raw);
	const [rows, columns] = sizeOf(grid);
	if (rows === 1 && columns === 1) return undefined;
	if (rows !== 1 && columns !== 1)
		throw new InputError(
			`${name} must be one value, column or row, got ${rows} × ${columns} cells`,
		);
	return grid.flat();
}

function single(name: string, raw: unknown): unknown {
	const [rows, columns] = sizeOf(gridOf(raw));
	if (rows !== 1 || columns !== 1)
		throw new InputError(
			`${name} must be one value, got ${rows} × ${columns} cells`,
		);
	return gridOf(raw)[0]?.[0];
}

function readCell(
	name: string,
	param: CellParam<unknown>,
	cell: unknown,
	units: UnitSystem,
): unknown {
	return param.optional && isBlank(cell)
		? param.blank
		: param.read(name, cell, units);
}

function sameSize(sizes: readonly (readonly [string, number])[]): number {
	const [first, ...others] = sizes;
	if (first === undefined) return 0;
	for (const [name, size] of others)
		if (size !== first[1])
			throw new InputError(
				`${first[0]} has ${first[1]} rows and ${name} has ${size}: they must be of one size`,
			);
	return first[1];
}

/** One answer, or one a row where a scalar argument is a column. */
function mapScalars(
	fn: SheetFunction,
	params: readonly [string, CellParam<unknown>][],
	raw: Record<string, unknown>,
	units: UnitSystem,
	compute: (scalars: Record<string, unknown>) => unknown,
): CellValue[][] {
	const columns = new Map<string, unknown[]>();
	for (const [name] of params) {
		const column = columnOf(name, raw[name]);
		if (column) columns.set(name, column);
	}
	const read = (row: number) =>
		Object.fromEntries(
			params.map(([name, param]) => {
				const cell = columns.has(name)
					? columns.get(name)?.[row]
					: gridOf(raw[name])[0]?.[0];
				return [name, readCell(name, param, cell, units)];
			}),
		);
	const answer = (row: number) => inUnits(fn, [compute(read(row))], units)[0];
	if (columns.size === 0) return [answer(0) ?? []];
	const size = sameSize([...columns].map(([name, all]) => [name, all.length]));
	const required = params.filter(
		([name, param]) => columns.has(name) && !param.optional,
	);
	const deciding = required.length
		? required.map(([name]) => name)
		: [...columns.keys()];
	const blankRow = (row: number) =>
		deciding.every((name) => isBlank(columns.get(name)?.[row]));
	const width = fn.answer.columns?.length ?? 1;
	const last = lastFilled(size, (row) =>
		[...columns.values()].every((column) => isBlank(column[row])),
	);
	return Array.from({ length: Math.max(1, last) }, (_, row) =>
		blankRow(row)
			? Array<CellValue>(width).fill("")
			: (at(`row ${row + 1}`, () => answer(row)) ?? []),
	);
}

function lastFilled(size: number, blank: (row: number) => boolean): number {
	let last = size;
	while (last > 0 && blank(last - 1)) last -= 1;
	return last;
}

interface Rows {
	values: Record<string, unknown[]>;
	/** Of the rows that belong together: how many after trimming, and which of them are filled. */
	count: number;
	filled: number[];
}

/** Reads the lists and tables; rows that are blank in all that must be filled are passed over. */
function readRows(
	params: readonly Named[],
	raw: Record<string, unknown>,
	units: UnitSystem,
): Rows {
	const values: Record<string, unknown[]> = {};
	for (const [name, param] of params.filter(([, { alone }]) => alone)) {
		const grid = groupGrid(name, param, raw[name]);
		const last = lastFilled(grid.length, (row) => rowBlank(grid[row]));
		const place = (row: number) =>
			param.kind === "table" ? `${name} row ${row + 1}` : `row ${row + 1}`;
		const kept = [...Array(last).keys()].filter(
			(row) => param.kind === "list" || !rowBlank(grid[row]),
		);
		if (kept.length === 0 && !mayBeEmpty(param, grid))
			throw new InputError(`${name} is blank`);
		values[name] = kept.map((row) =>
			grid.length === 1 && param.kind === "list"
				? readGroup(name, param, grid, row, units)
				: at(place(row), () => readGroup(name, param, grid, row, units)),
		);
	}
	const together = params.filter(([, { alone }]) => !alone);
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

function oneTable(
	fn: SheetFunction,
	params: readonly [string, CellParam<unknown>][],
	raw: Record<string, unknown>,
	units: UnitSystem,
	rows: Rows,
	compute: (scalars: Record<string, unknown>) => unknown,
): CellValue[][] {
	const { beside, turns } = fn.answer;
	if (beside && rows.values[beside]?.length === 0) return [[""]];
	const scalars = Object.fromEntries(
		params.map(([name, param]) => [
			name,
			readCell(name, param, single(name, raw[name]), units),
		]),
	);
	const answers = inUnits(fn, compute(scalars) as unknown[], units);
	const aligned =
		beside && fn.params[beside] && !(fn.params[beside] as GroupParam).alone
			? besideRows(answers, rows)
			: answers;
	return turns && beside && sizeOf(gridOf(raw[beside]))[0] === 1
		? [aligned.flat()]
		: aligned;
}

/** The answers with a blank row where the argument has one, so that they stay beside their inputs. */
function besideRows(answers: CellValue[][], rows: Rows): CellValue[][] {
	const blank = Array<CellValue>(answers[0]?.length ?? 1).fill("");
	const byRow = new Map(rows.filled.map((row, index) => [row, answers[index]]));
	return Array.from(
		{ length: rows.count },
		(_, row) => byRow.get(row) ?? blank,
	);
}

/** Answers in the person's unit, a row each. */
function inUnits(
	fn: SheetFunction,
	answers: readonly unknown[],
	units: UnitSystem,
): CellValue[][] {
	const { columns, unit, text } = fn.answer;
	const only: readonly Column[] = [{ text, unit }];
	const of = (index: number) =>
		columns?.[Math.min(index, columns.length - 1)] ?? only[0];
	return answers.map((answer) =>
		(Array.isArray(answer) ? answer : [answer]).map((value, index) =>
			cellValue(value, of(index)?.unit, units),
		),
	);
}

function cellValue(
	value: unknown,
	unit: Column["unit"],
	units: UnitSystem,
): CellValue {
	if (value === undefined || value === null) return "";
	if (typeof value !== "number") return String(value);
	const shown = unit ? fromSi(value, unit, units) : value;
	if (Number.isFinite(shown)) return shown + 0;
	throw new InputError(
		"these numbers are too large or too small to calculate with",
	);
}

/** One cell as its value, else rows of equal width. */
function asCells(rows: CellValue[][]): CellValue | CellValue[][] {
	const width = Math.max(1, ...rows.map((row) => row.length));
	const whole = rows.map((row) => [
		...row,
		...Array<CellValue>(width - row.length).fill(""),
	]);
	const only = whole[0]?.[0];
	return whole.length === 1 && width === 1 && only !== undefined ? only : whole;
}
