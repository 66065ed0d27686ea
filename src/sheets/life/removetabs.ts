/** Takes a job's tabs, names and row away; begun again, it goes on where it was. */

import { hasStudio } from "../reading/readstudio";
import { throughout } from "../writing/allornothing";
import { jobsRowOf, jobsTable, wholeRow } from "../writing/jobsrow";
import { type Ending, noteBegun, noteDone } from "../writing/journal";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/**
 * Names of the tabs that are gone.
 *
 * A tab that is gone cannot be put back: everything is read before the first goes, and what fails then is done again.
 */
export function removeTabs(spreadsheet: Spreadsheet, entry: Ending): string[] {
	const { job, tabs, names } = entry;
	const table = hasStudio(spreadsheet) ? jobsTable(spreadsheet) : undefined;
	const row = table && jobsRowOf(table, job);
	const range = table && row !== undefined ? wholeRow(table, row) : undefined;
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

function removeName(spreadsheet: Spreadsheet, name: string): void {
	if (spreadsheet.getRangeByName(name)) spreadsheet.removeNamedRange(name);
}
