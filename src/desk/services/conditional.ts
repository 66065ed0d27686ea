/** `SpreadsheetApp.newConditionalFormatRule()`. */
import { BooleanNumber, type IStyleBase } from "@univerjs/core";
import {
	CFNumberOperator,
	CFSubRuleType,
	CFTextOperator,
} from "@univerjs/sheets-conditional-formatting";
import { namedRanges } from "../names";
import { type Call, signature } from "./call";
import { type Condition, servedRule } from "./conditional-rules";
import type { Place } from "./place";

type Builder = GoogleAppsScript.Spreadsheet.ConditionalFormatRuleBuilder;
type BuilderMethods = Pick<
	Builder,
	| "whenFormulaSatisfied"
	| "whenNumberGreaterThan"
	| "whenNumberLessThan"
	| "whenTextEqualTo"
	| "whenTextStartsWith"
	| "setBackground"
	| "setFontColor"
	| "setBold"
	| "setItalic"
	| "setStrikethrough"
	| "setRanges"
	| "build"
>;

const KIND = "SpreadsheetApp.ConditionalFormatRuleBuilder";

/** Why Sheets would not take the formula in a rule, or undefined. */
function formulaProblem(call: Call, formula: string): string | undefined {
	const bare = formula.replace(/"(?:[^"]|"")*"/g, '""');
	if (bare.includes("!"))
		return "Conditional format rule cannot reference a different sheet.";
	const words = new Set(bare.toUpperCase().match(/[A-Z_][A-Z0-9_.]*/g) ?? []);
	const own = call.host.functionNames.find((name) =>
		words.has(name.toUpperCase()),
	);
	if (own)
		return `Custom function ${own} does not work in a conditional format.`;
	const named = namedRanges(call.host.book).find(({ name }) =>
		words.has(name.toUpperCase()),
	);
	return (
		named && `Named range ${named.name} does not work in a conditional format.`
	);
}

export function newConditionalFormatRule(call: Call): Builder {
	let condition: Condition | undefined;
	let places: Place[] = [];
	const style: IStyleBase = {};
	const when = (wanted: Condition) => {
		condition = wanted;
		return served;
	};
	const styled = (part: IStyleBase) => {
		Object.assign(style, part);
		return served;
	};
	const yesNo = (on: boolean | null) =>
		on ? BooleanNumber.TRUE : BooleanNumber.FALSE;
	const methods: BuilderMethods = {
		whenFormulaSatisfied(formula) {
			if (typeof formula !== "string")
				throw signature([formula], `${KIND}.whenFormulaSatisfied`);
			const problem = formulaProblem(call, formula);
			if (problem) throw new Error(problem);
			return when({ subType: CFSubRuleType.formula, value: formula });
		},
		whenNumberGreaterThan: (value) =>
			when({
				subType: CFSubRuleType.number,
				operator: CFNumberOperator.greaterThan,
				value,
			}),
		whenNumberLessThan: (value) =>
			when({
				subType: CFSubRuleType.number,
				operator: CFNumberOperator.lessThan,
				value,
			}),
		whenTextEqualTo: (text) =>
			when({
				subType: CFSubRuleType.text,
				operator: CFTextOperator.equal,
				value: text,
			}),
		whenTextStartsWith: (text) =>
			when({
				subType: CFSubRuleType.text,
				operator: CFTextOperator.beginsWith,
				value: text,
			}),
		setBackground: (color) => styled({ bg: color ? { rgb: color } : null }),
		setFontColor: (color) => styled({ cl: color ? { rgb: color } : null }),
		setBold: (bold) => styled({ bl: yesNo(bold) }),
		setItalic: (italic) => styled({ it: yesNo(italic) }),
		setStrikethrough: (struck) => styled({ st: { s: yesNo(struck) } }),
		setRanges(ranges: unknown) {
			if (!Array.isArray(ranges))
				throw signature([ranges], `${KIND}.setRanges`);
			places = Array.from(ranges, (range) => call.inner<Place>(range, "Range"));
			return served;
		},
		build() {
			if (!condition || places.length === 0)
				throw new Error(
					"A conditional format rule needs a condition and at least one range.",
				);
			return servedRule(call, { condition, style: { ...style }, places });
		},
	};
	const served = call.serve<Builder>(KIND, methods);
	return served;
}
