/** What a cell calls: reads the arguments by the declaration, computes, and answers in the person's units. */
import { at, InputError } from "../calc/errors";
import { asCells, besideRows, inUnits } from "./answers";
import { isBlank, wordIn } from "./cells";
import type { CellParam, CellValue, SheetFunction } from "./declare";
import { columnOf, gridOf, lastFilled, sameSize, single, sizeOf } from "./grid";
import {
	type GroupParam,
	mustHaveRows,
	type Rows,
	readCell,
	readRows,
} from "./rows";
import type { UnitSystem } from "./units";

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
		(fn.answer.shape ?? "row") === "row"
			? mapScalars(fn, cells, raw, units, compute)
			: oneTable(fn, cells, raw, units, rows, compute);
	return asCells(answers);
}

function unitsOf(fn: SheetFunction, raw: Record<string, unknown>): UnitSystem {
	if (fn.params.units?.kind !== "units") return "metric";
	const cell = single("units", raw.units);
	return isBlank(cell) ? "metric" : wordIn("units", cell, ["metric", "us"]);
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
