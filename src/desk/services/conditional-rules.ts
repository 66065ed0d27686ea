/** The conditional formats of a tab, built by a script or read from it. */
import type { IStyleBase, Worksheet } from "@univerjs/core";
import {
	AddConditionalRuleMutation,
	type CFNumberOperator,
	CFRuleType,
	CFSubRuleType,
	type CFTextOperator,
	ConditionalFormattingRuleModel,
	DeleteConditionalRuleMutation,
	type IConditionFormattingRule,
} from "@univerjs/sheets-conditional-formatting";
import { partOf } from "../engine-private";
import { engineFormula } from "../writing";
import type { Call } from "./call";
import { change } from "./change";
import { type Place, sheetAt } from "./place";

type Rule = GoogleAppsScript.Spreadsheet.ConditionalFormatRule;

export interface Condition {
	subType: CFSubRuleType;
	operator?: CFNumberOperator | CFTextOperator;
	value: string | number;
}

/** Behind a built rule: what the engine keeps, its formula still as written. */
interface Built {
	condition: Condition;
	style: IStyleBase;
	places: Place[];
}

/** Behind a rule that was read from the tab. */
interface Kept {
	kept: IConditionFormattingRule;
}

const BUILT = "SpreadsheetApp.ConditionalFormatRule";

/** A rule as the script sees it. */
export function servedRule(call: Call, built: Built | Kept): Rule {
	return call.serve<Rule>(BUILT, {}, built);
}

/** The engine's own rules of the tab, the first wins. */
export const rulesOf = (call: Call, sheet: Worksheet) =>
	partOf(call.host.book.engine, ConditionalFormattingRuleModel).getSubunitRules(
		call.host.book.workbook.getId(),
		sheet.getSheetId(),
	) ?? [];

/** The rules of the tab, the first wins. */
export function conditionalFormatRules(call: Call, sheet: Worksheet): Rule[] {
	return rulesOf(call, sheet).map((kept) => servedRule(call, { kept }));
}

function engineRule(
	call: Call,
	sheet: Worksheet,
	built: Built,
	id: string,
): IConditionFormattingRule {
	const { condition, style, places } = built;
	const strange = places.find((place) => place.sheetId !== sheet.getSheetId());
	if (strange)
		throw new Error(
			`A conditional format rule of ${sheet.getName()} has a range of ${sheetAt(call, strange).getName()}.`,
		);
	const value =
		condition.subType === CFSubRuleType.formula
			? engineFormula(call.host.book, sheet, String(condition.value), "script")
			: condition.value;
	return {
		cfId: id,
		ranges: places.map(({ block }) => ({ ...block })),
		stopIfTrue: false,
		rule: {
			type: CFRuleType.highlightCell,
			style,
			...condition,
			value,
		} as IConditionFormattingRule["rule"],
	};
}

/** Replaces all rules of the tab; the first of them wins. */
export function setConditionalFormatRules(
	call: Call,
	sheet: Worksheet,
	rules: readonly unknown[],
): void {
	const made = rules.map((rule, index) => {
		const cfId = `rule_${sheet.getSheetId()}_${index}`;
		const built = call.inner<Built | Kept>(rule, BUILT);
		return "kept" in built
			? { ...built.kept, cfId }
			: engineRule(call, sheet, built, cfId);
	});
	putRules(call, sheet, made);
}

/** Replaces all rules of the tab with rules in the engine's form. */
export function putRules(
	call: Call,
	sheet: Worksheet,
	rules: readonly IConditionFormattingRule[],
): void {
	for (const { cfId } of [...rulesOf(call, sheet)])
		change(call, sheet, DeleteConditionalRuleMutation.id, { cfId });
	// the engine ranks a later one first
	for (const rule of [...rules].reverse())
		change(call, sheet, AddConditionalRuleMutation.id, { rule });
}
