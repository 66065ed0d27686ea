import type { CellParam, Param } from "../functions/declare";
import { fromSi, type Quantity, unitName } from "../functions/units";

/** `kg, us: lb`, or one name where both systems have the same. */
export function unitText(unit: Quantity): string {
	const [metric, us] = [unitName(unit, "metric"), unitName(unit, "us")];
	return metric === us ? metric : `${metric}, us: ${us}`;
}

/** What a blank means, as a person would type it. */
function blankText({ blank, share, unit }: CellParam<unknown>): string {
	if (typeof blank !== "number") return String(blank);
	const plain = (value: number) => String(Number(value.toPrecision(10)));
	if (share) return `${plain(blank * 100)}%`;
	if (!unit) return plain(blank);
	return `${plain(fromSi(blank, unit, "metric"))} ${unitName(unit, "metric")}`;
}

function optionalText(param: Param): string {
	if (!param.optional || param.kind === "units") return "";
	if (param.kind === "cell" && param.blank !== undefined)
		return `optional, ${blankText(param)} when blank`;
	return "optional";
}

/** What a person is told about an argument: what it is, its unit, and what a blank means. */
export function paramHelp(param: Param): string {
	const unit = "unit" in param && param.unit ? unitText(param.unit) : "";
	const more = [unit, optionalText(param)].filter(Boolean).join("; ");
	return more ? `${param.help} (${more})` : param.help;
}
