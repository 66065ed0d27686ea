/** Creates a job: reads everything, plans in memory, writes last, and takes everything back if it cannot finish. */
import { workbook } from "../../../templates/index";
import { InputError } from "../../calc/errors";
import { jobSlots } from "../../job/cells/jobslots";
import { roomMistakes } from "../../job/cells/roommistakes";
import { type JobFile, unitsOf } from "../../job/jobfile";
import { checkedJob } from "../../job/jobmistakes";
import type { UnitSystem } from "../../job/reading/units";
import { spelledJob } from "../../job/spelledjob";
import type { StudioFile } from "../../job/studiofile";
import type { JobMade } from "../messages";
import { columnLetters } from "../reading/a1";
import { jobPrefix, jobTabName, nextJobNumber } from "../reading/rangenames";
import { readTrade, type StudioRead } from "../reading/readstudio";
import { insistently } from "../writing/allornothing";
import { type JobPages, jobPages, studioPages } from "../writing/jobpages";
import {
	freeJobsRow,
	type JobsTable,
	jobsTable,
	lastJob,
	lineFrom,
	linkTo,
	newJobsPlace,
} from "../writing/jobsrow";
import { type Making, noteBegun, noteDone } from "../writing/journal";
import { quoted } from "../writing/tokens";
import { type Added, asideOf, reason, takeBack } from "../writing/undo";
import { writePages } from "../writing/writepages";
import { takeTurn } from "./taketurn";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** What was read of the workbook before anything is written. */
interface Found {
	number: number;
	/** How many tabs there are. */
	tabs: number;
	studio: StudioRead | undefined;
	units: UnitSystem;
	jobs: JobsRow;
}

/** A closed job that is made anew under its number, its tabs by id with their names. */
interface ClosedBefore {
	number: number;
	aside: [id: number, name: string][];
}

/** Where the new job's row goes: its tab, its number there, and the columns of the job's number and line from 0. */
interface JobsRow {
	tab: string;
	row: number;
	columns: { job: number; line: number };
}

/** The job's number and tabs. @throws InputError for a job that cannot be, Error when the workbook would not take it. */
export function writeJob(input: unknown): JobMade {
	const spreadsheet = SpreadsheetApp.getActiveSpreadsheet();
	takeTurn(spreadsheet);
	const studio = readTrade(spreadsheet);
	if (!studio) mayHaveStudio(spreadsheet);
	const file = fileOf(studio, unitsOf(input));
	const job = spelledJob(checkedJob(file, input), file);
	return writeInto(spreadsheet, studio, job);
}

/** What the workbook's studio is, or will be. */
const fileOf = (
	studio: StudioRead | undefined,
	units: UnitSystem,
): StudioFile => studio?.file ?? workbook().starterStudios[units];

/** Writes the tabs of a job, all of them or none. @throws InputError for a job that they have no room for. */
export function writeInto(
	spreadsheet: Spreadsheet,
	studio: StudioRead | undefined,
	job: JobFile,
	closed?: ClosedBefore,
): JobMade {
	const file = fileOf(studio, job.units);
	const mistakes = roomMistakes(job, file);
	if (mistakes.length > 0) throw new InputError(mistakes.join("\n"));
	const found = placeFor(spreadsheet, studio, job.units, closed);
	const pages = jobPages({ ...found, slots: jobSlots(job, file) });
	return write(spreadsheet, pages, found, closed);
}

/** A number, where it has none yet, and a row for one more job. */
function placeFor(
	spreadsheet: Spreadsheet,
	studio: StudioRead | undefined,
	units: UnitSystem,
	closed?: ClosedBefore,
): Found {
	const table = studio && jobsTable(spreadsheet);
	return {
		number:
			closed?.number ??
			nextJobNumber(
				(free) => isTaken(spreadsheet, free),
				(table ? lastJob(table) : 0) + 1,
			),
		tabs: spreadsheet.getNumSheets(),
		studio,
		units,
		jobs: table ? rowIn(table) : firstRow(units),
	};
}

const rowIn = (table: JobsTable): JobsRow => ({
	tab: table.range.getSheet().getName(),
	row: freeJobsRow(table),
	columns: table.place,
});

function firstRow(units: UnitSystem): JobsRow {
	const { tab, row, ...columns } = newJobsPlace(units);
	return { tab, row: row + 1, columns };
}

/** Whether a job has this number, whatever its tabs are called now, or its first tab's name is somebody else's. */
function isTaken(spreadsheet: Spreadsheet, job: number): boolean {
	const [first] = workbook().jobTabs;
	if (!first) throw new Error("A job has no tabs");
	const [name = ""] = Object.keys(first.names ?? {});
	return (
		spreadsheet.getRangeByName(jobPrefix(job) + name) !== null ||
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

/** Writes the pages and the job's row, or nothing. */
function write(
	spreadsheet: Spreadsheet,
	{ pages: own, made, line, lists }: JobPages,
	{ tabs, studio, units, jobs }: Found,
	closed?: ClosedBefore,
): JobMade {
	const sets = [studio ? [] : studioPages(units), own];
	const pages = sets.flat();
	const open = spreadsheet.getActiveSheet();
	const added: Added = { spreadsheet, open, tabs: [], names: [], cells: [] };
	const cellOf = (column: number) => `${columnLetters(column)}${jobs.row}`;
	const begun: Making = {
		act: "making",
		job: made.number,
		tabs: pages.map(({ name }) => name),
		names: pages.flatMap(({ names }) => Object.keys(names)),
		first: made.tabs[0] ?? "",
		row: [jobs.tab, cellOf(jobs.columns.job)],
		...(closed && { aside: closed.aside }),
	};
	try {
		noteBegun(begun);
		added.aside = asideOf(spreadsheet, begun);
		for (const { name, sheet } of added.aside) sheet.setName(`${name}, closed`);
		writePages(sets, added, tabs, lists);
		const first = added.tabs.find(({ name }) => name === begun.first)?.sheet;
		if (!first) throw new Error("A tab was not made");
		const { job: number, line: beside } = jobs.columns;
		const row = spreadsheet.getRange(
			`${quoted(jobs.tab)}!${cellOf(number)}:${cellOf(beside)}`,
		);
		added.cells.push(row);
		row.setFormulas([
			[
				linkTo(first, made.number),
				...Array<string>(beside - number - 1).fill(""),
				lineFrom(line, beside),
			],
		]);
		spreadsheet.setActiveSheet(first);
		SpreadsheetApp.flush();
		// A closed job's tabs go next, and a run that ends before they are gone is finished by the next.
		if (!closed) insistently(() => noteDone(begun));
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
