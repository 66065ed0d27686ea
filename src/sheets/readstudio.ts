/** The studio as the workbook's tabs have it. */
import { workbook } from "../../templates/index";
import { InputError } from "../calc/errors";
import type { Tab } from "../template/plan";
import { type Area, a1Of, areaOf } from "./a1";
import { cellsOf, type Grown } from "./cells";
import { movedIn } from "./layout";
import { allNames, firstName, namedArea, STUDIO_PREFIX } from "./names";
import { pageOf } from "./page";
import {
	type Cell,
	type Rows,
	type Studio,
	settingAt,
	settingPlace,
	studioFrom,
} from "./studio";
import { quoted } from "./tokens";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** The Studio tab as it is now. */
interface Own {
	name: string;
	values: Rows;
	formulas: readonly (readonly string[])[];
}

/** Where the table of another studio tab lies now, and what that tab is called. */
interface Found {
	tab: Tab;
	sheet: string;
	area: Area;
}

/**
 * The studio in the workbook's tabs, or undefined where there are none.
 *
 * The Studio tab counts the rows of each other tab's table: the formula says where that table is now, and all of them
 * are read in one call.
 *
 * @throws InputError when some of its tabs are gone, or laid out in another way than their formulas know.
 */
export function readStudio(spreadsheet: Spreadsheet): Studio | undefined {
	const own = ownTab(spreadsheet);
	if (!own) return undefined;
	const settings = settingsIn(own);
	const found = otherTabs().map((tab) => foundBy(own, tab));
	const tabs = { ...byTab(found, ({ sheet }) => sheet), Studio: own.name };
	const table = (name: string) =>
		spreadsheet.getRange(addressOf(foundTab(found, name)));
	const rows = (name: string) => table(name).getValues() as Cell[][];
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
			cells: cellsOf(workbook().studioTabs, tabs, byTab(found, growthOf)),
			table,
			pours: once(() => rows("Pour log")),
		},
	);
}

const studioTab = (): Tab => {
	const [tab] = workbook().studioTabs;
	if (!tab) throw new Error("The studio has no tabs");
	return tab;
};

const otherTabs = () => workbook().studioTabs.slice(1);

/** @throws InputError when the studio has names, and not the one that leads to its first tab. */
function ownTab(spreadsheet: Spreadsheet): Own | undefined {
	const [name = "", ...others] = workbook().studioTabs.map(
		(tab) => STUDIO_PREFIX + firstName(tab),
	);
	const sheet = spreadsheet.getRangeByName(name)?.getSheet();
	if (sheet) return read(sheet);
	if (allNames(spreadsheet).some((there) => others.includes(there)))
		throw new InputError(
			`The name ${name} is gone, and its tab perhaps too: bring it back with File, Version history`,
		);
	return undefined;
}

function read(sheet: Sheet): Own {
	const cells = sheet.getDataRange();
	return {
		name: sheet.getName(),
		values: cells.getValues() as Cell[][],
		formulas: cells.getFormulas(),
	};
}

/** A tab's name, in quotes or not, and its cells; the function may have another name in another language. */
const COUNTED = /^=[^(]+\((?:'((?:[^']|'')+)'|([^'!]+))!([$A-Z\d:]+)\)$/;

/** @throws InputError where the Studio tab's formula leads nowhere. */
function foundBy({ name, values, formulas }: Own, tab: Tab): Found {
	const { row, column } = settingPlace(studioTab(), `rows_${firstName(tab)}`);
	const [, inQuotes, plain, a1] =
		COUNTED.exec(formulas[row]?.[column] ?? "") ?? [];
	const sheet = inQuotes?.replace(/''/g, "'") ?? plain;
	if (!sheet || !a1 || /^#/.test(String(values[row]?.[column])))
		throw new InputError(
			`${a1Of({ row, column, rows: 1, columns: 1 })} on the ${name} tab does not lead to the ${tab.name} tab any more, which is perhaps gone: bring it back with File, Version history`,
		);
	return { tab, sheet, area: areaOf(a1.replace(/\$/g, "")) };
}

const addressOf = ({ sheet, area }: Found): string =>
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
	found: readonly Found[],
	of: (one: Found) => T,
): Record<string, T> =>
	Object.fromEntries(found.map((one) => [one.tab.name, of(one)]));

function foundTab(found: readonly Found[], name: string): Found {
	const one = found.find(({ tab }) => tab.name === name);
	if (!one) throw new Error(`There is no template of ${name}`);
	return one;
}

/** By how many rows a table is longer than it was made. @throws InputError when it lies elsewhere: formulas lead to cells. */
function growthOf({ tab, area: now }: Found): Grown {
	const table = namedArea(tab, firstName(tab));
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
function settingsIn({ name, values }: Own): Record<string, Cell> {
	const tab = studioTab();
	const page = pageOf({
		tab,
		tokens: {
			// that it is one of the two can be said only once it is known to lie where it belongs
			units: settingAt(tab, "units", values) === "us" ? "us" : "metric",
			tabs: { [tab.name]: name },
			cells: cellsOf(workbook().studioTabs, {}),
		},
		prefix: STUDIO_PREFIX,
		slots: {},
	});
	const moved = movedIn(page, values);
	if (moved) throw new InputError(moved);
	return Object.fromEntries(
		tab.blocks.flatMap(({ slot }) =>
			slot === undefined ? [] : [[slot, settingAt(tab, slot, values)]],
		),
	);
}
