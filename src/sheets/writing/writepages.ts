/** Writes pages into the workbook in few calls. */
import { addedTabs } from "./addtabs";
import { setChoices } from "./dropdowns";
import { setRules } from "./marks";
import type { Page } from "./page";
import type { Grid } from "./tabranges";
import type { Added } from "./undo";

type Range = GoogleAppsScript.Spreadsheet.Range;

/**
 * Adds a tab for each page of each set and writes it; `added` has at every moment what there is to undo.
 *
 * Tabs and names come first, since formulas want both. Cells come last: services wait while formulas calculate.
 */
export function writePages(
	sets: readonly (readonly Page[])[],
	added: Added,
	tabsBefore: number,
	lists: Readonly<Record<string, Range>> = {},
): void {
	const grids = sets.flatMap((pages) =>
		addedTabs(pages, added, tabsBefore + added.tabs.length),
	);
	for (const grid of grids) setNames(grid, added);
	setChoices(grids, cellsIn(added, lists));
	for (const grid of grids) finish(grid);
	for (const { page, cells } of grids)
		cells.setValues(page.cells.map((row) => row.map(({ value }) => value)));
}

function setNames({ page, at }: Grid, { spreadsheet, names }: Added): void {
	for (const [name, a1] of Object.entries(page.names)) {
		names.push(name);
		spreadsheet.setNamedRange(name, at(a1));
	}
}

/** The cells that formulas write so, in tabs new or old. */
const cellsIn =
	({ spreadsheet }: Added, lists: Readonly<Record<string, Range>>) =>
	(reference: string): Range =>
		lists[reference] ?? spreadsheet.getRange(reference.replace(/\$/g, ""));

/** Sets notes and rules of a tab, and asks before anything but an input is changed; where all is input there is nothing to ask. */
function finish({ page, sheet, cells, at }: Grid): void {
	const notes = page.cells.map((row) => row.map(({ note }) => note));
	if (notes.flat().some(Boolean)) cells.setNotes(notes);
	if (page.tab.rules) setRules(page, sheet, at);
	const results = page.tab.blocks.some(
		({ look }) => look === "result" || look === "total",
	);
	if (!results) return;
	sheet
		.protect()
		.setWarningOnly(true)
		.setUnprotectedRanges(page.inputs.map(at));
}
