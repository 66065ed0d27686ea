/** Closes a finished job: its tabs stay as values, out of sight, and cost an edit nothing any more. */
import { openWork } from "../../job/answers/openwork";
import { wholeOf } from "../../job/answers/whole";
import { stateOf } from "../reading/jobstate";
import { readJob } from "../reading/readjob";
import type { Ending } from "../writing/journal";
import { closeTabs } from "./closetabs";
import { belongings } from "./removejob";
import { takeTurn } from "./taketurn";

/** Names of the closed tabs, or what is open where that kept the job from being closed. */
interface Closed {
	tabs: string[];
	open: string[];
}

/** @throws InputError for a job that cannot be read, or that is not calculated. */
export function closeJobTabs(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	job: number,
	anyway: boolean,
): Closed {
	const ended = takeTurn(spreadsheet, { act: "closing", job });
	if (ended) return { tabs: ended, open: [] };
	const read = readJob(spreadsheet, job);
	const { recorded } = stateOf(spreadsheet, read);
	const open = anyway
		? []
		: openWork(wholeOf(read.studio.file, read.job), recorded);
	if (open.length > 0) return { tabs: [], open };
	const tabs = belongings(spreadsheet, job).map(({ sheet }) =>
		sheet.getSheetId(),
	);
	const first = spreadsheet
		.getSheets()
		.find((sheet) => tabs.includes(sheet.getSheetId()));
	const entry: Ending = {
		act: "closing",
		job,
		tabs,
		names: [],
		...(first && { rows: first.getMaxRows() }),
	};
	return { tabs: closeTabs(spreadsheet, entry, read.job), open: [] };
}
