/** A repeat order: the same job once more, without what belongs to its one pour. */
import { asReached } from "../../job/asreached";
import { repeatOrder } from "../../job/repeatorder";
import type { Copied, JobMade } from "../messages";
import { readJob } from "../reading/readjob";
import { writeInto } from "./createjob";
import { takeTurn } from "./taketurn";

/** The new job's number and tabs. @throws InputError for a job with more rows than a new one has room for. */
export function repeatJob(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	number: number,
	as: Copied,
): JobMade {
	takeTurn(spreadsheet);
	const { studio, job } = readJob(spreadsheet, number);
	const copied = as === "reached" ? asReached(studio.file, job) : job;
	return writeInto(spreadsheet, studio, repeatOrder(copied));
}
