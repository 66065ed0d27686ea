/** Dropdowns and limits of what may be typed. */
import type { Choice } from "../template/plan";
import { areaOf } from "./a1";
import type { Page } from "./page";
import { filled } from "./tokens";

type Range = GoogleAppsScript.Spreadsheet.Range;
type Rule = GoogleAppsScript.Spreadsheet.DataValidation;
type Rules = (Rule | null)[][];

type Demand = Pick<Choice, "list" | "between" | "help">;

interface Wanted {
	/** The cells that it is for. */
	range: string;
	demand: Demand;
	key: string;
}

/** A list that stands in cells is not among them: those cells might move when the rule is copied. */
const plainOf = ({ tab, tokens }: Page): Wanted[] =>
	(tab.choices ?? [])
		.filter(({ from }) => from === undefined)
		.map(({ range, list, between, help = "" }) => {
			const demand = { list, between, help: filled(help, tokens) };
			return { range, demand, key: JSON.stringify(demand) };
		});

/** One rule for all that are alike, by their key. A help text stays in the builder: those without come first. */
function rulesOf(wanted: readonly Wanted[]): Map<string, Rule> {
	const builder = SpreadsheetApp.newDataValidation();
	const built = ({ list, between, help }: Demand): Rule => {
		if (list) builder.requireValueInList([...list], true);
		if (between) builder.requireNumberBetween(...between);
		if (help) builder.setHelpText(help);
		return builder.build();
	};
	const rules = new Map<string, Rule>();
	for (const hasHelp of [false, true])
		for (const { key, demand } of wanted)
			if (!rules.has(key) && Boolean(demand.help) === hasHelp)
				rules.set(key, built(demand));
	return rules;
}

/** The rule of each cell of each page, or none; without those that take their list from cells. */
export function plainChoices(pages: readonly Page[]): Rules[] {
	const wanted = pages.map(plainOf);
	const rules = rulesOf(wanted.flat());
	return pages.map(({ cells }, index) => {
		const own: Rules = cells.map((row) => row.map(() => null));
		for (const { range, key } of wanted[index] ?? []) {
			const { row, column, rows, columns } = areaOf(range);
			for (const line of own.slice(row, row + rows))
				line.fill(rules.get(key) ?? null, column, column + columns);
		}
		return own;
	});
}

/** Sets the choices that take their list from cells; `cellsIn` answers those that a formula writes so. */
export function setListed(
	{ tab, tokens }: Page,
	at: (a1: string) => Range,
	cellsIn: (reference: string) => Range,
): void {
	for (const { range, from } of tab.choices ?? [])
		if (from !== undefined)
			at(range).setDataValidation(listed(cellsIn(filled(from, tokens))));
}

const listed = (cells: Range): Rule =>
	SpreadsheetApp.newDataValidation().requireValueInRange(cells, true).build();
