/** What a cell calls: reads the arguments by the declaration, computes, and answers in the person's units. */
import { at, InputError } from "../calc/errors";
import { isBlank, wordIn } from "../job/reading/cells";
import type { UnitSystem } from "../job/reading/units";
import { asCells, besideRows, inUnits } from "./answers";
import type { CellParam, CellValue, Param, SheetFunction } from "./declare";
import {
	columnOf,
	countedRows,
	gridOf,
	sameSize,
	single,
	sizeOf,
} from "./grid";
import {
	type GroupParam,
	mustHaveRows,
	type Rows,
	readCell,
	readRows,
} from "./rows";

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
	const groups = params.filter(isGroup);
	const rows = readRows(groups, raw, units);
	if (!fn.answer.beside) mustHaveRows(groups, rows);
	const call = { fn, raw, units, rows, scalars: params.filter(isScalar) };
	return asCells(
		(fn.answer.shape ?? "row") === "row" ? rowByRow(call) : asTable(call),
	);
}

/** One call of a function, its lists and tables read. */
interface Call {
	fn: SheetFunction;
	/** As the cells were passed, by the arguments' names. */
	raw: Record<string, unknown>;
	units: UnitSystem;
	rows: Rows;
	scalars: readonly (readonly [name: string, param: CellParam<unknown>])[];
}

const isScalar = (
	entry: [string, Param],
): entry is [string, CellParam<unknown>] => entry[1].kind === "cell";

const isGroup = (entry: [string, Param]): entry is [string, GroupParam] =>
	entry[1].kind === "list" || entry[1].kind === "table";

function unitsOf(fn: SheetFunction, raw: Record<string, unknown>): UnitSystem {
	if (fn.params.units?.kind !== "units") return "metric";
	const cell = single("units", raw.units);
	return isBlank(cell) ? "metric" : wordIn("units", cell, ["metric", "us"]);
}

/** What the function computes, its scalar arguments in these cells. */
function computed(
	{ fn, units, rows, scalars }: Call,
	cellOf: (name: string) => unknown,
): unknown {
	const read = Object.fromEntries(
		scalars.map(([name, param]) => [
			name,
			readCell(name, param, cellOf(name), units),
		]),
	);
	return fn.compute(
		{ ...read, ...rows.values },
		units,
		rows.filled.map((row) => row + 1),
	);
}

/** One answer, or one a row where a scalar argument is a column. */
function rowByRow(call: Call): CellValue[][] {
	const { fn, raw, units, scalars } = call;
	const columns = new Map<string, unknown[]>();
	for (const [name] of scalars) {
		const column = columnOf(name, raw[name]);
		if (column) columns.set(name, column);
	}
	const cell = (name: string, row: number) =>
		columns.has(name) ? columns.get(name)?.[row] : gridOf(raw[name])[0]?.[0];
	const answer = (row: number) =>
		inUnits(fn, [computed(call, (name) => cell(name, row))], units)[0] ?? [];
	if (columns.size === 0) return [answer(0)];
	const { count, filled } = countedRows(
		sameSize([...columns].map(([name, cells]) => [name, cells.length])),
		[...columns.keys()],
		scalars
			.filter(([name, param]) => columns.has(name) && !param.optional)
			.map(([name]) => name),
		(name, row) => isBlank(cell(name, row)),
	);
	const answered = new Set(filled);
	const blank = Array<CellValue>(fn.answer.columns?.length ?? 1).fill("");
	return Array.from({ length: Math.max(1, count) }, (_, row) =>
		answered.has(row) ? at(`row ${row + 1}`, () => answer(row)) : blank,
	);
}

/** The rows of one answer, each beside the row of an argument where the declaration says so. */
function asTable(call: Call): CellValue[][] {
	const { fn, raw, units, rows } = call;
	const { beside, turns } = fn.answer;
	if (beside && rows.values[beside]?.length === 0) return [[""]];
	const found = computed(call, (name) => single(name, raw[name]));
	const answers = inUnits(fn, found as unknown[], units);
	const aligned =
		beside && fn.params[beside] && !(fn.params[beside] as GroupParam).alone
			? besideRows(answers, rows)
			: answers;
	return turns && beside && sizeOf(gridOf(raw[beside]))[0] === 1
		? [aligned.flat()]
		: aligned;
}
