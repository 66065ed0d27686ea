import type { Param } from "../functions/declare";
import { blankText, eitherUnit, quantityOf } from "../functions/help";

/** What a person is told about an argument: what it is, its unit, and what a blank means. */
export function paramHelp(param: Param): string {
	const quantity = quantityOf(param);
	const unit = quantity ? eitherUnit(quantity) : "";
	const more = [unit, blankText(param)].filter(Boolean).join("; ");
	return more ? `${param.help} (${more})` : param.help;
}
