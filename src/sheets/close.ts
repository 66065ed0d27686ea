/** Closes a finished job: its tabs stay as values, out of sight, and cost an edit nothing any more. */
import { InputError } from "../calc/errors";
import { keptAsText } from "./content";
import { GENERAL } from "./formats";
import { jobsRange, jobsRowOf, linkTo } from "./jobsrow";
import { waitForTurn } from "./lock";
import { CLOSED, jobPrefix } from "./names";
import { type JobRead, type JobTab, readJob } from "./readjob";
import { type Step, throughout, wholly } from "./steps";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** What a cell shows before its function has answered, or before the functions work in this file. */
const UNREADY = ["Loading...", "#NAME?"];

/** A live tab and its copy, which will take its place. */
interface Pair {
	live: JobTab;
	copy: Sheet | undefined;
}

/**
 * Names of the closed tabs.
 *
 * Copies of the tabs are made first, and everything up to there can be taken back. Once the first live tab is gone
 * there is only forward: what fails then is done again, or left to the person.
 */
export function closedJob(spreadsheet: Spreadsheet, job: number): string[] {
	waitForTurn();
	const read = readJob(spreadsheet, job);
	const loading = read.tabs.find(({ values }) =>
		values.some((row) => UNREADY.some((text) => row.includes(text))),
	);
	if (loading)
		throw new InputError(
			`The ${loading.page.name} tab has cells that are not calculated yet: wait a moment, then try again`,
		);
	const pairs: Pair[] = read.tabs.map((live) => ({ live, copy: undefined }));
	wholly(`Job ${job} was not closed`, [
		...pairs.map((pair) => copyStep(spreadsheet, pair)),
		rowStep(read, pairs),
		...namesSteps(spreadsheet, read),
	]);
	throughout(
		`Job ${job} is closed, but not put in order. Delete those of its tabs that still calculate, and take ", closing" off the names of the others`,
		replaced(spreadsheet, job, pairs),
	);
	return read.tabs.map(({ page }) => page.name);
}

/**
 * Makes the copy of a tab, with what the live one shows as values.
 *
 * They are written from what was read: cells that were just copied may not have been calculated yet.
 */
function copyStep(spreadsheet: Spreadsheet, pair: Pair): Step {
	const { sheet, page, values } = pair.live;
	const size = [values.length, values[0]?.length ?? 1] as const;
	const formats = sheet.getRange(1, 1, ...size).getNumberFormats();
	const index = sheet.getIndex();
	return {
		act() {
			const copy = spreadsheet.insertSheet(`${page.name}, closing`, index, {
				template: sheet,
			});
			pair.copy = copy;
			copy
				.getRange(1, 1, ...size)
				.setNumberFormat(GENERAL)
				.setValues(values.map((row) => row.map(keptAsText)))
				.setNumberFormats(formats);
		},
		undo() {
			if (pair.copy) spreadsheet.deleteSheet(pair.copy);
			pair.copy = undefined;
		},
	};
}

/** The job's row on the Jobs tab as values; its number leads to the copy. */
function rowStep({ studio, number }: JobRead, pairs: readonly Pair[]): Step {
	const row = jobsRowOf(studio, number);
	const sheet = studio.table("Jobs")?.getSheet();
	if (row === undefined || !sheet)
		return { act: () => undefined, undo: () => undefined };
	const range = jobsRange(sheet, row);
	const formulas = range.getFormulas();
	const values = range.getValues();
	return {
		act() {
			const [first] = pairs;
			if (first?.copy)
				range.setValues(
					values.map(([, ...rest]) => [
						linkTo(first.copy as Sheet, number),
						...rest.map(keptAsText),
					]),
				);
		},
		undo() {
			range.setFormulas(formulas);
		},
	};
}

/** Takes each of the job's names away. */
const namesSteps = (spreadsheet: Spreadsheet, { tabs }: JobRead): Step[] =>
	tabs.flatMap(({ page, sheet }) =>
		Object.entries(page.names).map(([name, a1]) => ({
			act: () => spreadsheet.removeNamedRange(name),
			undo: () => spreadsheet.setNamedRange(name, sheet.getRange(a1)),
		})),
	);

/** The copies in the place of the live tabs, named and out of sight. */
function replaced(
	spreadsheet: Spreadsheet,
	job: number,
	pairs: readonly Pair[],
): (() => unknown)[] {
	const [first] = pairs;
	return [
		() => {
			if (first?.copy)
				spreadsheet.setNamedRange(
					jobPrefix(job) + CLOSED,
					first.copy.getRange("A1"),
				);
		},
		...pairs.map(({ live, copy }) => () => {
			if (copy && isThere(spreadsheet, live.page.name))
				spreadsheet.deleteSheet(live.sheet);
		}),
		...pairs.flatMap(({ live, copy }) => [
			() => copy?.setName(live.page.name),
			() => copy?.hideSheet(),
		]),
		() => SpreadsheetApp.flush(),
	];
}

const isThere = (spreadsheet: Spreadsheet, name: string): boolean =>
	spreadsheet.getSheetByName(name) !== null;
