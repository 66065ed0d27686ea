/** Opens the tab of a job at one of its blocks. */
import { workbook } from "../../../templates/index";
import type { Tab } from "../../../templates/plan";
import { InputError } from "../../calc/errors";
import type { JobRegion } from "../../job/cells/jobcells";
import type { UnitSystem } from "../../job/reading/units";
import { type Area, a1Of, areaOf } from "../reading/a1";
import { blockPlace } from "../reading/blockplace";
import { jobPrefix } from "../reading/rangenames";
import { readJob } from "../reading/readjob";
import { areaIn } from "../reading/regiongrids";
import { cellsOf, textsOf } from "../writing/blockcells";
import { blockArea, pageOf } from "../writing/page";

/** Selects the block, such as `Job.pieces`, wherever it has moved; the tab's name. */
export function openBlock(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
	job: number,
	cell: string,
): string {
	const [name, key] = cell.split(".");
	const tab = workbook().jobTabs.find((one) => one.name === name);
	const block = tab?.blocks.find(
		({ slot, name: own }) => key !== undefined && [slot, own].includes(key),
	);
	if (!tab || !block) throw new InputError(`There is no cell ${cell} in a job`);
	const { regions, studio } = readJob(spreadsheet, job);
	const [[region, made] = ["", ""]] = Object.entries(tab.names ?? {});
	const read = regions[region as JobRegion];
	const area = blockArea(block);
	const sheet = read.range.getSheet();
	const now = areaIn(read.range);
	const place =
		blockPlace(
			area,
			{ region: made, texts: textsOf(pageFor(tab, job, studio.units)) },
			{ ...now, grid: read.grid },
		) ?? besideRegion(area, areaOf(made), now);
	spreadsheet.setActiveRange(sheet.getRange(a1Of(place)));
	return sheet.getName();
}

/** The tab as it was made. */
function pageFor(tab: Tab, job: number, units: UnitSystem) {
	const { studioTabs, jobTabs } = workbook();
	const prefix = jobPrefix(job);
	const cells = { ...cellsOf(studioTabs, {}), ...cellsOf(jobTabs, {}) };
	return pageOf({
		tab,
		tokens: { units, job: prefix, tabs: {}, cells },
		prefix,
		slots: {},
	});
}

/** What lies behind the region moves with its end, and all else with its beginning. */
function besideRegion(area: Area, made: Area, now: Area): Area {
	const isBehind = (at: number, from: number, size: number) =>
		at >= from + size;
	const down = isBehind(area.row, made.row, made.rows)
		? now.row + now.rows - made.row - made.rows
		: now.row - made.row;
	const right = isBehind(area.column, made.column, made.columns)
		? now.column + now.columns - made.column - made.columns
		: now.column - made.column;
	return {
		...area,
		row: Math.max(0, area.row + down),
		column: Math.max(0, area.column + right),
	};
}
