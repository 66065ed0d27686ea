/** The Studio tab: its settings, and what it knows of the other studio tabs. */
import { workbook } from "../../templates/index";
import { InputError } from "../calc/errors";
import type { Tab } from "../template/plan";
import { type Area, a1Of, areaOf } from "./a1";
import { cellsOf } from "./cells";
import { movedIn } from "./layout";
import { allNames, firstName, STUDIO_PREFIX } from "./names";
import { pageOf } from "./page";
import type { Cell, Rows } from "./studio";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** The tab as it is now. */
export interface StudioTab {
	name: string;
	values: Rows;
	formulas: readonly (readonly string[])[];
}

/** Where the table of another studio tab lies now, and what that tab is called. */
export interface FoundTable {
	tab: Tab;
	sheet: string;
	area: Area;
}

/**
 * The tab, or undefined in a workbook without a studio.
 *
 * @throws InputError when the studio has names, and not the one that leads to its first tab.
 */
export function studioTab(spreadsheet: Spreadsheet): StudioTab | undefined {
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

function read(sheet: Sheet): StudioTab {
	const cells = sheet.getDataRange();
	return {
		name: sheet.getName(),
		values: cells.getValues() as Cell[][],
		formulas: cells.getFormulas(),
	};
}

/** Every setting by its key. @throws InputError when they are in another order than they were made. */
export function settingsIn({ name, values }: StudioTab): Record<string, Cell> {
	const tab = template();
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

/** A tab's name, in quotes or not, and its cells; the function may have another name in another language. */
const COUNTED = /^=[^(]+\((?:'((?:[^']|'')+)'|([^'!]+))!([$A-Z\d:]+)\)$/;

/** Where the table of a studio tab lies, by the formula that counts its rows. @throws InputError where that leads nowhere. */
export function foundBy({ name, formulas }: StudioTab, tab: Tab): FoundTable {
	const { row, column } = settingPlace(template(), `rows_${firstName(tab)}`);
	const [, inQuotes, plain, a1] =
		COUNTED.exec(formulas[row]?.[column] ?? "") ?? [];
	const sheet = inQuotes?.replace(/''/g, "'") ?? plain;
	if (!sheet || !a1)
		throw new InputError(
			`${a1Of({ row, column, rows: 1, columns: 1 })} on the ${name} tab does not lead to the ${tab.name} tab any more, which is perhaps gone: bring it back with File, Version history`,
		);
	return { tab, sheet, area: areaOf(a1.replace(/\$/g, "")) };
}

/** Where a setting stands on the Studio tab. */
function settingPlace(tab: Tab, key: string): Area {
	const block = tab.blocks.find(({ slot }) => slot === key);
	if (!block) throw new Error(`There is no setting ${key}`);
	return areaOf(block.at);
}

/** A setting's value among all values of the Studio tab. */
function settingAt(tab: Tab, key: string, values: Rows): Cell {
	const { row, column } = settingPlace(tab, key);
	return values[row]?.[column] ?? "";
}

const template = (): Tab => {
	const [tab] = workbook().studioTabs;
	if (!tab) throw new Error("The studio has no tabs");
	return tab;
};
