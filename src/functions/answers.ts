/** Answers on their way to the cells: in the person's units, beside their inputs, of equal width. */
import { InputError } from "../calc/errors";
import { fromSi, type UnitSystem } from "../job/reading/units";
import type { CellValue, Column, SheetFunction } from "./declare";
import type { Rows } from "./rows";

/** The answers with a blank row where the argument has one, so that they stay beside their inputs. */
export function besideRows(answers: CellValue[][], rows: Rows): CellValue[][] {
	const blank = Array<CellValue>(answers[0]?.length ?? 1).fill("");
	const byRow = new Map(rows.filled.map((row, index) => [row, answers[index]]));
	return Array.from(
		{ length: rows.count },
		(_, row) => byRow.get(row) ?? blank,
	);
}

/** Answers in the person's unit, a row each. */
export function inUnits(
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
export function asCells(rows: CellValue[][]): CellValue | CellValue[][] {
	const width = Math.max(1, ...rows.map((row) => row.length));
	const whole = rows.map((row) => [
		...row,
		...Array<CellValue>(width - row.length).fill(""),
	]);
	const only = whole[0]?.[0];
	return whole.length === 1 && width === 1 && only !== undefined ? only : whole;
}
