/** Puts the values of a job's tabs in the place of their formulas; begun again, it goes on where it was. */
import { InputError } from "../../calc/errors";
import { CLOSED, jobOfName, jobPrefix } from "../reading/rangenames";
import { hasStudio } from "../reading/readstudio";
import { isUnready, notReady } from "../reading/unready";
import { throughout } from "../writing/allornothing";
import { keptAsText } from "../writing/content";
import { blocksOver } from "../writing/covering";
import { PLAIN_TEXT } from "../writing/formats";
import { jobsRowOf, jobsTable, lineCells } from "../writing/jobsrow";
import { type Ending, noteBegun, noteDone } from "../writing/journal";
import { RISKY } from "../writing/typedcell";

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
	const row = lineOf(spreadsheet, job);
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

/** The job's line on the Jobs tab; its number goes on leading to the tabs. */
function lineOf(spreadsheet: Spreadsheet, job: number): Cells | undefined {
	const table = hasStudio(spreadsheet) ? jobsTable(spreadsheet) : undefined;
	const row = table && jobsRowOf(table, job);
	if (!table || row === undefined) return undefined;
	const range = lineCells(table, row);
	return {
		sheet: range.getSheet(),
		range,
		row,
		column: table.place.line + 1,
	};
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
	const values = range.getValues() as unknown[][];
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
