/** `SpreadsheetApp.newDataValidation()`. */
import {
	DataValidationErrorStyle,
	DataValidationOperator,
	DataValidationRenderMode,
	DataValidationType,
	type IDataValidationRuleBase,
	type IDataValidationRuleOptions,
} from "@univerjs/core";
import { serializeListOptions } from "@univerjs/sheets";
import { formatAbsolute, quoteTab } from "../a1";
import { engineFormula } from "../writing";
import { type Call, signature } from "./call";
import { type Place, sheetAt } from "./place";

type Rule = IDataValidationRuleBase & IDataValidationRuleOptions;
type Builder = GoogleAppsScript.Spreadsheet.DataValidationBuilder;
type BuilderMethods = Pick<
	Builder,
	| "requireValueInList"
	| "requireValueInRange"
	| "requireNumberBetween"
	| "requireNumberGreaterThan"
	| "requireNumberGreaterThanOrEqualTo"
	| "requireNumberLessThanOrEqualTo"
	| "requireCheckbox"
	| "requireFormulaSatisfied"
	| "setAllowInvalid"
	| "setHelpText"
	| "build"
>;

const KIND = "SpreadsheetApp.DataValidationBuilder";
const BUILT = "SpreadsheetApp.DataValidation";

const number = (value: unknown, method: string) => {
	if (typeof value !== "number") throw signature([value], `${KIND}.${method}`);
	return String(value);
};

/** A rule of one number or two. */
const numeric = (
	operator: DataValidationOperator,
	first: string,
	second?: string,
) => ({
	type: DataValidationType.DECIMAL,
	operator,
	formula1: first,
	formula2: second,
});

export function newDataValidation(call: Call): Builder {
	let rule: Rule | undefined;
	let options: IDataValidationRuleOptions = {
		showErrorMessage: true,
		errorStyle: DataValidationErrorStyle.WARNING,
		// a list that a script makes is shown as a text with an arrow
		renderMode: DataValidationRenderMode.ARROW,
	};
	const requires = (condition: Rule) => {
		rule = condition;
		return served;
	};
	const having = (option: IDataValidationRuleOptions) => {
		options = { ...options, ...option };
		return served;
	};
	const methods: BuilderMethods = {
		requireValueInList(values: unknown, showDropdown: boolean | null = true) {
			if (!Array.isArray(values))
				throw signature([values], `${KIND}.requireValueInList`);
			return requires({
				type: DataValidationType.LIST,
				formula1: serializeListOptions(Array.from(values, String)),
				showDropDown: showDropdown !== false,
			});
		},
		requireValueInRange(range, showDropdown: boolean | null = true) {
			const place = call.inner<Place>(range, "Range");
			const tab = sheetAt(call, place).getName();
			return requires({
				type: DataValidationType.LIST,
				formula1: `=${quoteTab(tab)}!${formatAbsolute(place.block)}`,
				showDropDown: showDropdown !== false,
			});
		},
		requireNumberBetween: (start, end) =>
			requires(
				numeric(
					DataValidationOperator.BETWEEN,
					number(start, "requireNumberBetween"),
					number(end, "requireNumberBetween"),
				),
			),
		requireNumberGreaterThan: (limit) =>
			requires(
				numeric(
					DataValidationOperator.GREATER_THAN,
					number(limit, "requireNumberGreaterThan"),
				),
			),
		requireNumberGreaterThanOrEqualTo: (limit) =>
			requires(
				numeric(
					DataValidationOperator.GREATER_THAN_OR_EQUAL,
					number(limit, "requireNumberGreaterThanOrEqualTo"),
				),
			),
		requireNumberLessThanOrEqualTo: (limit) =>
			requires(
				numeric(
					DataValidationOperator.LESS_THAN_OR_EQUAL,
					number(limit, "requireNumberLessThanOrEqualTo"),
				),
			),
		requireCheckbox: () => requires({ type: DataValidationType.CHECKBOX }),
		requireFormulaSatisfied(formula) {
			const { book } = call.host;
			const [sheet] = book.workbook.getWorkbook().getSheets();
			if (typeof formula !== "string" || !sheet)
				throw signature([formula], `${KIND}.requireFormulaSatisfied`);
			return requires({
				type: DataValidationType.CUSTOM,
				formula1: engineFormula(book, sheet, formula, "script"),
			});
		},
		setAllowInvalid: (allowed) =>
			having({
				errorStyle: allowed
					? DataValidationErrorStyle.WARNING
					: DataValidationErrorStyle.STOP,
			}),
		setHelpText: (text) => having({ error: String(text) }),
		build() {
			if (!rule) throw new Error("The data validation rule has no criteria.");
			return call.serve(BUILT, {}, { ...rule, ...options, allowBlank: true });
		},
	};
	const served = call.serve<Builder>(KIND, methods);
	return served;
}

/** The engine's form of a built rule. */
export function builtRule(call: Call, rule: unknown): Rule {
	return call.inner<Rule>(rule, BUILT);
}
