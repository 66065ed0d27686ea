/** A repeat order: the same job once more, without what belongs to its one pour. */
import { InputError } from "../calc/errors";
import type { Value } from "../template/plan";
import { keptAsText } from "./content";
import { placeFor, planned, written } from "./create";
import { serialOf } from "./days";
import { isFormula } from "./formulas";
import type { JobMade } from "./messages";
import { blockArea, type Page } from "./page";
import { type JobTab, readJob } from "./readjob";
import { isLoading, notReady } from "./ready";
import type { Cell } from "./studio";
import { takeTurn } from "./turn";

/** The new job's number and tabs. */
export function copiedJob(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	job: number,
): JobMade {
	takeTurn(spreadsheet);
	const { studio, tabs } = readJob(spreadsheet, job);
	const found = placeFor(spreadsheet, studio);
	const plan = planned(found, {}, (page) => {
		const from = tabs.find(({ tab }) => tab.name === page.tab.name);
		return from ? withTyped(page, from) : page;
	});
	return written(spreadsheet, plan, found);
}

/** The page with what was typed into the other job's tab, but for what was typed for one pour. */
function withTyped(page: Page, from: JobTab): Page {
	const repeated = repeatedCells(page);
	return {
		...page,
		cells: page.cells.map((line, row) =>
			line.map((cell, column) =>
				// the template's own formula in an input stays: what it shows belongs to the other job
				repeated[row]?.[column] && !isFormula(cell.value)
					? { ...cell, value: kept(from.values[row]?.[column], from.page.name) }
					: cell,
			),
		),
	};
}

/** True for each cell of inputs that a repeat order takes over; a block over another decides. */
function repeatedCells({ cells, tab }: Page): boolean[][] {
	const repeated = cells.map((line) => line.map(() => false));
	for (const block of tab.blocks) {
		const area = blockArea(block);
		for (let row = area.row; row < area.row + area.rows; row++)
			for (let across = 0; across < area.columns; across++) {
				const line = repeated[row];
				if (line)
					line[area.column + across] = block.look === "input" && !block.once;
			}
	}
	return repeated;
}

/** As `setValues` takes it; days as the number that a cell counts them by. */
function kept(cell: Cell = "", tab: string): Value {
	if (isLoading(cell)) throw new InputError(notReady(tab));
	return keptAsText(typeof cell === "object" ? serialOf(cell) : cell);
}
