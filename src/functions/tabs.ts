/** The functions of the workbook's own tabs: what is typed in regions of the tabs, answered as a table. */
import { tabAnswers } from "../job/tabs/index";
import {
	type Cell,
	type Region,
	type TabAnswer,
	tabCells,
	tabInput,
} from "../job/tabs/tab";
import { gridOf } from "./grid";

/** The regions that a tab's function takes, in the order of its arguments. */
export const tabArguments = ({ needs }: TabAnswer): readonly Region[] => [
	"settings",
	...needs,
];

/**
 * The answer of a tab's function, with its headings or labels.
 *
 * @throws InputError for regions that cannot be read; what is wrong in one row is said in that row.
 */
export function callTab(name: string, given: readonly unknown[]): Cell[][] {
	const answer = tabAnswers.find((one) => one.name === name);
	if (!answer) throw new Error(`There is no function ${name}`);
	const regions = Object.fromEntries(
		tabArguments(answer).map((region, index) => [region, gridOf(given[index])]),
	);
	return tabCells(answer, tabInput(regions));
}
