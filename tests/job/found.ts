/** Where a cell of the written workbook is: by its key, beside its label or under its heading, wherever its tab puts it. */
import type { CellValue, Desk } from "../../src/desk/contract";
import { jobTabs, studioTabs } from "../../templates";
import { area, moved } from "../../templates/blocks";
import type { Block } from "../../templates/plan";

export type Place = [tab: string, cell: string];

function blockOf(address: string): Block {
	const [name, slot] = address.split(".");
	const block = [...studioTabs, ...jobTabs]
		.find((tab) => tab.name === name)
		?.blocks.find((one) => one.slot === slot || one.name === slot);
	if (!block) throw new Error(`There is no ${address}`);
	return block;
}

/** A cell of a block by the block's key, so many rows down and columns to the right of its first. */
export function cellOf(address: string, down = 0, right = 0): Place {
	const [name = ""] = address.split(".");
	const [first = ""] = blockOf(address).at.split(":");
	const isJobTab = jobTabs.some((tab) => tab.name === name);
	return [isJobTab ? `1 ${name}` : name, moved(first, down, right)];
}

/** The cells of a block from its first on. */
export function cellsOf(
	address: string,
	rows: number,
	columns: number,
): [tab: string, range: string] {
	const [tab, first] = cellOf(address);
	return [tab, area(first, rows, columns)];
}

function gridOf(desk: Desk, tab: string): CellValue[][] {
	const sheet = desk.engine.api.getActiveWorkbook()?.getSheetByName(tab);
	if (!sheet) throw new Error(`There is no tab ${tab}`);
	const all = sheet.getRange(0, 0, sheet.getMaxRows(), sheet.getMaxColumns());
	return desk.read(tab, all.getA1Notation());
}

/** Whether a cell says these words, with or without a unit behind them. */
const says = (value: CellValue | undefined, words: string): boolean =>
	value === words || String(value).startsWith(`${words}, `);

/** The first cell that says these words, read from the top; below the row that says `from`, where one is named. */
function sought(
	grid: readonly CellValue[][],
	words: string,
	from: string | undefined,
): { row: number; column: number } {
	const first = from === undefined ? 0 : sought(grid, from, undefined).row;
	const row = grid.findIndex(
		(line, at) => at >= first && line.some((value) => says(value, words)),
	);
	if (row < 0)
		throw new Error(`No cell says "${words}"${from ? ` below "${from}"` : ""}`);
	return {
		row,
		column: (grid[row] ?? []).findIndex((value) => says(value, words)),
	};
}

/** The cell beside a label: the first to its right that shows something. */
export function beside(
	desk: Desk,
	tab: string,
	label: string,
	from?: string,
): Place {
	const grid = gridOf(desk, tab);
	const { row, column } = sought(grid, label, from);
	const right = (grid[row] ?? [])
		.slice(column + 1)
		.findIndex((value) => value !== "");
	return [tab, moved("A1", row, column + 1 + Math.max(0, right))];
}

/** The cell under a heading: so many rows down (0 is the first), or in the first row below that says these words. */
export function under(
	desk: Desk,
	tab: string,
	heading: string,
	line: number | string,
	from?: string,
): Place {
	const grid = gridOf(desk, tab);
	const { row, column } = sought(grid, heading, from);
	const down =
		typeof line === "number"
			? line
			: grid
					.slice(row + 1)
					.findIndex((cells) => cells.some((value) => says(value, line)));
	if (down < 0) throw new Error(`No row below "${heading}" says "${line}"`);
	return [tab, moved("A1", row + 1 + down, column)];
}

export const valueAt = (desk: Desk, tab: string, cell: string) =>
	desk.read(tab, cell)[0]?.[0];

export const numberAt = (desk: Desk, tab: string, cell: string) =>
	Number(valueAt(desk, tab, cell));

/** Clears cells from the first of a block on. */
export async function cleared(
	desk: Desk,
	address: string,
	rows: number,
	columns: number,
): Promise<void> {
	for (let row = 0; row < rows; row++)
		for (let column = 0; column < columns; column++)
			desk.type(...cellOf(address, row, column), "");
	await desk.settle();
}

/** Puts into a cell what its rule would refuse to a hand: what is pasted goes past it. */
function paste(desk: Desk, tab: string, cell: string, text: string): void {
	const [, share] = /^(-?[\d.]+)%$/.exec(text) ?? [];
	const number = share === undefined ? Number(text) : Number(share) / 100;
	desk.engine.api
		.getActiveWorkbook()
		?.getSheetByName(tab)
		?.getRange(cell)
		.setValue(Number.isNaN(number) ? text : number);
}

/** Types texts into cells, or pastes what they refuse, then lets the workbook calculate. */
export async function typed(
	desk: Desk,
	...entries: readonly (readonly [tab: string, cell: string, text: string])[]
): Promise<void> {
	for (const entry of entries)
		try {
			desk.type(...entry);
		} catch (error) {
			if (!String(error).includes("data validation rules")) throw error;
			paste(desk, ...entry);
		}
	await desk.settle();
}

/** As many as the tab has room for. */
const CHECKS = blockOf("Job.checks").size?.[0] ?? 0;

/** What each check of the job says, by its words. */
export function checksOf(desk: Desk): Map<string, string> {
	const [tab, cell] = under(desk, "1 Job", "What is checked", 0);
	const range = area(cell, CHECKS, 2);
	return new Map(
		desk.read(tab, range).map(([what, says]) => [String(what), String(says)]),
	);
}
