/** Writes pages into the workbook in few calls. */
import { addedTabs } from "./addtabs";
import { setChoices } from "./dropdowns";
import { setForms } from "./forms";
import { isFormula, writeFormulas } from "./formulas";
import { setRules } from "./marks";
import type { Page } from "./page";
import type { Grid } from "./tabranges";
import type { Added } from "./undo";

type Range = GoogleAppsScript.Spreadsheet.Range;

/**
 * Adds a tab for each page and writes it; `added` has at every moment what there is to undo.
 *
 * Tabs and names come first, since formulas want both. Values come before formats: a cell that is plain text already
 * would keep the mark in front of a text as a part of it. Formulas come last: services wait while cells calculate.
 */
export function writePages(
	pages: readonly Page[],
	added: Added,
	tabsBefore: number,
	lists: Readonly<Record<string, Range>> = {},
): void {
	const grids = addedTabs(pages, added, tabsBefore);
	for (const grid of grids) setNames(grid, added);
	for (const grid of grids) setValues(grid);
	for (const grid of grids) setForms(grid);
	setChoices(grids, cellsIn(added, lists));
	for (const grid of grids) finish(grid);
	for (const { page, at } of grids) writeFormulas(page, at);
}

function setNames({ page, at }: Grid, { spreadsheet, names }: Added): void {
	for (const [name, a1] of Object.entries(page.names)) {
		names.push(name);
		spreadsheet.setNamedRange(name, at(a1));
	}
}

const setValues = ({ page, cells }: Grid): unknown =>
	cells.setValues(
		page.cells.map((row) =>
			row.map(({ value }) => (isFormula(value) ? "" : value)),
		),
	);

/** The cells that formulas write so, in tabs new or old. */
const cellsIn =
	({ spreadsheet }: Added, lists: Readonly<Record<string, Range>>) =>
	(reference: string): Range =>
		lists[reference] ?? spreadsheet.getRange(reference.replace(/\$/g, ""));

/** Sets notes, rules and the protection of a tab. */
function finish(grid: Grid): void {
	const { page, sheet, cells, at } = grid;
	const { rules = [] } = page.tab;
	if (page.cells.some((row) => row.some(({ note }) => note !== "")))
		cells.setNotes(page.cells.map((row) => row.map(({ note }) => note)));
	if (rules.length > 0) setRules(page, sheet, at);
	protect(grid);
}

/** Asks before anything but an input is changed; where all is input there is nothing to ask. */
function protect({ page, sheet, at }: Grid): void {
	const results = page.tab.blocks.some(
		({ look }) => look === "result" || look === "total",
	);
	if (!results) return;
	sheet
		.protect()
		.setWarningOnly(true)
		.setUnprotectedRanges(page.inputs.map(at));
}
