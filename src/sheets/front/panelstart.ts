/** The studio and its jobs as the panel wants them. */
import { workbook } from "../../../templates/index";
import type { UnitSystem } from "../../job/reading/units";
import type { PanelStart } from "../messages";
import { allNames, jobNumbers, jobPrefix } from "../reading/rangenames";
import { readStudio } from "../reading/readstudio";
import { openJob } from "./openjob";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** Everything the panel needs to answer as one types. */
export function panelStartOf(spreadsheet: Spreadsheet): PanelStart {
	const locale = spreadsheet.getSpreadsheetLocale();
	const studio = readStudio(spreadsheet);
	const units = studio?.units ?? usualUnits(locale);
	const { starterStudios } = workbook();
	return {
		units,
		unitsFixed: studio !== undefined,
		studio: studio?.file ?? starterStudios[units],
		...(!studio && {
			inOtherUnits: starterStudios[units === "us" ? "metric" : "us"],
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
