import type { SheetFunction } from "../functions/declare";
import { eitherUnit } from "../functions/help";
import { tabArguments } from "../functions/tabs";
import { JOB_REGIONS } from "../job/cells/jobcells";
import type { TabAnswer } from "../job/tabs/tab";
import type { EntryPoint } from "./entries";
import { paramHelp } from "./help";

/** The one private global: Sheets does not call a name that ends in `_`. */
export const NAMESPACE = "tonefold_";

/** The function of a file of its own that returns the templates, private too. */
export const TEMPLATES = "templates_";

/** Nothing in a comment may end it or start a tag. */
const inComment = (text: string): string =>
	text.replace(/\s+/g, " ").replace(/\*\//g, "* /").replace(/@/g, "(at)");

/** Sheets takes the text in braces for the sample of an argument. */
const sample = (text: string): string => text.replace(/[{}]/g, "");

/** What it answers, with the unit: Sheets does not show what stands after `@return`. */
const summary = ({ summary, answer: { unit } }: SheetFunction): string =>
	unit ? `${summary.replace(/\.$/, "")} (${eitherUnit(unit)}).` : summary;

/**
 * A top-level function that a cell can call, under the comment that Sheets shows as its help.
 *
 * Its parameters are named, since Sheets lists them from the signature, and `arguments` passes on how many came.
 */
export function sheetStub(fn: SheetFunction): string {
	const params = Object.entries(fn.params);
	const lines = [
		...[summary(fn), fn.limits ?? ""].filter(Boolean).map(inComment),
		"",
		...params.map(
			([name, param], i) =>
				`@param {${sample(inComment(fn.example.shown[i] ?? usual(param.kind)))}} ${name} ${inComment(paramHelp(param))}`,
		),
		"@customfunction",
	];
	const signature = params.map(([name]) => name).join(", ");
	return `${comment(lines)}\nfunction ${fn.name}(${signature}) { return ${NAMESPACE}.call("${fn.name}", arguments); }\n`;
}

/** A function of the workbook's own tabs, under its help. */
export function tabStub(answer: TabAnswer): string {
	const regions = tabArguments(answer);
	const lines = [
		inComment(answer.summary),
		"The workbook's own tabs use it: they pass it what was typed in their tinted cells.",
		"",
		...regions.map(
			(region) =>
				`@param {${regionName(region)}} ${region} What was typed there, with its labels or headings`,
		),
		"@customfunction",
	];
	return `${comment(lines)}\nfunction ${answer.name}(${regions.join(", ")}) { return ${NAMESPACE}.callOfTab("${answer.name}", arguments); }\n`;
}

/** A region as formulas name it, of job 1. */
const regionName = (region: string): string =>
	(JOB_REGIONS as readonly string[]).includes(region)
		? `job1_${region}`
		: `studio_${region}`;

const usual = (kind: string): string =>
	({ units: '"metric"', cell: "A2" })[kind] ?? "A2:A9";

const comment = (lines: readonly string[]): string =>
	`/**\n${lines.map((line) => ` * ${line}`.trimEnd()).join("\n")}\n */`;

/** A top-level function that the menu, a trigger or the panel calls. */
export function entryStub({ name, params, doc }: EntryPoint): string {
	const given = params.join(", ");
	return `/** ${inComment(doc)} */\nfunction ${name}(${given}) { return ${NAMESPACE}.${name}(${given}); }\n`;
}
