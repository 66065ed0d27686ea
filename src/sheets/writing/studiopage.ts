/** A tab of the studio as it was made, by the name of its region. */
import { workbook } from "../../../templates/index";
import type { UnitSystem } from "../../job/reading/units";
import { STUDIO_PREFIX } from "../reading/rangenames";
import { cellsOf } from "./blockcells";
import { type Page, pageOf } from "./page";

export interface StudioPage {
	page: Page;
	/** A1 of the region in it. */
	region: string;
}

export function studioPage(region: string, units: UnitSystem): StudioPage {
	const { studioTabs } = workbook();
	const tab = studioTabs.find(({ names = {} }) => names[region] !== undefined);
	const a1 = tab?.names?.[region];
	if (!tab || a1 === undefined)
		throw new Error(`No tab has the region ${region}`);
	const page = pageOf({
		tab,
		tokens: { units, tabs: {}, cells: cellsOf(studioTabs, {}) },
		prefix: STUDIO_PREFIX,
		slots: {},
	});
	return { page, region: a1 };
}
