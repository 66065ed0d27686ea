/** The studio as the workbook's tabs have it. */
import { workbook } from "../../templates/index";
import { InputError } from "../calc/errors";
import type { Slots, Tab } from "../template/plan";
import { a1Of, areaOf } from "./a1";
import { cellsOf, type Grown } from "./cells";
import { movedIn } from "./layout";
import { firstName, namedArea, STUDIO_PREFIX } from "./names";
import { pageOf } from "./page";
import {
	type Cell,
	type Rows,
	type Studio,
	settingAt,
	studioFrom,
	unitsOf,
} from "./studio";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Range = GoogleAppsScript.Spreadsheet.Range;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** A studio tab of the templates and its named cells in the workbook. */
interface Found {
	tab: Tab;
	range: Range;
	sheet: Sheet;
}

const NOTHING: Slots = {};

/**
 * The studio in the workbook's tabs, or undefined where there are none.
 *
 * @throws InputError when some of its tabs are gone, or laid out in another way than their formulas know.
 */
export function readStudio(spreadsheet: Spreadsheet): Studio | undefined {
	const found = foundIn(spreadsheet);
	if (!found) return undefined;
	const tabs = byTab(found, ({ sheet }) => sheet.getName());
	const grown = byTab(found, growthOf);
	const settings = settingsIn(foundTab(found, "Studio"), tabs);
	const rows = (name: string): Rows =>
		foundTab(found, name).range.getValues() as Cell[][];
	return studioFrom(
		{
			setting: (key) => settings[key] ?? "",
			mixes: rows("Mixes"),
			pigments: rows("Pigments"),
			jobs: rows("Jobs"),
		},
		{
			exists: true,
			tabs,
			cells: cellsOf(workbook().studioTabs, tabs, grown),
			table: (name) => foundTab(found, name).range,
			pours: once(() => rows("Pour log")),
		},
	);
}

/** The answer of the first call, again and again. */
function once<T>(read: () => T): () => T {
	let answer: { is: T } | undefined;
	return () => {
		answer ??= { is: read() };
		return answer.is;
	};
}

const byTab = <T>(
	found: readonly Found[],
	of: (one: Found) => T,
): Record<string, T> =>
	Object.fromEntries(found.map((one) => [one.tab.name, of(one)]));

function foundTab(found: readonly Found[], name: string): Found {
	const one = found.find(({ tab }) => tab.name === name);
	if (!one) throw new Error(`There is no template of ${name}`);
	return one;
}

/** Every studio tab by its first name, whatever it is called now; undefined where there is none of them. */
function foundIn(spreadsheet: Spreadsheet): Found[] | undefined {
	const ranges = workbook().studioTabs.map((tab) => {
		const name = STUDIO_PREFIX + firstName(tab);
		return { tab, name, range: spreadsheet.getRangeByName(name) };
	});
	if (ranges.every(({ range }) => range === null)) return undefined;
	return ranges.map(({ tab, name, range }) => {
		if (range) return { tab, range, sheet: range.getSheet() };
		throw new InputError(
			`The name ${name} is gone, and its tab perhaps too: bring it back with File, Version history`,
		);
	});
}

/** By how many rows a table is longer than it was made. @throws InputError when it lies elsewhere: formulas lead to cells. */
function growthOf({ tab, range }: Found): Grown {
	const table = namedArea(tab, firstName(tab));
	const now = areaOf(range.getA1Notation());
	const inPlace =
		now.row === table.row &&
		now.column === table.column &&
		now.columns === table.columns;
	if (!inPlace)
		throw new InputError(
			`On the ${tab.name} tab rows or columns were added, moved or taken away: ${a1Of(table)} is at ${a1Of(now)} now. Undo that, then try again`,
		);
	return { table, rows: now.rows - table.rows };
}

/** Every setting by its key. @throws InputError when they are in another order than they were made. */
function settingsIn(
	{ tab, sheet }: Found,
	tabs: Readonly<Record<string, string>>,
): Record<string, Cell> {
	const values = sheet.getDataRange().getValues() as Cell[][];
	const units = unitsOf(settingAt(tab, "units", values));
	const page = pageOf({
		tab,
		tokens: { units, tabs },
		prefix: STUDIO_PREFIX,
		slots: NOTHING,
	});
	const moved = movedIn(page, values);
	if (moved) throw new InputError(moved);
	return Object.fromEntries(
		tab.blocks.flatMap(({ slot }) =>
			slot === undefined ? [] : [[slot, settingAt(tab, slot, values)]],
		),
	);
}
