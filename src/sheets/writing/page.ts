/** A tab of a template worked out to the cell: what each holds, how it looks, what is named. */
import type {
	Block,
	Format,
	Look,
	Slots,
	Tab,
	Value,
} from "../../../templates/plan";
import { type Area, a1Of, areaOf } from "../reading/a1";
import { contentOf, keptAsText } from "./content";
import { GENERAL, isNumber, numberFormat, PLAIN_TEXT } from "./formats";
import { filled, type Tokens } from "./tokens";
import { RISKY } from "./typedcell";

/** One cell: its content as `setValues` takes it, and its form. */
export interface PageCell {
	value: Value;
	look: Look;
	format: string;
	align: "left" | "center" | "right" | "normal";
	wrap: boolean;
	/** Whether it holds a number, which stands at the right. */
	number: boolean;
	/** What is shown beside it. */
	note: string;
}

export interface Page {
	tab: Tab;
	/** Its name in the workbook. */
	name: string;
	tokens: Tokens;
	cells: PageCell[][];
	/** Named ranges, whole names to A1. */
	names: Record<string, string>;
	/** A1 of all its cells. */
	whole: string;
	/** A1 of what people type in. */
	inputs: string[];
}

export interface PageSetup {
	tab: Tab;
	tokens: Tokens;
	/** Before every name: `job14_` or `studio_`. */
	prefix: string;
	slots: Slots;
}

export const blankCell = (): PageCell => ({
	value: "",
	look: "label",
	format: GENERAL,
	align: "normal",
	wrap: false,
	number: false,
	note: "",
});

const sizeOf = ({ rows = [] }: Block): readonly [number, number] => [
	rows.length,
	Math.max(1, ...rows.map((row) => row.length)),
];

export function blockArea(block: Block): Area {
	const [rows, columns] = block.size ?? sizeOf(block);
	return { ...areaOf(block.at), rows, columns };
}

const formatOf = (block: Block, column: number): Format | undefined =>
	typeof block.formats === "string" ? block.formats : block.formats?.[column];

/** What each cell of the block is, over what an earlier block said of it. */
function putBlock(page: Page, block: Block, slots: Slots): void {
	const area = blockArea(block);
	const values = contentOf(block, slots, page.tokens);
	if (values.length > area.rows)
		throw new Error(
			`${block.slot ?? block.name} has ${area.rows} rows, not ${values.length}`,
		);
	for (let row = 0; row < area.rows; row++)
		for (let column = 0; column < area.columns; column++) {
			const cell = page.cells[area.row + row]?.[area.column + column];
			if (!cell) throw new Error(`${page.name}: ${block.at} leaves the grid`);
			const format = formatOf(block, column);
			cell.value = values[row]?.[column] ?? cell.value;
			cell.look = block.look;
			cell.align = block.align ?? cell.align;
			cell.wrap = block.wrap ?? cell.wrap;
			if (!format) continue;
			cell.format = numberFormat(format, block.look, page.tokens.units);
			cell.number = isNumber(format, block.look);
		}
}

/**
 * What a plain text cell takes: a text without the mark in front, which it would keep. A text that Sheets would read as a
 * formula even there keeps the mark, in a cell without a format.
 */
function settleText(cell: PageCell): void {
	if (cell.format !== PLAIN_TEXT) return;
	const text = String(cell.value).replace(/^'/, "");
	if (RISKY.test(text)) cell.format = GENERAL;
	cell.value = RISKY.test(text) ? keptAsText(text) : text;
}

const HOLDS_VALUES: readonly Look[] = ["input", "result", "total"];

/** Puts each heading to the side at which what is under it stands. */
function alignHeadings({ cells, tab }: Page): void {
	tab.widths.forEach((_, column) => {
		let right = false;
		for (const line of [...cells].reverse()) {
			const cell = line[column];
			if (!cell) continue;
			if (HOLDS_VALUES.includes(cell.look))
				right = cell.align === "normal" ? cell.number : cell.align === "right";
			if (cell.look === "heading" && cell.align === "normal" && right)
				cell.align = "right";
		}
	});
}

function namesOf({ tab, prefix }: PageSetup): Record<string, string> {
	const own = tab.blocks.flatMap((block): [string, string][] =>
		block.name === undefined ? [] : [[block.name, a1Of(blockArea(block))]],
	);
	return Object.fromEntries(
		[...own, ...Object.entries(tab.names ?? {})].map(([name, a1]) => [
			prefix + name,
			a1,
		]),
	);
}

const inputsOf = ({ blocks }: Tab): string[] => [
	...new Set(
		blocks
			.filter(({ look }) => look === "input")
			.map((block) => a1Of(blockArea(block))),
	),
];

function putNote({ cells, tokens }: Page, at: string, note: string): void {
	const { row, column } = areaOf(at);
	const cell = cells[row]?.[column];
	if (cell) cell.note = filled(note, tokens);
}

/** The page for a tab; later blocks lie over earlier ones. */
export function pageOf(setup: PageSetup): Page {
	const { tab, tokens, slots } = setup;
	const page: Page = {
		tab,
		name: tokens.tabs[tab.name] ?? tab.name,
		tokens,
		cells: Array.from({ length: tab.rows }, () =>
			tab.widths.map(() => blankCell()),
		),
		names: namesOf(setup),
		whole: a1Of({
			row: 0,
			column: 0,
			rows: tab.rows,
			columns: tab.widths.length,
		}),
		inputs: inputsOf(tab),
	};
	for (const block of tab.blocks) putBlock(page, block, slots);
	for (const { at, note } of tab.blocks) if (note) putNote(page, at, note);
	for (const cell of page.cells.flat()) settleText(cell);
	alignHeadings(page);
	return page;
}
