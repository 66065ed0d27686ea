/** Puts the rule of what may be typed on cells, and takes it away. */
import type {
	IDataValidationRuleBase,
	IDataValidationRuleOptions,
	Worksheet,
} from "@univerjs/core";
import {
	AddSheetDataValidationCommand,
	ClearRangeDataValidationCommand,
} from "@univerjs/sheets-data-validation";
import { type Block, formatA1 } from "../a1";
import { mapBlock } from "../book";
import type { Call } from "./call";
import { change } from "./change";
import { builtRule } from "./validation";

type Rule = IDataValidationRuleBase & IDataValidationRuleOptions;

/** Takes away the rules of all cells of the block. */
export function clearChoices(call: Call, sheet: Worksheet, block: Block): void {
	change(call, sheet, ClearRangeDataValidationCommand.id, {
		ranges: [{ ...block }],
	});
}

/** A rule or none for each cell of the block, in the engine's form. Cells of one rule share it. */
export function putChoices(
	call: Call,
	sheet: Worksheet,
	block: Block,
	ruleAt: (row: number, column: number) => Rule | undefined,
): void {
	const blocks = new Map<Rule, Block[]>();
	mapBlock(block, (row, column) => {
		const rule = ruleAt(row, column);
		if (!rule) return;
		const own = blocks.get(rule) ?? [];
		blocks.set(rule, own);
		addCell(own, row, column);
	});
	clearChoices(call, sheet, block);
	for (const [rule, cells] of blocks) {
		const ranges = joined(cells);
		const uid = `choice_${sheet.getSheetId()}_${ranges.map(formatA1).join("_")}`;
		change(call, sheet, AddSheetDataValidationCommand.id, {
			rule: { ...rule, uid, ranges },
		});
	}
}

/** Adds a cell to the runs of cells side by side; cells come row by row. */
function addCell(runs: Block[], row: number, column: number): void {
	const last = runs[runs.length - 1];
	if (last?.startRow === row && last.endColumn === column - 1)
		last.endColumn = column;
	else
		runs.push({
			startRow: row,
			endRow: row,
			startColumn: column,
			endColumn: column,
		});
}

/** Runs of the same columns, one below the other, as one block. */
function joined(runs: readonly Block[]): Block[] {
	const blocks: Block[] = [];
	for (const run of runs) {
		const above = blocks.find(
			(block) =>
				block.endRow === run.startRow - 1 &&
				block.startColumn === run.startColumn &&
				block.endColumn === run.endColumn,
		);
		if (above) above.endRow = run.endRow;
		else blocks.push({ ...run });
	}
	return blocks;
}

/** Rules that a script has built, or null, for each cell of the block. */
export function setChoices(
	call: Call,
	sheet: Worksheet,
	block: Block,
	ruleAt: (row: number, column: number) => unknown,
): void {
	const built = new Map<unknown, Rule | undefined>([
		[null, undefined],
		[undefined, undefined],
	]);
	putChoices(call, sheet, block, (row, column) => {
		const rule = ruleAt(row, column);
		if (!built.has(rule)) built.set(rule, builtRule(call, rule));
		return built.get(rule);
	});
}
