/** Closes a finished job: its tabs stay as values, out of sight, and cost an edit nothing any more. */

import { InputError } from "../calc/errors";
import { closeTabs } from "./closing";
import type { Ending } from "./journal";
import { readJob } from "./readjob";
import { isUnready, notReady } from "./ready";
import { takeTurn } from "./turn";

/** Names of the closed tabs. */
export function closedJob(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	job: number,
): string[] {
	const ended = takeTurn(spreadsheet, { act: "closing", job });
	if (ended) return ended;
	const { tabs } = readJob(spreadsheet, job);
	const loading = tabs.find(({ values }) => values.flat().some(isUnready));
	if (loading) throw new InputError(notReady(loading.page.name));
	const entry: Ending = {
		act: "closing",
		job,
		tabs: tabs.map(({ sheet }) => sheet.getSheetId()),
		names: [],
	};
	return closeTabs(spreadsheet, entry);
}
