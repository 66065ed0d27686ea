/** Dropdowns and limits of what may be typed. */
import type { Choice } from "../../../templates/plan";
import { areaOf } from "../reading/a1";
import type { Page } from "./page";
import type { Grid } from "./tabranges";
import { filled } from "./tokens";

type Rule = GoogleAppsScript.Spreadsheet.DataValidation;
type Cells = GoogleAppsScript.Spreadsheet.Range;

type Demand = Pick<Choice, "list" | "between" | "from" | "help">;

interface Wanted {
	/** The cells that it is for. */
	range: string;
	demand: Demand;
	/** Alike for demands that are alike. */
	key: string;
}

const wantedOf = ({ tab, tokens }: Page): Wanted[] =>
	(tab.choices ?? []).map(({ range, list, between, from, help = "" }) => {
		const demand = {
			list,
			between,
			from: from && filled(from, tokens),
			help: filled(help, tokens),
		};
		return { range, demand, key: JSON.stringify(demand) };
	});

/**
 * One rule for all demands that are alike, by their key. What is set stays in the builder: names that are only marked come first,
 * then what is refused, at last with words of its own.
 */
function rulesOf(
	wanted: readonly Wanted[],
	cellsIn: (reference: string) => Cells,
): Map<string, Rule> {
	const builder = SpreadsheetApp.newDataValidation();
	const built = ({ list, between, from, help }: Demand): Rule => {
		if (list) builder.requireValueInList([...list], true);
		if (between) builder.requireNumberBetween(...between);
		if (from) builder.requireValueInRange(cellsIn(from), true);
		if (help) builder.setHelpText(help);
		return builder.build();
	};
	const rules = new Map<string, Rule>();
	const build = (isNow: (demand: Demand) => boolean) => {
		for (const { key, demand } of wanted)
			if (!rules.has(key) && isNow(demand)) rules.set(key, built(demand));
	};
	build(({ from, help }) => Boolean(from) && !help);
	builder.setAllowInvalid(false);
	build(({ help }) => !help);
	build(() => true);
	return rules;
}

/** Sets the choices of new tabs, one call a tab; `cellsIn` answers the cells that a formula writes so. */
export function setChoices(
	grids: readonly Grid[],
	cellsIn: (reference: string) => Cells,
): void {
	const wanted = grids.map(({ page }) => wantedOf(page));
	const rules = rulesOf(wanted.flat(), cellsIn);
	grids.forEach(({ page, cells }, index) => {
		const own = page.cells.map((row) => row.map((): Rule | null => null));
		for (const { range, key } of wanted[index] ?? []) {
			const { row, column, rows, columns } = areaOf(range);
			for (const line of own.slice(row, row + rows))
				line.fill(rules.get(key) ?? null, column, column + columns);
		}
		if (own.flat().some(Boolean)) cells.setDataValidations(own);
	});
}
