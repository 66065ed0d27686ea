/** Dropdowns and limits of what may be typed. */
import type { Choice } from "../template/plan";
import type { Page } from "./page";
import { filled } from "./tokens";

type Range = GoogleAppsScript.Spreadsheet.Range;
type Rule = GoogleAppsScript.Spreadsheet.DataValidation;
type Builder = GoogleAppsScript.Spreadsheet.DataValidationBuilder;

/** Answers the rule of a choice, one for all that are alike; `named` answers the ranges they take their lists from. */
export function choiceRules(
	named: (name: string) => Range,
): (choice: Choice, page: Page) => Rule {
	const made = new Map<string, Rule>();
	let builder: Builder | undefined;
	return (choice, page) => {
		const { range: _, ...what } = choice;
		const key = JSON.stringify(what);
		// a rule is as its builder is when it is built: one does for all without a help text, which would stay
		builder ??= SpreadsheetApp.newDataValidation();
		const own = choice.help ? SpreadsheetApp.newDataValidation() : builder;
		const rule = made.get(key) ?? built(own, choice, page, named);
		made.set(key, rule);
		return rule;
	};
}

function built(
	builder: Builder,
	choice: Choice,
	page: Page,
	named: (name: string) => Range,
): Rule {
	demand(builder, choice, page, named);
	if (choice.help) builder.setHelpText(filled(choice.help, page.tokens));
	return builder.build();
}

function demand(
	builder: Builder,
	{ list, from, between }: Choice,
	page: Page,
	named: (name: string) => Range,
): Builder {
	if (list) return builder.requireValueInList([...list], true);
	if (between) return builder.requireNumberBetween(...between);
	return builder.requireValueInRange(
		named(filled(from ?? "", page.tokens)),
		true,
	);
}
