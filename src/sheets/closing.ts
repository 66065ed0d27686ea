/** Puts the values of a job's tabs in the place of their formulas; begun again, it goes on where it was. */
import { InputError } from "../calc/errors";
import { blocksOver } from "./blocks";
import { keptAsText } from "./content";
import { PLAIN_TEXT } from "./formats";
import { jobsArea, jobsRowOf } from "./jobsrow";
import { type Ending, noteBegun, noteDone } from "./journal";
import { CLOSED, jobOfName, jobPrefix } from "./names";
import { readStudio } from "./readstudio";
import { isUnready, notReady } from "./ready";
import { throughout } from "./steps";
import type { Cell } from "./studio";
import { RISKY } from "./typing";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Step = () => unknown;

/**
 * Names of the tabs, which hold values now and are out of sight.
 *
 * Everything is read before anything is written. Whatever is done already shows what it showed, so that a failure in
 * the middle harms nothing, and the next call finishes the rest.
 *
 * @throws InputError when a cell is not calculated yet.
 */
export function closeTabs(spreadsheet: Spreadsheet, entry: Ending): string[] {
	const { job, tabs } = entry;
	const sheets = spreadsheet
		.getSheets()
		.filter((sheet) => tabs.includes(sheet.getSheetId()));
	const [first] = sheets;
	const names = sheets.map((sheet) => sheet.getName());
	const values = sheets.flatMap((sheet) =>
		valueSteps({ sheet, range: sheet.getDataRange(), row: 1, column: 1 }),
	);
	const row = summaryOf(spreadsheet, job);
	const closed = jobPrefix(job) + CLOSED;
	const others = spreadsheet
		.getNamedRanges()
		.filter((name) => jobOfName(name.getName()) === job)
		.filter((name) => name.getName() !== closed);
	throughout(
		`Job ${job} is closed in part, and shows what it showed: choose Close a job again to finish`,
		[
			() => noteBegun(entry),
			() => first && spreadsheet.setNamedRange(closed, first.getRange("A1")),
			...values,
			...(row ? valueSteps(row) : []),
			...others.map((name) => () => name.remove()),
			...sheets.map((sheet) => () => sheet.hideSheet()),
			() => SpreadsheetApp.flush(),
			() => noteDone(entry),
		],
	);
	return names;
}

/** The job's row on the Jobs tab but for its number, which goes on leading to the tabs. */
function summaryOf(spreadsheet: Spreadsheet, job: number): Cells | undefined {
	const studio = readStudio(spreadsheet);
	const row = studio && jobsRowOf(studio, job);
	const sheet = studio?.table("Jobs")?.getSheet();
	if (row === undefined || !sheet) return undefined;
	const { column, columns } = jobsArea();
	const range = sheet.getRange(row, column + 2, 1, columns - 1);
	return { sheet, range, row, column: column + 2 };
}

/** Cells of a tab; row and column of the first count from 1. */
interface Cells {
	sheet: Sheet;
	range: GoogleAppsScript.Spreadsheet.Range;
	row: number;
	column: number;
}

/** Writes what the cells show, in few blocks; none where no cell has a formula. */
function valueSteps({ sheet, range, row: top, column: left }: Cells): Step[] {
	const formulas = range.getFormulas();
	if (formulas.flat().every((formula) => formula === "")) return [];
	const values = range.getValues() as Cell[][];
	if (values.flat().some(isUnready))
		throw new InputError(notReady(sheet.getName()));
	const formats = range.getNumberFormats();
	const isText = (row: number, column: number) =>
		formulas[row]?.[column] === "" && formats[row]?.[column] === PLAIN_TEXT;
	const needs = values.map((line, row) =>
		line.map((value, column) => {
			// written again, it might become something else
			if (isText(row, column))
				return RISKY.test(String(value)) ? "barred" : "free";
			return value === "" ? "free" : "covered";
		}),
	);
	const written = values.map((line, row) =>
		line.map((value, column) =>
			isText(row, column) ? value : keptAsText(value),
		),
	);
	return blocksOver(needs).map(({ row, column, rows, columns }) => () => {
		sheet
			.getRange(top + row, left + column, rows, columns)
			.setValues(
				written
					.slice(row, row + rows)
					.map((line) => line.slice(column, column + columns)),
			);
	});
}
