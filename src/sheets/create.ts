/** Creates a job: reads everything, plans in memory, writes last, and takes everything back if it cannot finish. */
import { jobTabs, starter, studioTabs } from "../../templates/index";
import { InputError } from "../calc/errors";
import type { JobInput } from "../template/job";
import { checkedFields } from "./input";
import { waitForTurn } from "./lock";
import type { JobMade } from "./messages";
import {
	allNames,
	jobPrefix,
	jobTabName,
	nextJobNumber,
	STUDIO_PREFIX,
} from "./names";
import { type Page, pageOf } from "./page";
import { jobSlots, type Known } from "./slots";
import { readStudio, type Studio, starterStudio } from "./studio";
import type { Tokens } from "./tokens";
import { type Added, reason, takeBack } from "./undo";
import { writePages } from "./write";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** What was read of the workbook before anything is written. */
interface Found {
	names: readonly string[];
	tabs: readonly string[];
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
	return written(spreadsheet, planned(job, found), found.tabs.length);
}

function foundIn(spreadsheet: Spreadsheet, job: JobInput): Found {
	const names = allNames(spreadsheet);
	return {
		names,
		tabs: spreadsheet.getSheets().map((sheet) => sheet.getName()),
		studio: readStudio(spreadsheet, names) ?? starterStudio(job.units),
	};
}

function planned(job: JobInput, { names, tabs, studio }: Found): Plan {
	const slots = jobSlots(job, knownOf(studio));
	const wanted = jobTabs.map(({ name }) => name);
	const number = nextJobNumber(names, tabs, wanted);
	const jobNames = Object.fromEntries(
		wanted.map((name) => [name, jobTabName(number, name)]),
	);
	const tokens: Tokens = {
		units: studio.units,
		job: jobPrefix(number),
		tabs: { ...studio.tabs, ...jobNames },
	};
	return {
		pages: [
			...(studio.exists ? [] : studioPages(studio, tabs)),
			...jobTabs.map((tab) =>
				pageOf({ tab, tokens, prefix: jobPrefix(number), slots }),
			),
		],
		made: { number, tabs: Object.values(jobNames) },
	};
}

/** The studio's tabs, on first use. @throws InputError where the workbook has a tab of such a name. */
function studioPages(studio: Studio, tabs: readonly string[]): Page[] {
	return studioTabs.map((tab) => {
		if (tabs.some((name) => name.toLowerCase() === tab.name.toLowerCase()))
			throw new InputError(
				`This workbook has a tab named ${tab.name} already, which the studio needs: rename yours, then try again`,
			);
		return pageOf({
			tab,
			tokens: { units: studio.units, tabs: studio.tabs },
			prefix: STUDIO_PREFIX,
			slots: starter[studio.units],
		});
	});
}

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
