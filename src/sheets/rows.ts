/** New rows of a studio table, whole or not at all. */
import { InputError } from "../calc/errors";
import type { UnitSystem } from "../template/job";
import type { Format } from "../template/plan";
import { GENERAL, numberFormat, PLAIN_TEXT } from "./formats";
import type { Step } from "./steps";
import type { Cell } from "./studio";

type Range = GoogleAppsScript.Spreadsheet.Range;

/** Where in the table the first rows are free behind all that are filled, counted from 0. @throws InputError when it is full. */
export function freeRow(
	rows: readonly (readonly Cell[])[],
	needed: number,
	tab: string,
): number {
	let free = rows.length;
	while (free > 0 && (rows[free - 1] ?? []).every((cell) => cell === ""))
		free -= 1;
	if (free + needed > rows.length)
		throw new InputError(
			`The ${tab} tab has no free row: add rows above its last one, then try again`,
		);
	return free;
}

/** What each column of a table is written in. */
export const patterns = (
	formats: readonly Format[],
	units: UnitSystem,
): string[] => formats.map((format) => numberFormat(format, "input", units));

const marked = (cell: Cell): Cell =>
	typeof cell === "string" && cell !== "" ? `'${cell}` : cell;

/** Texts keep what they are: marked while the cells are not yet plain text, which would keep the mark as well. */
export function rowsStep(
	range: Range,
	rows: readonly (readonly Cell[])[],
	formats: readonly string[],
): Step {
	const all = rows.map(() => [...formats]);
	return {
		act() {
			if (formats.includes(PLAIN_TEXT)) range.setNumberFormat(GENERAL);
			range.setValues(rows.map((row) => row.map(marked)));
			range.setNumberFormats(all);
		},
		undo() {
			range.clearContent();
			range.setNumberFormats(all);
		},
	};
}
