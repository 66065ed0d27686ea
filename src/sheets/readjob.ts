/** A job as its tabs have it now, whatever they are called: found by its names, read by the places of its template. */
import { workbook } from "../../templates/index";
import { InputError } from "../calc/errors";
import type { Slots, Tab } from "../template/plan";
import { type Area, a1Of } from "./a1";
import { cellsOf } from "./cells";
import { movedIn, movedText } from "./layout";
import { firstName, jobPrefix, jobTabName, namedArea } from "./names";
import { blockArea, type Page, pageOf } from "./page";
import { readStudio } from "./readstudio";
import { isLoading, notReady } from "./ready";
import { type Cell, NO_STUDIO, type Studio } from "./studio";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

/** One tab of a job. */
export interface JobTab {
	tab: Tab;
	sheet: Sheet;
	page: Page;
	values: Cell[][];
}

export interface JobRead {
	number: number;
	studio: Studio;
	tabs: JobTab[];
	/** Values of the block with this slot or name, e.g. `Tones.dosed`. @throws InputError while one is not calculated. */
	cells(at: string): Cell[][];
	/** Its first value. */
	cell(at: string): Cell;
	range(at: string): Range;
	areaOf(at: string): Area;
}

const NOTHING: Slots = {};

/**
 * The job's tabs, or those of them that are asked for.
 *
 * @throws InputError when a tab or a name is gone, or cells are not where the template has them.
 */
export function readJob(
	spreadsheet: Spreadsheet,
	job: number,
	only?: readonly string[],
): JobRead {
	const studio = readStudio(spreadsheet);
	if (!studio) throw new InputError(NO_STUDIO);
	const sheets = sheetsOf(spreadsheet, job);
	const names = {
		...studio.tabs,
		...Object.fromEntries(
			sheets.map(({ tab, name }) => [tab.name, name ?? tab.name]),
		),
	};
	const pageFor = (tab: Tab): Page =>
		pageOf({
			tab,
			tokens: {
				units: studio.units,
				job: jobPrefix(job),
				tabs: names,
				cells: { ...studio.cells, ...cellsOf(workbook().jobTabs, names) },
			},
			prefix: jobPrefix(job),
			slots: NOTHING,
		});
	const tabs = sheets
		.filter(({ tab }) => !only || only.includes(tab.name))
		.map(({ tab, sheet }) => tabRead(spreadsheet, pageFor(tab), sheet));
	return reading(job, studio, tabs);
}

function reading(number: number, studio: Studio, tabs: JobTab[]): JobRead {
	const find = (at: string): { tab: JobTab; area: Area } => {
		const [name = "", key = ""] = at.split(".");
		const tab = tabs.find((one) => one.tab.name === name);
		const block = tab?.tab.blocks.find(
			(one) => one.slot === key || one.name === key,
		);
		if (!tab || !block) throw new Error(`There is no block ${at}`);
		return { tab, area: blockArea(block) };
	};
	const cells = (at: string): Cell[][] => {
		const { tab, area } = find(at);
		const found = Array.from({ length: area.rows }, (_, row) =>
			Array.from(
				{ length: area.columns },
				(_, column) => tab.values[area.row + row]?.[area.column + column] ?? "",
			),
		);
		if (found.flat().some(isLoading))
			throw new InputError(notReady(tab.page.name));
		return found;
	};
	return {
		number,
		studio,
		tabs,
		cells,
		cell: (at) => cells(at)[0]?.[0] ?? "",
		areaOf: (at) => find(at).area,
		range(at) {
			const { tab, area } = find(at);
			return tab.sheet.getRange(a1Of(area));
		},
	};
}

/** Each template's tab by its first name; no sheet where another job's number was asked for a part only. */
function sheetsOf(spreadsheet: Spreadsheet, job: number) {
	const found = workbook().jobTabs.map((tab) => {
		const name = jobPrefix(job) + firstName(tab);
		return { tab, named: name, range: spreadsheet.getRangeByName(name) };
	});
	if (found.every(({ range }) => range === null))
		throw new InputError(`There is no open job ${job} in this workbook`);
	return found.map(({ tab, named, range }) => {
		if (!range) throw new InputError(gone(job, tab, named));
		const sheet = range.getSheet();
		return { tab, sheet, name: sheet.getName() };
	});
}

const gone = (job: number, tab: Tab, name: string): string =>
	`The name ${name} is gone, and the tab ${jobTabName(job, tab.name)} perhaps too: bring it back with File, Version history`;

/** The tab's values, once its names and texts are where they were made. */
function tabRead(spreadsheet: Spreadsheet, page: Page, sheet: Sheet): JobTab {
	const { tab } = page;
	for (const [name, a1] of Object.entries(page.names)) {
		const now = spreadsheet.getRangeByName(name)?.getA1Notation();
		if (now === undefined)
			throw new InputError(
				`The name ${name} is gone: it belongs to ${a1} on the ${page.name} tab. Bring it back with Data, Named ranges`,
			);
		if (now !== a1Of(namedArea(tab, name.replace(/^job\d+_/, ""))))
			throw new InputError(movedText(page.name, `${a1} is at ${now} now`));
	}
	const values = sheet.getDataRange().getValues() as Cell[][];
	const moved = movedIn(page, values);
	if (moved) throw new InputError(moved);
	return { tab, sheet, page, values };
}
