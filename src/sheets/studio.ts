/** What the studio tabs hold, or, before there are any, what they will start with. */
import { starter, studioTabs } from "../../templates/index";
import { InputError } from "../calc/errors";
import type { UnitSystem } from "../template/job";
import type { Slots } from "../template/plan";
import { STUDIO_PREFIX } from "./names";

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

/** The studio whose blocks `rows` answers by name. */
function studioFrom(
	rows: (name: string) => Rows,
	rest: Pick<Studio, "exists" | "tabs">,
): Studio {
	const one = (name: string): Cell => rows(name)[0]?.[0] ?? "";
	return {
		...rest,
		units: unitsOf(one("units")),
		currency: String(one("currency")),
		mixerCapacity: one("mixer_capacity"),
		gramDivision: one("gram_division"),
		waste: one("waste"),
		air: one("air"),
		mixes: filledRows(rows("mixes")),
		pigments: filledRows(rows("pigments")),
	};
}

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
	return studioFrom(rows, {
		exists: false,
		tabs: Object.fromEntries(studioTabs.map(({ name }) => [name, name])),
	});
}

/** The names that the studio tabs have. */
const studioNames = (): string[] =>
	studioTabs.flatMap(({ blocks }) =>
		blocks.flatMap(({ name }) =>
			name === undefined ? [] : [STUDIO_PREFIX + name],
		),
	);

/** The studio in the workbook's tabs, or undefined where there are none; `names` are all names of the workbook. */
export function readStudio(
	spreadsheet: Spreadsheet,
	names: readonly string[],
): Studio | undefined {
	const there = new Set(names.map((name) => name.toLowerCase()));
	if (!studioNames().some((name) => there.has(name))) return undefined;
	const named = (name: string) => {
		const range = spreadsheet.getRangeByName(STUDIO_PREFIX + name);
		if (range) return range;
		throw new InputError(
			`The name ${STUDIO_PREFIX}${name} is gone, and its tab perhaps too: bring it back with File, Version history`,
		);
	};
	return studioFrom((name) => named(name).getValues() as Cell[][], {
		exists: true,
		tabs: Object.fromEntries(
			studioTabs.map((tab) => {
				const block = tab.blocks.find(({ name }) => name !== undefined);
				return [
					tab.name,
					named(block?.name ?? "")
						.getSheet()
						.getName(),
				];
			}),
		),
	});
}
