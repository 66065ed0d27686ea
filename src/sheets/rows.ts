/** New rows of a studio table, whole or not at all. */
import { workbook } from "../../templates/index";
import { InputError } from "../calc/errors";
import type { UnitSystem } from "../job/reading/units";
import { keptAsText } from "./content";
import { GENERAL, numberFormat, PLAIN_TEXT } from "./formats";
import { noteBegun, noteDone, type Recording } from "./journal";
import { firstName } from "./names";
import { insistently, type Step, wholly } from "./steps";
import type { Rows, Studio } from "./studio";
import { quoted } from "./tokens";

type Range = GoogleAppsScript.Spreadsheet.Range;

/** Where in the table the first rows are free behind all that are filled, counted from 0. @throws InputError when it is full. */
export function freeRow(rows: Rows, needed: number, tab: string): number {
	let free = rows.length;
	while (free > 0 && (rows[free - 1] ?? []).every((cell) => cell === ""))
		free -= 1;
	if (free + needed > rows.length)
		throw new InputError(
			`The ${tab} tab has no free row: add rows above its last one, then try again`,
		);
	return free;
}

/** Adds rows behind the filled ones of a studio tab's table, which are `there`; the first one's number on the tab. */
export function rowsAdded(
	studio: Studio,
	tab: string,
	rows: Rows,
	there: Rows,
): number {
	const table = studio.table(tab);
	if (!table) throw new Error(`There is no table on ${tab}`);
	const row = table.getRow() + freeRow(there, rows.length, tab);
	const columns = rows[0]?.length ?? 0;
	const range = table
		.getSheet()
		.getRange(row, table.getColumn(), rows.length, columns);
	const formats = rows.map(() => patternsOf(tab, studio.units));
	const begun: Recording = {
		act: "recording",
		job: 0,
		cells: `${quoted(table.getSheet().getName())}!${range.getA1Notation()}`,
		formats,
	};
	wholly(`Nothing was recorded on the ${tab} tab`, [
		{ act: () => noteBegun(begun), undo: () => noteDone(begun) },
		rowsStep(range, rows, formats),
	]);
	insistently(() => noteDone(begun));
	return row;
}

/** What each column of a studio tab's table is written in. */
function patternsOf(name: string, units: UnitSystem): string[] {
	const tab = workbook().studioTabs.find((one) => one.name === name);
	const formats = tab?.blocks.find(
		(block) => block.name === firstName(tab),
	)?.formats;
	if (typeof formats !== "object") throw new Error(`${name} has no formats`);
	return formats.map((format) => numberFormat(format, "input", units));
}

/** Texts keep what they are: marked while the cells are not yet plain text, which would keep the mark as well. */
function rowsStep(range: Range, rows: Rows, formats: string[][]): Step {
	return {
		act() {
			if (formats.flat().includes(PLAIN_TEXT)) range.setNumberFormat(GENERAL);
			range.setValues(rows.map((row) => row.map(keptAsText)));
			range.setNumberFormats(formats);
		},
		undo() {
			range.clearContent();
			range.setNumberFormats(formats);
		},
	};
}
