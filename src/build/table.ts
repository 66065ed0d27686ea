import type { SheetFunction } from "../functions/declare";
import { eitherUnit } from "../functions/help";

/** How a function fared against one source. */
export interface Check {
	function: string;
	source: string;
	/** Seen in print, remembered, common practice, or computed by other code. */
	status: string;
	cases: number;
	/** Of the printed numbers; undefined where only texts were compared. */
	largestDifference: number | undefined;
}

const cell = (text: string): string => text.replace(/\|/g, "\\|");

const row = (cells: readonly string[]): string =>
	`| ${cells.map(cell).join(" | ")} |`;

const table = (
	heads: readonly string[],
	rows: readonly (readonly string[])[],
): string =>
	[row(heads), row(heads.map(() => "---")), ...rows.map(row)].join("\n");

/** `NAME(a; b; [c])`: optional arguments in brackets. */
function signature({ name, params }: SheetFunction): string {
	const args = Object.entries(params).map(([arg, { optional }]) =>
		optional ? `[${arg}]` : arg,
	);
	return `\`${name}(${args.join("; ")})\``;
}

function answerText({ summary, answer }: SheetFunction): string {
	return answer.unit ? `${summary} (${eitherUnit(answer.unit)})` : summary;
}

/** As every file takes it, then as files with a decimal point also do. */
const SEPARATORS = ["; ", ", "];

function exampleText({ name, example: { shown, answer } }: SheetFunction) {
	const formulas = new Set(
		SEPARATORS.map((separator) => `\`=${name}(${shown.join(separator)})\``),
	);
	const text = [...formulas].join("<br>");
	if (typeof answer === "number")
		return `${text} → ${Number(answer.toPrecision(5))}`;
	return typeof answer === "string" ? `${text} → ${answer}` : text;
}

/** The reference of the sheet functions in Markdown, a table a group. */
export function functionTable(registry: readonly SheetFunction[]): string {
	const groups = [...new Set(registry.map(({ group }) => group))];
	return groups
		.map((group) => {
			const rows = registry
				.filter((fn) => fn.group === group)
				.map((fn) => [signature(fn), answerText(fn), exampleText(fn)]);
			return `**${group}**\n\n${table(["Function", "What it answers", "Example"], rows)}`;
		})
		.join("\n\n");
}

/** A share as a person reads it; what binary arithmetic alone makes is none. */
function differenceText(share: number | undefined): string {
	if (share === undefined) return "same";
	if (share < 1e-9) return "none";
	return `${Number((share * 100).toPrecision(2))}%`;
}

/** What the functions were checked against, in Markdown. */
export function checksTable(checks: readonly Check[]): string {
	return table(
		["Function", "Source", "Its numbers are", "Cases", "Largest difference"],
		checks.map((check) => [
			`\`${check.function}\``,
			check.source,
			check.status,
			String(check.cases),
			differenceText(check.largestDifference),
		]),
	);
}

/**
 * A document with a part between its markers replaced.
 *
 * @throws Error when the document has no such markers.
 */
export function withPart(
	document: string,
	name: string,
	content: string,
): string {
	const marks = new RegExp(
		`(<!-- ${name}:start -->)[\\s\\S]*?(<!-- ${name}:end -->)`,
	);
	if (!marks.test(document)) throw new Error(`no <!-- ${name}:start --> part`);
	return document.replace(
		marks,
		(_, start, end) => `${start}\n${content}\n${end}`,
	);
}
