/**
 * The conditional formats of cells that formats are pasted on: those of the source, and none of their own any more.
 *
 * @source dashboardsexcel.com, copying conditional formatting; webapps.stackexchange.com/questions/119880; that a source
 * without rules takes away those of the destination: a practitioner's experience
 */
import type { IRange, Worksheet } from "@univerjs/core";
import { LexerTreeBuilder } from "@univerjs/engine-formula";
import {
	CFRuleType,
	CFSubRuleType,
	type IConditionFormattingRule,
} from "@univerjs/sheets-conditional-formatting";
import type { Block } from "../a1";
import { partOf } from "../engine-private";
import type { Call } from "./call";
import { putRules, rulesOf } from "./conditional-rules";
import { type Place, sheetAt } from "./place";

const isBlock = ({ startRow, endRow, startColumn, endColumn }: Block) =>
	startRow <= endRow && startColumn <= endColumn;

/** What both blocks share, or undefined. */
function shared(a: Block, b: Block): Block | undefined {
	const block = {
		startRow: Math.max(a.startRow, b.startRow),
		endRow: Math.min(a.endRow, b.endRow),
		startColumn: Math.max(a.startColumn, b.startColumn),
		endColumn: Math.min(a.endColumn, b.endColumn),
	};
	return isBlock(block) ? block : undefined;
}

/** The block without a hole: above, below, left and right of it. */
function without(block: IRange, hole: Block): Block[] {
	const inside = shared(block, hole);
	if (!inside) return [block];
	const { startRow, endRow, startColumn, endColumn } = inside;
	return [
		{ ...block, endRow: startRow - 1 },
		{ ...block, startRow: endRow + 1 },
		{ ...block, startRow, endRow, endColumn: startColumn - 1 },
		{ ...block, startRow, endRow, startColumn: endColumn + 1 },
	].filter(isBlock);
}

/** A rule's formula is written for its first cell: how far that one is from where it was. */
const distance = (
	from: Block | undefined,
	to: Block | undefined,
): readonly [number, number] =>
	from && to
		? [to.startRow - from.startRow, to.startColumn - from.startColumn]
		: [0, 0];

/** The rule on its way, with the relative references of its formula. */
function movedRule(
	call: Call,
	rule: IConditionFormattingRule["rule"],
	[down, right]: readonly [number, number],
): IConditionFormattingRule["rule"] {
	if (
		rule.type !== CFRuleType.highlightCell ||
		rule.subType !== CFSubRuleType.formula
	)
		return rule;
	const lexer = partOf(call.host.book.engine, LexerTreeBuilder);
	return {
		...rule,
		value: lexer.moveFormulaRefOffset(rule.value, right, down),
	};
}

export function pasteRules(
	call: Call,
	from: Place,
	to: Block,
	on: Worksheet,
): void {
	const move = distance(from.block, to);
	const [down, right] = move;
	const own = rulesOf(call, on).map((rule) => {
		const ranges = rule.ranges.flatMap((range) => without(range, to));
		const shift = distance(rule.ranges[0], ranges[0]);
		return { ...rule, ranges, rule: movedRule(call, rule.rule, shift) };
	});
	const brought = rulesOf(call, sheetAt(call, from)).map((rule) => ({
		...rule,
		rule: movedRule(call, rule.rule, move),
		ranges: rule.ranges
			.flatMap((range) => shared(range, from.block) ?? [])
			.map(({ startRow, endRow, startColumn, endColumn }) => ({
				startRow: startRow + down,
				endRow: endRow + down,
				startColumn: startColumn + right,
				endColumn: endColumn + right,
			})),
	}));
	const rules = [...own, ...brought].filter(({ ranges }) => ranges.length > 0);
	putRules(
		call,
		on,
		rules.map((rule, index) => ({
			...rule,
			cfId: `rule_${on.getSheetId()}_${index}`,
		})),
	);
}
