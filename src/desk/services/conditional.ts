/** `SpreadsheetApp.newConditionalFormatRule()` and the rules of a tab. */
import { BooleanNumber, type IStyleBase, type Worksheet } from "@univerjs/core";
import {
	AddConditionalRuleMutation,
	CFNumberOperator,
	CFRuleType,
	CFSubRuleType,
	CFTextOperator,
	ConditionalFormattingRuleModel,
	DeleteConditionalRuleMutation,
	type IConditionFormattingRule,
} from "@univerjs/sheets-conditional-formatting";
import { namedRanges } from "../names";
import { engineFormula } from "../writing";
import { type Call, signature } from "./call";
import { change } from "./change";
import { type Place, sheetAt } from "./place";

type Builder = GoogleAppsScript.Spreadsheet.ConditionalFormatRuleBuilder;
type Rule = GoogleAppsScript.Spreadsheet.ConditionalFormatRule;
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

interface Condition {
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

const KIND = "SpreadsheetApp.ConditionalFormatRuleBuilder";
const BUILT = "SpreadsheetApp.ConditionalFormatRule";

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

function servedRule(call: Call, built: Built | Kept): Rule {
	return call.serve<Rule>(BUILT, {}, built);
}

const rulesOf = (call: Call, sheet: Worksheet) =>
	call.host.book.engine.univer
		.__getInjector()
		.get(ConditionalFormattingRuleModel)
		.getSubunitRules(call.host.book.workbook.getId(), sheet.getSheetId()) ?? [];

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
	for (const { cfId } of [...rulesOf(call, sheet)])
		change(call, sheet, DeleteConditionalRuleMutation.id, { cfId });
	// the engine ranks a later one first
	for (const rule of made.reverse())
		change(call, sheet, AddConditionalRuleMutation.id, { rule });
}
