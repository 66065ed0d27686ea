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
import type { Call } from "./call";
import { change } from "./change";
import { builtRule } from "./validation";

type Rule = IDataValidationRuleBase & IDataValidationRuleOptions;

/** A rule in the engine's form; none takes away what is there. */
export function putChoice(
	call: Call,
	sheet: Worksheet,
	block: Block,
	rule: Rule | undefined,
): void {
	if (!rule) {
		change(call, sheet, ClearRangeDataValidationCommand.id, {
			ranges: [{ ...block }],
		});
		return;
	}
	const uid = `choice_${sheet.getSheetId()}_${formatA1(block)}`;
	change(call, sheet, AddSheetDataValidationCommand.id, {
		rule: { ...rule, uid, ranges: [{ ...block }] },
	});
}

/** A rule that a script has built, or null. */
export function setChoice(
	call: Call,
	sheet: Worksheet,
	block: Block,
	rule: unknown,
): void {
	const none = rule === null || rule === undefined;
	putChoice(call, sheet, block, none ? undefined : builtRule(call, rule));
}
