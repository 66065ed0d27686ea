/** The studio as the workbook's tabs have it. */
import { workbook } from "../../templates/index";
import { InputError } from "../calc/errors";
import { a1Of } from "./a1";
import { cellsOf, type Grown } from "./cells";
import { jobRows } from "./jobsrow";
import { movedText } from "./layout";
import { firstName, namedArea } from "./names";
import { type Cell, type Studio, studioFrom } from "./studio";
import { type FoundTable, foundBy, settingsIn, studioTab } from "./studiotab";
import { quoted } from "./tokens";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/**
 * The studio in the workbook's tabs, or undefined where there are none.
 *
 * The Studio tab counts the rows of each other tab's table: the formula says where that table is now, and all of them
 * are read in one call.
 *
 * @throws InputError when some of its tabs are gone, or laid out in another way than their formulas know.
 */
export function readStudio(spreadsheet: Spreadsheet): Studio | undefined {
	const own = studioTab(spreadsheet);
	if (!own) return undefined;
	const settings = settingsIn(own);
	const found = workbook()
		.studioTabs.slice(1)
		.map((tab) => foundBy(own, tab));
	const tabs = { ...byTab(found, ({ sheet }) => sheet), Studio: own.name };
	const table = (name: string) =>
		spreadsheet.getRange(addressOf(foundTab(found, name)));
	const rows = (name: string) => table(name).getValues() as Cell[][];
	return studioFrom(
		{
			setting: (key) => settings[key] ?? "",
			mixes: rows("Mixes"),
			pigments: rows("Pigments"),
			jobs: jobRows(table("Jobs")),
		},
		{
			exists: true,
			tabs,
			cells: cellsOf(workbook().studioTabs, tabs, byTab(found, growthOf)),
			table,
			pours: once(() => rows("Pour log")),
		},
	);
}

const addressOf = ({ sheet, area }: FoundTable): string =>
	`${quoted(sheet)}!${a1Of(area)}`;

/** The answer of the first call, again and again. */
function once<T>(read: () => T): () => T {
	let answer: { is: T } | undefined;
	return () => {
		answer ??= { is: read() };
		return answer.is;
	};
}

const byTab = <T>(
	found: readonly FoundTable[],
	of: (one: FoundTable) => T,
): Record<string, T> =>
	Object.fromEntries(found.map((one) => [one.tab.name, of(one)]));

function foundTab(found: readonly FoundTable[], name: string): FoundTable {
	const one = found.find(({ tab }) => tab.name === name);
	if (!one) throw new Error(`There is no template of ${name}`);
	return one;
}

/** By how many rows a table is longer than it was made. @throws InputError when it lies elsewhere: formulas lead to cells. */
function growthOf({ tab, area: now }: FoundTable): Grown {
	const table = namedArea(tab, firstName(tab));
	const inPlace =
		now.row === table.row &&
		now.column === table.column &&
		now.columns === table.columns;
	if (!inPlace)
		throw new InputError(
			movedText(tab.name, `${a1Of(table)} is at ${a1Of(now)} now`),
		);
	return { table, rows: now.rows - table.rows };
}
