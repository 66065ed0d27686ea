/** What a call has added to the workbook, so that it can be taken away again when the call cannot finish. */

import type { Making } from "./journal";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

export interface Added {
	spreadsheet: Spreadsheet;
	/** The tab that was open before. */
	open?: Sheet;
	tabs: { name: string; sheet: Sheet }[];
	/** Each is noted before it is set. */
	names: string[];
	/** Cells of an older tab that were blank. */
	cells: GoogleAppsScript.Spreadsheet.Range[];
	/** Older tabs, and the names that they gave up. */
	aside?: { name: string; sheet: Sheet }[];
}

/** The message of whatever was thrown. */
export const reason = (error: unknown): string =>
	error instanceof Error ? error.message : String(error);

/** Takes the added names and tabs away, each whatever becomes of the others; what is left, in words. */
export function takeBack({
	spreadsheet,
	open,
	tabs,
	names,
	cells,
	aside = [],
}: Added): string[] {
	return [
		...cells.flatMap((range) =>
			left("a row of the Jobs tab", () => range.clearContent()),
		),
		...names.flatMap((name) =>
			left(`the name ${name}`, () => removeName(spreadsheet, name)),
		),
		...tabs.flatMap(({ name, sheet }) =>
			left(`the tab ${name}`, () => spreadsheet.deleteSheet(sheet)),
		),
		...aside.flatMap(({ name, sheet }) =>
			left(`another name for the tab ${name}`, () => sheet.setName(name)),
		),
		...left("another tab is open", () =>
			open ? spreadsheet.setActiveSheet(open) : undefined,
		),
	];
}

/**
 * Takes away what a killed run has made of a job, unless it had made all of it; what is left, in words.
 *
 * A tab is its own where one of the job's names leads to it, or where it is blank and called like one: nobody has typed
 * anything there.
 */
export function takeBackMaking(
	spreadsheet: Spreadsheet,
	made: Making,
): string[] {
	if (isWhole(spreadsheet, made)) return [];
	const named = made.names.flatMap((name) => {
		const sheet = spreadsheet.getRangeByName(name)?.getSheet().getName();
		return sheet !== undefined && made.tabs.includes(sheet)
			? [{ name, sheet }]
			: [];
	});
	const tabs = made.tabs.flatMap((name) => {
		const sheet = spreadsheet.getSheetByName(name);
		const isOwn =
			named.some((one) => one.sheet === name) || sheet?.getLastRow() === 0;
		return sheet && isOwn ? [{ name, sheet }] : [];
	});
	const names = named.map(({ name }) => name);
	const aside = asideOf(spreadsheet, made);
	return takeBack({ spreadsheet, tabs, names, cells: [], aside });
}

/** The closed tabs of a job that is made anew, as far as they are there. */
export const asideOf = (
	spreadsheet: Spreadsheet,
	{ aside = [] }: Making,
): { name: string; sheet: Sheet }[] =>
	spreadsheet.getSheets().flatMap((sheet) => {
		const [, name] = aside.find(([id]) => id === sheet.getSheetId()) ?? [];
		return name === undefined ? [] : [{ name, sheet }];
	});

/** The job's row is written last, and leads to its first tab. */
export function isWhole(
	spreadsheet: Spreadsheet,
	{ row, first }: Making,
): boolean {
	const [tab = "", cell = ""] = row;
	const formula = spreadsheet.getSheetByName(tab)?.getRange(cell).getFormula();
	const id = spreadsheet.getSheetByName(first)?.getSheetId();
	return id !== undefined && Boolean(formula?.includes(`#gid=${id}"`));
}

function removeName(spreadsheet: Spreadsheet, name: string): void {
	if (spreadsheet.getRangeByName(name)) spreadsheet.removeNamedRange(name);
}

function left(what: string, step: () => unknown): string[] {
	try {
		step();
		return [];
	} catch (error) {
		return [`${what} (${reason(error)})`];
	}
}
