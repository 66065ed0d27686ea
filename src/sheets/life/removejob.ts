/** Takes a job away: its tabs, names and row, and nothing else. */
import { workbook } from "../../../templates/index";
import { InputError } from "../../calc/errors";
import { jobOfName, jobTabName } from "../reading/rangenames";
import type { Ending } from "../writing/journal";
import { removeTabs } from "./removetabs";
import { takeTurn } from "./taketurn";

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

/** Names of the tabs that are gone. */
export function deleteJob(spreadsheet: Spreadsheet, job: number): string[] {
	const ended = takeTurn(spreadsheet, { act: "removing", job });
	if (ended) return ended;
	const there = belongings(spreadsheet, job);
	if (there.length === 0)
		throw new InputError(`There is no job ${job} in this workbook`);
	const entry: Ending = {
		act: "removing",
		job,
		tabs: there.map(({ sheet }) => sheet.getSheetId()),
		names: there.flatMap(({ names }) => names.map((name) => name.getName())),
	};
	return removeTabs(spreadsheet, entry);
}
