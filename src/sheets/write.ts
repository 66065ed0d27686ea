/** Writes pages into the workbook in few calls. */
import { addedTabs } from "./addtabs";
import { setListed } from "./choices";
import { setForms } from "./forms";
import type { Grid } from "./grid";
import type { Page } from "./page";
import { setRules } from "./rules";
import type { Added } from "./undo";

/**
 * Adds a tab for each page and writes it; `added` says at every moment what there is to undo.
 *
 * Tabs and names come first, since formulas want both. Formats come after the values: a cell that is plain text
 * already would keep the mark in front of a text as a part of it.
 */
export function writePages(
	pages: readonly Page[],
	added: Added,
	tabsBefore: number,
): void {
	const { grids, fresh } = addedTabs(pages, added, tabsBefore);
	for (const grid of grids) setNames(grid, added);
	for (const { page, cells } of grids)
		cells.setValues(page.cells.map((row) => row.map(({ value }) => value)));
	setForms(grids, added, { fresh, index: tabsBefore + pages.length });
	for (const grid of grids) finish(grid, cellsIn(added));
}

function setNames({ page, at }: Grid, { spreadsheet, names }: Added): void {
	for (const [name, a1] of Object.entries(page.names)) {
		names.push(name);
		spreadsheet.setNamedRange(name, at(a1));
	}
}

/** The cells that formulas write so, in tabs new or old. */
const cellsIn =
	({ spreadsheet }: Added) =>
	(reference: string): GoogleAppsScript.Spreadsheet.Range =>
		spreadsheet.getRange(reference.replace(/\$/g, ""));

/** Everything of a tab but its names, values and formats. */
function finish(grid: Grid, source: ReturnType<typeof cellsIn>): void {
	const { page, sheet, at } = grid;
	const { rules = [] } = page.tab;
	for (const [cell, note] of Object.entries(page.notes)) at(cell).setNote(note);
	setListed(page, at, source);
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
