/** What a person is told about an argument. */
import type { Param, SheetFunction } from "../../functions/declare";
import { fromSi, unitName } from "../../functions/units";
import { percentShown } from "../shown";

type Units = "metric" | "us";

/** `mm; in for us`, and where both are one sign, that sign. */
function unitText(param: Param): string {
	if (param.kind === "table" || param.kind === "units") return "";
	if (param.share) return "0% to 100%";
	if (!param.unit) return "";
	const [metric, us] = [
		unitName(param.unit, "metric"),
		unitName(param.unit, "us"),
	];
	return metric === us ? metric : `${metric}, or ${us} with "us"`;
}

function defaultText(param: Param): string {
	if (!param.optional) return "";
	const cell = param.kind === "list" ? param.of : param;
	if (cell.kind !== "cell" || cell.blank === undefined)
		return "may be left out";
	return `${shown(cell.blank, cell, "metric")} when left out`;
}

function shown(
	value: unknown,
	{ share, unit }: { share?: boolean; unit?: Parameters<typeof unitName>[0] },
	units: Units,
): string {
	if (typeof value !== "number") return String(value);
	if (share) return percentShown(value, ",");
	return unit
		? `${Number(fromSi(value, unit, units).toPrecision(6))} ${unitName(unit, units)}`
		: String(value);
}

const kindText = (param: Param): string =>
	({ cell: "", units: "", list: "a column", table: "a table" })[param.kind];

/** Kind, unit and default, e.g. `mm, or in with "us"; may be left out`. */
export const argumentFacts = (param: Param): string =>
	[kindText(param), unitText(param), defaultText(param)]
		.filter(Boolean)
		.join("; ");

/** The columns of a table argument, in order. */
export function argumentColumns(param: Param): string {
	if (param.kind !== "table") return "";
	const columns = Object.values(param.columns).map(({ help, optional }) =>
		optional ? `[${help}]` : help,
	);
	const more = param.more ? [`${param.more.help}, a column each`] : [];
	return [...columns, ...more].join("; ");
}

/** The answer and its unit, column by column where there are several. */
export function answerText({ answer }: SheetFunction): string {
	const unit = (quantity: typeof answer.unit) =>
		quantity
			? ` (${[...new Set([unitName(quantity, "metric"), unitName(quantity, "us")])].join(" or ")})`
			: "";
	const columns = answer.columns
		?.map((column) => column.text + unit(column.unit))
		.join("; ");
	return columns
		? `${answer.text}: ${columns}`
		: answer.text + unit(answer.unit);
}
