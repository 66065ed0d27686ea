/** Takes a job's tabs, names and row away; begun again, it goes on where it was. */

import { CLOSED, jobPrefix } from "../reading/rangenames";
import { hasStudio } from "../reading/readstudio";
import { throughout } from "../writing/allornothing";
import { jobRow, jobsTable } from "../writing/jobsrow";
import {
	type Ending,
	type Making,
	noteBegun,
	noteDone,
} from "../writing/journal";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

/**
 * Names of the tabs that are gone.
 *
 * A tab that is gone cannot be put back: everything is read before the first goes, and what fails then is done again.
 */
export function removeTabs(
	spreadsheet: Spreadsheet,
	entry: Ending,
	range = rowToClear(spreadsheet, entry),
): string[] {
	const { job, tabs, names } = entry;
	const sheets = spreadsheet
		.getSheets()
		.filter((sheet) => tabs.includes(sheet.getSheetId()));
	const gone = sheets.map((sheet) => sheet.getName());
	throughout(
		`Job ${job} is not removed whole yet: choose Remove a job again to finish`,
		[
			() => noteBegun(entry),
			() => range?.clearContent(),
			...names.map((name) => () => removeName(spreadsheet, name)),
			...sheets.map((sheet) => () => spreadsheet.deleteSheet(sheet)),
			() => SpreadsheetApp.flush(),
			() => noteDone(entry),
		],
	);
	return gone;
}

/** The closed tabs of a job that is made anew, which go once it is. */
export const closedBefore = (
	job: number,
	aside: NonNullable<Making["aside"]>,
): Ending => ({
	act: "removing",
	job,
	tabs: aside.map(([id]) => id),
	names: [jobPrefix(job) + CLOSED],
	isAnew: true,
});

/** Of a job that is made anew the row that it had before, if it still has both. */
function rowToClear(
	spreadsheet: Spreadsheet,
	{ job, isAnew }: Ending,
): Range | null {
	if (!hasStudio(spreadsheet)) return null;
	const table = jobsTable(spreadsheet);
	const isOnly = table.numbers.filter((number) => number === job).length < 2;
	return isAnew && isOnly ? null : jobRow(table, job);
}

function removeName(spreadsheet: Spreadsheet, name: string): void {
	if (spreadsheet.getRangeByName(name)) spreadsheet.removeNamedRange(name);
}
