/** What a person is told about a sheet function, out of its declaration. */

import { fromSi, type Quantity, unitName } from "../job/reading/units";
import type { CellParam, Param, SheetFunction } from "./declare";

export interface ArgumentHelp {
	name: string;
	help: string;
	optional: boolean;
	/** Kind, unit, allowed words and what a blank means. */
	facts: string;
	/** Of a table: its columns in order. */
	columns: string;
}

/** A sheet function as it is explained to a person. */
export interface FunctionHelp {
	name: string;
	group: string;
	summary: string;
	limits: string;
	source: string;
	arguments: ArgumentHelp[];
	answer: string;
	/** Arguments as typed, the answer where it is one value, how it comes about. */
	example: { shown: string[]; answer: string; working: string };
}

/** As many digits as say something. */
const digits = (value: unknown): unknown =>
	typeof value === "number" ? Number(value.toPrecision(6)) : value;

export const helpOf = (fn: SheetFunction): FunctionHelp => ({
	name: fn.name,
	group: fn.group,
	summary: fn.summary,
	limits: fn.limits ?? "",
	source: fn.source,
	arguments: Object.entries(fn.params).map(argumentHelp),
	answer: answerText(fn),
	example: {
		shown: [...fn.example.shown],
		answer: Array.isArray(fn.example.answer)
			? ""
			: String(digits(fn.example.answer)),
		working: fn.example.working,
	},
});

const argumentHelp = ([name, param]: [string, Param]): ArgumentHelp => ({
	name,
	help: param.help,
	optional: param.optional,
	facts: [kindText(param), unitText(param), wordsText(param), blankText(param)]
		.filter(Boolean)
		.join("; "),
	columns: columnsText(param),
});

const kindText = ({ kind }: Param): string =>
	kind === "list" ? "a column" : kind === "table" ? "a table" : "";

/** Both systems' names, or the one that they share. */
export function eitherUnit(quantity: Quantity): string {
	const [metric, us] = [unitName(quantity, "metric"), unitName(quantity, "us")];
	return metric === us ? metric : `${metric}, us: ${us}`;
}

/** What the cells of an argument measure; of a table, what all its measured columns do. */
export function quantityOf(param: Param): Quantity | undefined {
	if (param.kind === "units") return undefined;
	if (param.kind !== "table") return param.unit;
	const columns = Object.values(param.columns);
	const [quantity, ...others] = new Set(columns.flatMap((c) => c.unit ?? []));
	return others.length === 0 ? quantity : undefined;
}

function unitText(param: Param): string {
	if ("share" in param && param.share) return "a share: 4% or 0.04";
	const quantity = quantityOf(param);
	return quantity ? eitherUnit(quantity) : "";
}

const wordsText = (param: Param): string =>
	param.kind === "cell" && param.words ? param.words.join(", ") : "";

/** What a blank means; nothing where it is not allowed, or says so itself. */
export function blankText(param: Param): string {
	if (!param.optional || param.kind === "units") return "";
	const cell = param.kind === "list" ? param.of : param;
	return cell.kind === "cell" && (cell.blank ?? "") !== ""
		? `${shown(cell)} when blank`
		: "may be left out";
}

/** What a blank means, as a person would type it. */
function shown({ blank, share, unit }: CellParam<unknown>): string {
	if (typeof blank !== "number") return String(blank);
	const plain = (value: number) => String(Number(value.toPrecision(10)));
	if (share) return `${plain(blank * 100)}%`;
	return unit
		? `${plain(fromSi(blank, unit, "metric"))} ${unitName(unit, "metric")}`
		: plain(blank);
}

function columnsText(param: Param): string {
	if (param.kind !== "table") return "";
	const columns = Object.values(param.columns).map(({ help, optional }) =>
		optional ? `${help} (may be blank)` : help,
	);
	return [
		...columns,
		...(param.more ? [`${param.more.help}, as many as there are`] : []),
	].join("; ");
}

/** What comes back, column by column where there are several. */
function answerText({ answer }: SheetFunction): string {
	const withUnit = ({ text, unit }: { text: string; unit?: Quantity }) =>
		unit ? `${text} (${eitherUnit(unit)})` : text;
	return answer.columns
		? `${answer.text}. Columns: ${answer.columns.map(withUnit).join("; ")}`
		: withUnit(answer);
}
