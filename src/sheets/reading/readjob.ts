/** A job as its tabs have it now: found by its names, read by headings and labels. */
import { InputError } from "../../calc/errors";
import { JOB_REGIONS, type JobRegion, jobIn } from "../../job/cells/jobcells";
import type { JobFile } from "../../job/jobfile";
import { jobPrefix } from "./rangenames";
import { NO_STUDIO, readStudio, type StudioRead } from "./readstudio";
import { goneText, type RegionRead, regionRead } from "./regiongrids";
import { byRegion } from "./regionof";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

export interface JobRead {
	number: number;
	job: JobFile;
	studio: StudioRead;
	regions: Readonly<Record<JobRegion, RegionRead>>;
}

/** @throws InputError when there is no such job, or a name, a label or a heading of it is gone. */
export function readJob(spreadsheet: Spreadsheet, number: number): JobRead {
	const studio = readStudio(spreadsheet);
	if (!studio) throw new InputError(NO_STUDIO);
	const ranges = jobRanges(spreadsheet, number);
	const regions = Object.fromEntries(
		JOB_REGIONS.map((region) => [region, regionRead(ranges[region])]),
	) as Record<JobRegion, RegionRead>;
	return jobOf({ number, studio, regions });
}

/** The job that stands in these cells. @throws InputError when a label or a heading is gone. */
export const jobOf = (read: Omit<JobRead, "job">): JobRead => ({
	...read,
	job: byRegion(read.regions, [], (grids) =>
		jobIn(grids, read.studio.file, read.studio.units),
	),
});

/** The cells of each region. @throws InputError when the job is not open, or a region's name is gone. */
export function jobRanges(
	spreadsheet: Spreadsheet,
	number: number,
): Record<JobRegion, Range> {
	const found = JOB_REGIONS.map((region) => {
		const name = jobPrefix(number) + region;
		return { region, name, range: spreadsheet.getRangeByName(name) };
	});
	if (found.every(({ range }) => range === null))
		throw new InputError(noJob(number));
	return Object.fromEntries(
		found.map(({ region, name, range }) => {
			if (!range) throw new InputError(goneText(name));
			return [region, range];
		}),
	) as Record<JobRegion, Range>;
}

const noJob = (number: number): string =>
	`There is no open job ${number} in this workbook`;
