/** The cells of the studio's tabs that the formulas and the dropdowns of a new job lead to. */
import { workbook } from "../../../templates/index";
import type { UnitSystem } from "../../job/reading/units";
import type { StudioRead } from "../reading/readstudio";
import { areaIn, type RegionRead } from "../reading/regiongrids";
import { cellsNow, cellsOf } from "./blockcells";
import { studioPage } from "./studiopage";

/** The regions that a job's tabs lead to otherwise than by their names. */
const LED_TO = ["settings", "mixes", "pigments"] as const;

/** `Studio.currency` to `'Studio'!$B$4`, wherever it has moved; of tabs that do not exist yet, as they will be made. */
export function studioCells(
	studio: StudioRead | undefined,
): Record<string, string> {
	if (!studio) return cellsOf(workbook().studioTabs, {});
	const { units, regions } = studio;
	return Object.assign(
		{},
		...LED_TO.map((region) => regionCells(region, units, regions[region])),
	);
}

function regionCells(
	name: string,
	units: UnitSystem,
	{ range, grid }: RegionRead,
): Record<string, string> {
	const { page, region } = studioPage(name, units);
	const { row, column } = areaIn(range);
	return cellsNow(page, region, range.getSheet().getName(), {
		row,
		column,
		grid,
	});
}
