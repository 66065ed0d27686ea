/** Takes a job away: its tabs, names and row, and nothing else. */
import { workbook } from "../../templates/index";
import { InputError } from "../calc/errors";
import { jobsRange, jobsRowOf } from "./jobsrow";
import { waitForTurn } from "./lock";
import { jobOfName, jobTabName } from "./names";
import { readStudio } from "./readstudio";
import { throughout } from "./steps";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** What belongs to the job, live or closed, or to what an interrupted removal left of it. */
export function belongings(spreadsheet: Spreadsheet, job: number) {
	const names = spreadsheet
		.getNamedRanges()
		.filter((range) => jobOfName(range.getName()) === job);
	const sheets = new Map<number, Sheet>();
	const keep = (sheet: Sheet | null) => {
		if (sheet) sheets.set(sheet.getSheetId(), sheet);
	};
	for (const name of names) keep(name.getRange().getSheet());
	if (names.length > 0)
		for (const { name } of workbook().jobTabs)
			keep(spreadsheet.getSheetByName(jobTabName(job, name)));
	return { names, sheets: [...sheets.values()] };
}

/**
 * Names of the tabs that are gone.
 *
 * A tab that is gone cannot be put back: everything is read before the first goes, and what fails then is done again.
 */
export function removedJob(spreadsheet: Spreadsheet, job: number): string[] {
	waitForTurn();
	const studio = readStudio(spreadsheet);
	const { names, sheets } = belongings(spreadsheet, job);
	if (names.length === 0)
		throw new InputError(`There is no job ${job} in this workbook`);
	const tabs = sheets.map((sheet) => sheet.getName());
	const row = studio && jobsRowOf(studio, job);
	const table = studio?.table("Jobs")?.getSheet();
	const range = row !== undefined && table ? jobsRange(table, row) : undefined;
	throughout(`Job ${job} is not removed whole yet`, [
		() => range?.clearContent(),
		...sheets.map((sheet) => () => spreadsheet.deleteSheet(sheet)),
		...names.map((name) => () => name.remove()),
		() => SpreadsheetApp.flush(),
	]);
	return tabs;
}
