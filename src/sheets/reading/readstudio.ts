/** The studio as the workbook's tabs have it now, whatever they are called and wherever its cells have moved. */
import { InputError } from "../../calc/errors";
import {
	STUDIO_REGIONS,
	type StudioRegion,
	studioIn,
} from "../../job/cells/studiocells";
import type { UnitSystem } from "../../job/reading/units";
import type { StudioFile } from "../../job/studiofile";
import { allNames, STUDIO_PREFIX } from "./rangenames";
import {
	goneText,
	namedCells,
	type RegionRead,
	regionRead,
} from "./regiongrids";
import { byRegion } from "./regionof";
import { checkVersion } from "./workbookversion";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

/** What a job is held against, and what it is worked out from. */
const HELD = ["mixes", "pigments"] as const;
const NEEDED = [...HELD, "swatches", "stock"] as const;

export interface StudioRead {
	/** Without its log and its jobs, which grow. */
	file: StudioFile;
	units: UnitSystem;
	regions: Readonly<Record<(typeof HELD)[number] | "settings", RegionRead>>;
}

/** What is said where a workbook's studio is asked for something before there is one. */
export const NO_STUDIO =
	"This workbook has no studio tabs yet: choose Start a job, which makes them";

/**
 * The studio in the workbook's tabs, or undefined where there are none.
 *
 * @throws InputError when a name, a label or a heading is gone, or when another version of Tonefold made the tabs.
 */
export const readStudio = (spreadsheet: Spreadsheet): StudioRead | undefined =>
	studioBy(spreadsheet, NEEDED);

/** The same without swatches and stock, of which no job is made. */
export const readTrade = (spreadsheet: Spreadsheet): StudioRead | undefined =>
	studioBy(spreadsheet, HELD);

function studioBy(
	spreadsheet: Spreadsheet,
	needed: typeof HELD | typeof NEEDED,
): StudioRead | undefined {
	const settings = settingsCells(spreadsheet);
	if (!settings) return undefined;
	const regions = {
		...regionsRead(spreadsheet, needed),
		settings: regionRead(settings),
	};
	const { units, ...file } = byRegion(regions, ["settings"], studioIn);
	return { file, units, regions };
}

/** The studio, which has to be there. @throws InputError where there is none, too. */
export function studioOf(spreadsheet: Spreadsheet): StudioRead {
	const studio = readTrade(spreadsheet);
	if (!studio) throw new InputError(NO_STUDIO);
	return studio;
}

/** Everything typed about the studio, its log and its jobs too. @throws InputError where there is none. */
export function wholeStudio(spreadsheet: Spreadsheet): StudioFile {
	if (!hasStudio(spreadsheet)) throw new InputError(NO_STUDIO);
	const { units: _, ...file } = byRegion(
		regionsRead(spreadsheet, STUDIO_REGIONS),
		["settings"],
		studioIn,
	);
	return file;
}

const regionsRead = <R extends StudioRegion>(
	spreadsheet: Spreadsheet,
	regions: readonly R[],
) =>
	Object.fromEntries(
		regions.map((region) => [region, studioRegion(spreadsheet, region)]),
	) as Record<R, RegionRead>;

/** One of the studio's regions. @throws InputError where its name is gone. */
export const studioRegion = (
	spreadsheet: Spreadsheet,
	region: StudioRegion,
): RegionRead => regionRead(namedCells(spreadsheet, STUDIO_PREFIX + region));

/** Whether the workbook has the studio's tabs. @throws InputError as reading them does. */
export const hasStudio = (spreadsheet: Spreadsheet): boolean =>
	settingsCells(spreadsheet) !== undefined;

/**
 * The cells of the settings; undefined where the workbook has no studio.
 *
 * @throws InputError when another version made them, or when they have names, and not the one that leads to the first.
 */
function settingsCells(spreadsheet: Spreadsheet): Range | undefined {
	const [first = "", ...others] = STUDIO_REGIONS.map(
		(region) => STUDIO_PREFIX + region,
	);
	const settings = spreadsheet.getRangeByName(first);
	if (settings) {
		checkVersion(spreadsheet);
		return settings;
	}
	if (allNames(spreadsheet).some((name) => others.includes(name)))
		throw new InputError(goneText(first));
	return undefined;
}
