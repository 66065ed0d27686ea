/** Creates a job: reads everything, plans in memory, writes last, and takes everything back if it cannot finish. */
import { workbook } from "../../templates/index";
import { InputError } from "../calc/errors";
import type { JobInput } from "../template/job";
import { cellsOf } from "./cells";
import { checkedFields } from "./input";
import { waitForTurn } from "./lock";
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
import { jobSlots, type Known } from "./slots";
import { type Studio, starterStudio } from "./studio";
import type { Tokens } from "./tokens";
import { type Added, reason, takeBack } from "./undo";
import { writePages } from "./write";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** What was read of the workbook before anything is written. */
interface Found {
	number: number;
	/** How many tabs there are. */
	tabs: number;
	studio: Studio;
}

interface Plan {
	/** Studio tabs where there are none, then the job's. */
	pages: Page[];
	made: JobMade;
}

/** The job's number and tabs. @throws InputError for a job that cannot be, Error when the workbook would not take it. */
export function createdJob(input: unknown): JobMade {
	const job = checkedFields(input);
	waitForTurn();
	const spreadsheet = SpreadsheetApp.getActiveSpreadsheet();
	const found = foundIn(spreadsheet, job);
	return written(spreadsheet, planned(job, found), found.tabs);
}

function foundIn(spreadsheet: Spreadsheet, job: JobInput): Found {
	const studio = readStudio(spreadsheet);
	const sheets = spreadsheet.getSheets();
	if (!studio) mayHaveStudio(sheets.map((sheet) => sheet.getName()));
	return {
		number: nextJobNumber((number) => isTaken(spreadsheet, number)),
		tabs: sheets.length,
		studio: studio ?? starterStudio(job.units),
	};
}

/** Whether a job has this number, whatever its tabs are called now, or something else a name that it needs. */
const isTaken = (spreadsheet: Spreadsheet, job: number): boolean =>
	workbook().jobTabs.some(
		(tab) =>
			spreadsheet.getRangeByName(jobPrefix(job) + firstName(tab)) !== null ||
			spreadsheet.getSheetByName(jobTabName(job, tab.name)) !== null,
	);

/** @throws InputError where the workbook has a tab of the person's own that is called like one of the studio's. */
function mayHaveStudio(tabs: readonly string[]): void {
	const there = new Set(tabs.map((name) => name.toLowerCase()));
	for (const { name } of workbook().studioTabs)
		if (there.has(name.toLowerCase()))
			throw new InputError(
				`This workbook has a tab named ${name} already, which the studio needs: rename yours, then try again`,
			);
}

function planned(job: JobInput, { number, studio }: Found): Plan {
	const slots = jobSlots(job, knownOf(studio));
	const { jobTabs } = workbook();
	const jobNames = Object.fromEntries(
		jobTabs.map(({ name }) => [name, jobTabName(number, name)]),
	);
	const tabs = { ...studio.tabs, ...jobNames };
	const tokens: Tokens = {
		units: studio.units,
		job: jobPrefix(number),
		tabs,
		cells: { ...studio.cells, ...cellsOf(jobTabs, tabs) },
	};
	return {
		pages: [
			...(studio.exists ? [] : studioPages(studio)),
			...jobTabs.map((tab) =>
				pageOf({ tab, tokens, prefix: jobPrefix(number), slots }),
			),
		],
		made: { number, tabs: Object.values(jobNames) },
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

const knownOf = (studio: Studio): Known => ({
	units: studio.units,
	unitsFixed: studio.exists,
	mixes: [...new Set(studio.mixes.map(([name]) => String(name)))],
	pigments: studio.pigments.map(([name]) => String(name)),
	waste: typeof studio.waste === "number" ? studio.waste : "",
});

function written(
	spreadsheet: Spreadsheet,
	{ pages, made }: Plan,
	tabsBefore: number,
): JobMade {
	const open = spreadsheet.getActiveSheet();
	const added: Added = { spreadsheet, open, tabs: [], names: [] };
	try {
		writePages(pages, added, tabsBefore);
		const first = added.tabs.find(({ name }) => name === made.tabs[0]);
		if (first) spreadsheet.setActiveSheet(first.sheet);
		SpreadsheetApp.flush();
		return made;
	} catch (error) {
		const left = takeBack(added);
		throw new Error(
			left.length === 0
				? `The job was not created, and the workbook is as it was. Try again. (${reason(error)})`
				: `The job was not created (${reason(error)}). This is left of it, to be put right by hand: ${left.join(", ")}`,
		);
	}
}
