/** Chooses the load that the Pour card shows. */
import { InputError } from "../../calc/errors";
import { basisOf } from "../../job/answers/basis";
import { orNull } from "../../job/answers/known";
import { loadsOf } from "../../job/answers/loads";
import { takeTurn } from "../life/taketurn";
import type { JobState } from "../messages";
import { stateOf } from "../reading/jobstate";
import { readJob } from "../reading/readjob";

export function showLoad(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	number: number,
	load: number,
): JobState {
	takeTurn(spreadsheet);
	const read = readJob(spreadsheet, number);
	const { loads } = basisOf(read.studio.file, read.job);
	if (!orNull(loadsOf(loads))?.some((one) => one.number === load))
		throw new InputError(`Job ${number} has no load ${load}`);
	const state = stateOf(spreadsheet, { ...read, job: { ...read.job, load } });
	read.regions.load.range.setValue(load);
	return state;
}
