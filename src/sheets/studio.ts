/** What the studio tabs hold, or, before there are any, what they will start with. */
import { workbook } from "../../templates/index";
import { InputError } from "../calc/errors";
import type { UnitSystem } from "../job/reading/units";
import type { Slots } from "../template/plan";
import { cellsOf } from "./cells";

/** A cell's value as it was read. */
export type Cell = string | number | boolean | Date;

export interface Studio {
	/** False until the workbook has its studio tabs. */
	exists: boolean;
	/** What each studio tab is called in this workbook. */
	tabs: Readonly<Record<string, string>>;
	/** The cells of its blocks, as they lie in this workbook. */
	cells: Readonly<Record<string, string>>;
	units: UnitSystem;
	currency: string;
	mixerCapacity: Cell;
	gramDivision: Cell;
	waste: Cell;
	air: Cell;
	mixes: readonly (readonly Cell[])[];
	pigments: readonly (readonly Cell[])[];
	/** The Jobs tab's rows, blank ones too. */
	jobs: readonly (readonly Cell[])[];
	/** The Pour log's rows, read when asked for. */
	pours(): Rows;
	/** Every setting by its key. */
	setting(key: string): Cell;
	/** The table of each studio tab but the first; undefined until there are tabs. */
	table(tab: string): GoogleAppsScript.Spreadsheet.Range | undefined;
}

/** What is said where a workbook's studio is asked for something before there is one. */
export const NO_STUDIO =
	"This workbook has no studio tabs yet: choose Start a job, which makes them";

export type Rows = readonly (readonly Cell[])[];

export interface Read {
	setting(key: string): Cell;
	mixes: Rows;
	pigments: Rows;
	/** Column of the Jobs tab's numbers. */
	jobs: Rows;
}

export const studioFrom = (
	{ setting, mixes, pigments, jobs }: Read,
	rest: Pick<Studio, "exists" | "tabs" | "cells" | "table" | "pours">,
): Studio => ({
	...rest,
	setting,
	units: unitsOf(setting("units")),
	currency: String(setting("currency")),
	mixerCapacity: setting("mixer_capacity"),
	gramDivision: setting("gram_division"),
	waste: setting("waste"),
	air: setting("air"),
	mixes: filledRows(mixes),
	pigments: filledRows(pigments),
	jobs,
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
	const { starter, studioTabs } = workbook();
	const slots: Slots = starter[units];
	const tabs = Object.fromEntries(studioTabs.map(({ name }) => [name, name]));
	const rows = (name: string): Rows => {
		const data = slots[name] ?? "";
		return typeof data === "object" ? data : [[data]];
	};
	return studioFrom(
		{
			setting: (key) => rows(key)[0]?.[0] ?? "",
			mixes: rows("mixes"),
			pigments: rows("pigments"),
			jobs: [],
		},
		{
			exists: false,
			tabs,
			cells: cellsOf(studioTabs, tabs),
			table: () => undefined,
			pours: () => [],
		},
	);
}
