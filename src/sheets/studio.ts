/** What the studio tabs hold, or, before there are any, what they will start with. */
import { starter, studioTabs } from "../../templates/index";
import { studio } from "../../templates/studio";
import { InputError } from "../calc/errors";
import type { UnitSystem } from "../template/job";
import type { Slots } from "../template/plan";
import { areaOf } from "./a1";
import { firstName, STUDIO_PREFIX } from "./names";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** A cell's value as it was read. */
export type Cell = string | number | boolean | Date;

export interface Studio {
	/** False until the workbook has its studio tabs. */
	exists: boolean;
	/** What each studio tab is called in this workbook. */
	tabs: Readonly<Record<string, string>>;
	units: UnitSystem;
	currency: string;
	mixerCapacity: Cell;
	gramDivision: Cell;
	waste: Cell;
	air: Cell;
	mixes: readonly (readonly Cell[])[];
	pigments: readonly (readonly Cell[])[];
}

type Rows = readonly (readonly Cell[])[];

/** The row of each setting within the range that is named for all of them. */
const SETTING_ROWS: ReadonlyMap<string, number> = (() => {
	const first = areaOf(studio.names?.settings?.split(":")[0] ?? "").row;
	return new Map(
		studio.blocks.flatMap(({ slot, at }): [string, number][] =>
			slot === undefined ? [] : [[slot, areaOf(at).row - first]],
		),
	);
})();

interface Read {
	setting(key: string): Cell;
	mixes: Rows;
	pigments: Rows;
}

const studioFrom = (
	{ setting, mixes, pigments }: Read,
	rest: Pick<Studio, "exists" | "tabs">,
): Studio => ({
	...rest,
	units: unitsOf(setting("units")),
	currency: String(setting("currency")),
	mixerCapacity: setting("mixer_capacity"),
	gramDivision: setting("gram_division"),
	waste: setting("waste"),
	air: setting("air"),
	mixes: filledRows(mixes),
	pigments: filledRows(pigments),
});

const filledRows = (rows: Rows): Rows =>
	rows.filter(([name]) => name !== undefined && name !== "");

function unitsOf(cell: Cell): UnitSystem {
	if (cell === "metric" || cell === "us") return cell;
	throw new InputError(
		`Units on the Studio tab must be metric or us, got ${String(cell) || "nothing"}: undo that change first`,
	);
}

/** The studio of a workbook without studio tabs. */
export function starterStudio(units: UnitSystem): Studio {
	const slots: Slots = starter[units];
	const rows = (name: string): Rows => {
		const data = slots[name] ?? "";
		return typeof data === "object" ? data : [[data]];
	};
	return studioFrom(
		{
			setting: (key) => rows(key)[0]?.[0] ?? "",
			mixes: rows("mixes"),
			pigments: rows("pigments"),
		},
		{
			exists: false,
			tabs: Object.fromEntries(studioTabs.map(({ name }) => [name, name])),
		},
	);
}

/** The name by which each studio tab is found, whatever it is called now. */
const FOUND_BY = studioTabs.map((tab) => ({
	tab: tab.name,
	name: STUDIO_PREFIX + firstName(tab),
}));

/**
 * The studio in the workbook's tabs, or undefined where there are none.
 *
 * @throws InputError when some of its tabs are gone.
 */
export function readStudio(spreadsheet: Spreadsheet): Studio | undefined {
	const found = FOUND_BY.map(({ tab, name }) => ({
		tab,
		name,
		range: spreadsheet.getRangeByName(name),
	}));
	if (found.every(({ range }) => range === null)) return undefined;
	const [settings = [], mixes = [], pigments = []] = found.map(
		({ name, range }) => {
			if (range) return range.getValues() as Cell[][];
			throw new InputError(
				`The name ${name} is gone, and its tab perhaps too: bring it back with File, Version history`,
			);
		},
	);
	return studioFrom(
		{
			setting: (key) => settings[SETTING_ROWS.get(key) ?? -1]?.[0] ?? "",
			mixes,
			pigments,
		},
		{
			exists: true,
			tabs: Object.fromEntries(
				found.map(({ tab, range }) => [
					tab,
					range?.getSheet().getName() ?? tab,
				]),
			),
		},
	);
}
