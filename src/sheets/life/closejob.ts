/** Closes a finished job: its tabs stay as values, out of sight, and cost an edit nothing any more. */
import { readJob } from "../reading/readjob";
import type { Ending } from "../writing/journal";
import { closeTabs } from "./closetabs";
import { takeTurn } from "./taketurn";

/** Names of the closed tabs. @throws InputError for a job that cannot be read, or that is not calculated. */
export function closeJobTabs(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	job: number,
): string[] {
	const ended = takeTurn(spreadsheet, { act: "closing", job });
	if (ended) return ended;
	const { regions } = readJob(spreadsheet, job);
	const tabs = Object.values(regions).map(({ range }) =>
		range.getSheet().getSheetId(),
	);
	const entry: Ending = {
		act: "closing",
		job,
		tabs: [...new Set(tabs)],
		names: [],
	};
	return closeTabs(spreadsheet, entry);
}
