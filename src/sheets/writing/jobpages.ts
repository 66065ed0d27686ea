/** The pages of a new job, and those of a new studio. */
import { workbook } from "../../../templates/index";
import type { Slots } from "../../../templates/plan";
import type { UnitSystem } from "../../job/reading/units";
import type { JobMade } from "../messages";
import { jobPrefix, jobTabName, STUDIO_PREFIX } from "../reading/rangenames";
import type { StudioRead } from "../reading/readstudio";
import { cellsOf } from "./blockcells";
import { type Page, pageOf } from "./page";
import { studioCells } from "./studionow";
import type { Tokens } from "./tokens";

export interface JobPages {
	pages: Page[];
	made: JobMade;
	/** The cells of the job's line, as a formula writes them. */
	line: string;
	/** Cells that dropdowns take their lists from, by the key of the block. */
	lists: Readonly<Record<string, GoogleAppsScript.Spreadsheet.Range>>;
}

export function jobPages({
	number,
	units,
	studio,
	slots,
}: {
	number: number;
	units: UnitSystem;
	studio: StudioRead | undefined;
	slots: Slots;
}): JobPages {
	const { jobTabs } = workbook();
	const tabs = Object.fromEntries(
		jobTabs.map(({ name }) => [name, jobTabName(number, name)]),
	);
	const { cells: studios, lists } = studioCells(studio);
	const cells = { ...studios, ...cellsOf(jobTabs, tabs) };
	const prefix = jobPrefix(number);
	const tokens: Tokens = { units, job: prefix, tabs, cells };
	return {
		pages: jobTabs.map((tab) => pageOf({ tab, tokens, prefix, slots })),
		made: { number, tabs: Object.values(tabs) },
		line: cells["Job.summary"] ?? "",
		lists,
	};
}

/** The studio's tabs, on first use. */
export function studioPages(units: UnitSystem): Page[] {
	const { studioTabs, starter } = workbook();
	const tokens: Tokens = {
		units,
		tabs: Object.fromEntries(studioTabs.map(({ name }) => [name, name])),
		cells: cellsOf(studioTabs, {}),
	};
	return studioTabs.map((tab) =>
		pageOf({ tab, tokens, prefix: STUDIO_PREFIX, slots: starter[units] }),
	);
}
