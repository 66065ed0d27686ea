/** Everything that the panel needs of a written job: what is shown of it is worked out there. */
import type { JobState } from "../messages";
import { loadsIn, loggedRows } from "./loggedloads";
import { type JobRead, readJob } from "./readjob";
import { studioRegion } from "./readstudio";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

export const jobStateOf = (
	spreadsheet: Spreadsheet,
	number: number,
): JobState => stateOf(spreadsheet, readJob(spreadsheet, number));

/** The same of a job that was read just now. */
export const stateOf = (
	spreadsheet: Spreadsheet,
	{ number, job, studio }: JobRead,
): JobState => {
	const log = studioRegion(spreadsheet, "pours");
	const logged = loggedRows(log, studio.units, number).map(({ row }) => row);
	return {
		number,
		job,
		studio: studio.file,
		logged,
		recorded: loadsIn(logged),
	};
};
