/** The studio and its jobs as the panel wants them. */
import type { UnitSystem } from "../job/reading/units";
import type { PanelStart } from "./messages";
import { allNames, jobNumbers, jobPrefix } from "./names";
import { openJob } from "./openjob";
import { readStudio } from "./readstudio";
import { starterStudio } from "./studio";
import { jobStudio } from "./typedstudio";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** Everything the panel needs to answer as one types. */
export function startOf(spreadsheet: Spreadsheet): PanelStart {
	const locale = spreadsheet.getSpreadsheetLocale();
	const studio = readStudio(spreadsheet) ?? starterStudio(usualUnits(locale));
	return {
		units: studio.units,
		unitsFixed: studio.exists,
		studio: jobStudio(studio),
		...(!studio.exists && {
			inOtherUnits: jobStudio(
				starterStudio(studio.units === "us" ? "metric" : "us"),
			),
		}),
		jobs: jobNumbers(allNames(spreadsheet)).map((number) => ({
			number,
			title: titleOf(spreadsheet, number),
		})),
		open: openJob(spreadsheet),
		separator: separatorOf(locale),
	};
}

const usualUnits = (locale: string): UnitSystem =>
	locale === "en_US" ? "us" : "metric";

/** `;` where the file writes decimals with a comma. */
function separatorOf(locale: string): string {
	const shown = new Intl.NumberFormat(locale.replace("_", "-")).format(1.5);
	return shown.includes(",") ? ";" : ",";
}

function titleOf(spreadsheet: Spreadsheet, job: number): string {
	const range = spreadsheet.getRangeByName(`${jobPrefix(job)}title`);
	return range ? String(range.getValue()) : "";
}
