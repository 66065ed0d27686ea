/** The cells of the studio's tabs that the formulas and the dropdowns of a new job lead to. */
import { workbook } from "../../../templates/index";
import type { UnitSystem } from "../../job/reading/units";
import { blockPlace } from "../reading/blockplace";
import type { StudioRead } from "../reading/readstudio";
import { areaIn, type RegionRead } from "../reading/regiongrids";
import { cellsNow, cellsOf, textsOf } from "./blockcells";
import { blockArea } from "./page";
import { studioPage } from "./studiopage";

type Range = GoogleAppsScript.Spreadsheet.Range;

/** What the tabs of a new job lead to. */
interface StudioCells {
	/** `Studio.currency` to `'Studio'!$B$4`, as formulas write it; a list by its own key. */
	cells: Readonly<Record<string, string>>;
	/** Cells that dropdowns take their lists from: `Mixes.names`. */
	lists: Readonly<Record<string, Range>>;
}

/** Where they are now; of tabs that do not exist yet, where they will be. */
export function studioCells(studio: StudioRead | undefined): StudioCells {
	if (!studio) return { cells: cellsOf(workbook().studioTabs, {}), lists: {} };
	const { units, regions } = studio;
	const { range, grid } = regions.settings;
	const { page, region } = studioPage("settings", units);
	const { row, column } = areaIn(range);
	const lists = {
		...listsOf("mixes", units, regions.mixes),
		...listsOf("pigments", units, regions.pigments),
	};
	return {
		cells: {
			...cellsNow(page, region, range.getSheet().getName(), {
				row,
				column,
				grid,
			}),
			...Object.fromEntries(Object.keys(lists).map((key) => [key, key])),
		},
		lists,
	};
}

/** The names in a table of the studio. */
function listsOf(
	name: string,
	units: UnitSystem,
	{ range, grid }: RegionRead,
): Record<string, Range> {
	const { page, region } = studioPage(name, units);
	const block = page.tab.blocks.find(({ slot }) => slot === "names");
	const place =
		block &&
		blockPlace(
			blockArea(block),
			{ region, texts: textsOf(page) },
			{ row: 0, column: 0, grid },
		);
	if (!place) return {};
	const { row, column, rows, columns } = place;
	return {
		[`${page.tab.name}.names`]: range.offset(row, column, rows, columns),
	};
}
