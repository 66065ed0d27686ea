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
type NamedRange = GoogleAppsScript.Spreadsheet.NamedRange;

/** A tab of a job and the names that lead to it. */
interface Belonging {
	sheet: Sheet;
	names: NamedRange[];
}

/** What belongs to the job, live or closed, or to what an interrupted removal left of it. */
export function belongings(spreadsheet: Spreadsheet, job: number): Belonging[] {
	const found = new Map<number, Belonging>();
	const of = (sheet: Sheet): Belonging => {
		const id = sheet.getSheetId();
		const one = found.get(id) ?? { sheet, names: [] };
		found.set(id, one);
		return one;
	};
	for (const name of spreadsheet.getNamedRanges())
		if (jobOfName(name.getName()) === job)
			of(name.getRange().getSheet()).names.push(name);
	if (found.size > 0)
		for (const { name } of workbook().jobTabs) {
			const sheet = spreadsheet.getSheetByName(jobTabName(job, name));
			if (sheet) of(sheet);
		}
	return [...found.values()];
}

/**
 * Names of the tabs that are gone.
 *
 * A tab that is gone cannot be put back: everything is read before the first goes, and what fails then is done again.
 * Its names go after it, since by them what is left of a job is found.
 */
export function removedJob(spreadsheet: Spreadsheet, job: number): string[] {
	waitForTurn();
	const studio = readStudio(spreadsheet);
	const there = belongings(spreadsheet, job);
	if (there.length === 0)
		throw new InputError(`There is no job ${job} in this workbook`);
	const tabs = there.map(({ sheet }) => sheet.getName());
	const row = studio && jobsRowOf(studio, job);
	const table = studio?.table("Jobs")?.getSheet();
	const range = row !== undefined && table ? jobsRange(table, row) : undefined;
	throughout(
		`Job ${job} is not removed whole yet: choose Remove a job again to finish`,
		[
			() => range?.clearContent(),
			...there.flatMap(({ sheet, names }) => [
				() => spreadsheet.deleteSheet(sheet),
				...names.map((name) => () => name.remove()),
			]),
			() => SpreadsheetApp.flush(),
		],
	);
	return tabs;
}
