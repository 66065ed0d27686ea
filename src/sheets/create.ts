/** Creates a job: reads everything, plans in memory, writes last, and takes everything back if it cannot finish. */
import { workbook } from "../../templates/index";
import { InputError } from "../calc/errors";
import { unitsOf } from "../job/jobfile";
import { checkedJob } from "../job/jobmistakes";
import type { Slots } from "../template/plan";
import { cellsOf } from "./cells";
import { freeJobsRow, lastJob, linkTo, summaryFrom } from "./jobsrow";
import { type Making, noteBegun, noteDone } from "./journal";
import type { JobMade } from "./messages";
import {
	firstName,
	jobPrefix,
	jobTabName,
	nextJobNumber,
	STUDIO_PREFIX,
} from "./names";
import { type Page, pageOf } from "./page";
import { readStudio } from "./readstudio";
import { jobSlots } from "./slots";
import { insistently } from "./steps";
import { type Studio, starterStudio } from "./studio";
import { quoted, type Tokens } from "./tokens";
import { takeTurn } from "./turn";
import { jobStudio } from "./typedstudio";
import { type Added, reason, takeBack } from "./undo";
import { writePages } from "./write";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** What was read of the workbook before anything is written. */
export interface Found {
	number: number;
	/** How many tabs there are. */
	tabs: number;
	studio: Studio;
	/** Row of the Jobs tab that is free. */
	row: number;
}

interface Plan {
	/** Studio tabs where there are none, then the job's. */
	pages: Page[];
	made: JobMade;
	/** The job's summary, as a formula writes it. */
	summary: string;
}

/** The job's number and tabs. @throws InputError for a job that cannot be, Error when the workbook would not take it. */
export function createdJob(input: unknown): JobMade {
	const spreadsheet = SpreadsheetApp.getActiveSpreadsheet();
	takeTurn(spreadsheet);
	const studio = readStudio(spreadsheet);
	if (!studio) mayHaveStudio(spreadsheet);
	const found = placeFor(spreadsheet, studio ?? starterStudio(unitsOf(input)));
	const own = jobStudio(found.studio);
	const slots = jobSlots(checkedJob(own, input), own);
	return written(spreadsheet, planned(found, slots), found);
}

/** A number and a row for one more job. */
export const placeFor = (spreadsheet: Spreadsheet, studio: Studio): Found => ({
	number: nextJobNumber(
		(number) => isTaken(spreadsheet, number),
		lastJob(studio) + 1,
	),
	tabs: spreadsheet.getNumSheets(),
	studio,
	row: freeJobsRow(studio),
});

/** Whether a job has this number, whatever its tabs are called now, or its first tab's name is somebody else's. */
function isTaken(spreadsheet: Spreadsheet, job: number): boolean {
	const [first] = workbook().jobTabs;
	if (!first) throw new Error("A job has no tabs");
	return (
		spreadsheet.getRangeByName(jobPrefix(job) + firstName(first)) !== null ||
		spreadsheet.getSheetByName(jobTabName(job, first.name)) !== null
	);
}

/** @throws InputError where the workbook has a tab of the person's own that is called like one of the studio's. */
function mayHaveStudio(spreadsheet: Spreadsheet): void {
	const there = spreadsheet
		.getSheets()
		.map((sheet) => sheet.getName().toLowerCase());
	for (const { name } of workbook().studioTabs)
		if (there.includes(name.toLowerCase()))
			throw new InputError(
				`This workbook has a tab named ${name} already, which the studio needs: rename yours, then try again`,
			);
}

/** The pages to write; `filled` may still change those of the job. */
export function planned(
	{ number, studio }: Found,
	slots: Slots,
	filled: (page: Page) => Page = (page) => page,
): Plan {
	const { jobTabs } = workbook();
	const jobNames = Object.fromEntries(
		jobTabs.map(({ name }) => [name, jobTabName(number, name)]),
	);
	const tabs = { ...studio.tabs, ...jobNames };
	const cells = { ...studio.cells, ...cellsOf(jobTabs, tabs) };
	const prefix = jobPrefix(number);
	const tokens: Tokens = { units: studio.units, job: prefix, tabs, cells };
	return {
		pages: [
			...(studio.exists ? [] : studioPages(studio)),
			...jobTabs.map((tab) => filled(pageOf({ tab, tokens, prefix, slots }))),
		],
		made: { number, tabs: Object.values(jobNames) },
		summary: cells["Job.summary"] ?? "",
	};
}

/** The studio's tabs, on first use. */
const studioPages = ({ units, tabs, cells }: Studio): Page[] =>
	workbook().studioTabs.map((tab) =>
		pageOf({
			tab,
			tokens: { units, tabs, cells },
			prefix: STUDIO_PREFIX,
			slots: workbook().starter[units],
		}),
	);

/** Writes the pages and the job's row, or nothing. */
export function written(
	spreadsheet: Spreadsheet,
	plan: Plan,
	{ tabs, studio, row }: Found,
): JobMade {
	const open = spreadsheet.getActiveSheet();
	const added: Added = { spreadsheet, open, tabs: [], names: [], cells: [] };
	const { made } = plan;
	const jobs = studio.tabs.Jobs ?? "Jobs";
	const begun: Making = {
		act: "making",
		job: made.number,
		tabs: plan.pages.map(({ name }) => name),
		names: plan.pages.flatMap(({ names }) => Object.keys(names)),
		first: made.tabs[0] ?? "",
		row: [jobs, `A${row}`],
	};
	try {
		noteBegun(begun);
		writePages(plan.pages, added, tabs);
		const first = added.tabs.find(({ name }) => name === begun.first)?.sheet;
		if (!first) throw new Error("A tab was not made");
		const cells = spreadsheet.getRange(`${quoted(jobs)}!A${row}:B${row}`);
		added.cells.push(cells);
		cells.setFormulas([
			[linkTo(first, made.number), summaryFrom(plan.summary)],
		]);
		spreadsheet.setActiveSheet(first);
		SpreadsheetApp.flush();
		insistently(() => noteDone(begun));
		return made;
	} catch (error) {
		const left = takeBack(added);
		if (left.length === 0) insistently(() => noteDone(begun));
		throw new Error(
			left.length === 0
				? `The job was not created, and the workbook is as it was. Try again. (${reason(error)})`
				: `The job was not created (${reason(error)}). This is left of it, and the next call takes it away: ${left.join(", ")}`,
		);
	}
}
