/** `Range.copyTo`: what goes along, and where to. */
import { CellValueType, type Worksheet } from "@univerjs/core";
import { LexerTreeBuilder } from "@univerjs/engine-formula";
import { SheetDataValidationModel } from "@univerjs/sheets-data-validation";
import type { Block } from "../a1";
import { type Cell, inBlock, mapBlock } from "../book";
import { partOf } from "../engine-private";
import { rawAt, styleAt } from "../values";
import { NO_CONTENT } from "../writing";
import { type Call, signature } from "./call";
import { changeCells } from "./change";
import { putChoices } from "./choice";
import { clearCells } from "./fill";
import { height, width } from "./fitting";
import { noteAt, writeNote } from "./notes";
import { pasteRules } from "./pasted-rules";
import { type Place, placeBySize, sheetAt } from "./place";
import { checkReadable } from "./range-reading";

/** Names of what can be pasted, as `SpreadsheetApp.CopyPasteType` has them; the desk knows these. */
export const COPY_PASTE_TYPES = Object.fromEntries(
	[
		"PASTE_NORMAL",
		"PASTE_FORMAT",
		"PASTE_FORMULA",
		"PASTE_DATA_VALIDATION",
		"PASTE_VALUES",
	].map((name) => [name, name]),
);

interface Parts {
	content: "formulas" | "values" | undefined;
	format: boolean;
	/** Marks that come and go, and what may be typed: a paste of formats brings both, or takes both away. */
	rules: boolean;
	choices: boolean;
	notes: boolean;
}

const NOTHING: Parts = {
	content: undefined,
	format: false,
	rules: false,
	choices: false,
	notes: false,
};
const PARTS: Readonly<Record<string, Parts>> = {
	PASTE_NORMAL: {
		content: "formulas",
		format: true,
		rules: true,
		choices: true,
		notes: true,
	},
	PASTE_FORMAT: { ...NOTHING, format: true, rules: true, choices: true },
	PASTE_FORMULA: { ...NOTHING, content: "formulas" },
	PASTE_DATA_VALIDATION: { ...NOTHING, choices: true },
	PASTE_VALUES: { ...NOTHING, content: "values" },
};

/** `()`, `(type, transposed)`, `({formatOnly})` or `({contentsOnly})`, which pastes values. */
function partsOf(args: readonly unknown[]): Parts {
	const refuse = () => signature(args, "SpreadsheetApp.Range.copyTo");
	const [, how = null, transposed] = args;
	if (args.length === 1) return PARTS.PASTE_NORMAL ?? NOTHING;
	if (typeof how === "string") {
		const parts = PARTS[how];
		if (!parts || transposed !== false || args.length !== 3) throw refuse();
		return parts;
	}
	const { formatOnly, contentsOnly, ...others } = (how ?? {}) as Record<
		string,
		unknown
	>;
	if (args.length !== 2 || Object.keys(others).length > 0) throw refuse();
	if (formatOnly && !contentsOnly) return PARTS.PASTE_FORMAT ?? NOTHING;
	if (contentsOnly && !formatOnly) return { ...NOTHING, content: "values" };
	throw refuse();
}

/** The copies side by side that fill a larger destination; one, from its corner on, where it is no multiple. */
function targets(call: Call, from: Block, to: Place): Block[] {
	const sheet = sheetAt(call, to);
	const [rows, columns] = [height(from), width(from)];
	const times = (all: number, one: number) => (all % one === 0 ? all / one : 1);
	const down = times(height(to.block), rows);
	const across = times(width(to.block), columns);
	return Array.from({ length: down * across }, (_, index) =>
		placeBySize(sheet, [
			to.block.startRow + 1 + rows * Math.floor(index / across),
			to.block.startColumn + 1 + columns * (index % across),
			rows,
			columns,
		]),
	).map(({ block }) => block);
}

/** The cell as a value: what a formula or a spill shows stays, the formula goes. */
function valueCell(call: Call, sheet: Worksheet, row: number, column: number) {
	const value = rawAt(call.host.book, sheet, row, column);
	if (value === "") return NO_CONTENT;
	if (typeof value === "boolean")
		return { ...NO_CONTENT, v: Number(value), t: CellValueType.BOOLEAN };
	const t =
		typeof value === "number" ? CellValueType.NUMBER : CellValueType.STRING;
	return { ...NO_CONTENT, v: value, t };
}

/** The cell with its own formula, its relative references moved along. */
function formulaCell(
	call: Call,
	own: Cell,
	[down, right]: readonly [number, number],
): Cell {
	const content = { ...NO_CONTENT, v: own?.v ?? null, t: own?.t ?? null };
	if (!own?.f) return content;
	const lexer = partOf(call.host.book.engine, LexerTreeBuilder);
	return { ...NO_CONTENT, f: lexer.moveFormulaRefOffset(own.f, right, down) };
}

/** What goes into each cell of a copy. */
function copiedCells(
	call: Call,
	from: Place,
	to: Block,
	parts: Parts,
): Cell[][] {
	const sheet = sheetAt(call, from);
	const moved = [
		to.startRow - from.block.startRow,
		to.startColumn - from.block.startColumn,
	] as const;
	return mapBlock(from.block, (row, column) => ({
		...(parts.content === "values" ? valueCell(call, sheet, row, column) : {}),
		...(parts.content === "formulas"
			? formulaCell(call, sheet.getCellRaw(row, column), moved)
			: {}),
		...(parts.format ? { s: styleAt(call.host.book, sheet, row, column) } : {}),
	}));
}

function pasteChoices(call: Call, from: Place, to: Block, on: Worksheet): void {
	const { engine, workbook } = call.host.book;
	const model = partOf(engine, SheetDataValidationModel);
	const rules = mapBlock(from.block, (row, column) =>
		model.getRuleByLocation(workbook.getId(), from.sheetId, row, column),
	);
	const ruleAt = inBlock(to, rules);
	putChoices(call, on, to, (row, column) => ruleAt(row, column) ?? undefined);
}

function pasteNotes(call: Call, from: Place, to: Block, on: Worksheet): void {
	const sheet = sheetAt(call, from);
	const notes = mapBlock(from.block, (row, column) =>
		noteAt(call, sheet, row, column),
	);
	const copied = inBlock(to, notes);
	mapBlock(to, (row, column) =>
		writeNote(call, on, row, column, copied(row, column) ?? ""),
	);
}

/** Copies cells; a relative reference goes along with its formula. */
export function copyCells(
	call: Call,
	from: Place,
	args: readonly unknown[],
): void {
	const parts = partsOf(args);
	const to = call.inner<Place>(args[0], "Range");
	const on = sheetAt(call, to);
	if (parts.content === "values")
		checkReadable(call, sheetAt(call, from), from.block);
	// all is read before anything is written: both may be the same cells
	const copies = targets(call, from.block, to).map((block) => ({
		block,
		cells: copiedCells(call, from, block, parts),
	}));
	for (const { block, cells } of copies) {
		const place = { sheetId: to.sheetId, block };
		if (parts.format)
			clearCells(call, [place], { content: false, format: true });
		if (parts.content || parts.format)
			changeCells(call, on, [block], inBlock(block, cells));
		if (parts.rules) pasteRules(call, from, block, on);
		if (parts.choices) pasteChoices(call, from, block, on);
		if (parts.notes) pasteNotes(call, from, block, on);
	}
}
