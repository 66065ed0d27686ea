/** A job's checks, as its Job tab has them. */
import { InputError } from "../calc/errors";
import type { JobChecks } from "./messages";
import { filledRows } from "./plain";
import { readJob } from "./readjob";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;

/** What is not fine first, the worst of it before the rest; writes nothing. */
export function checksOf(spreadsheet: Spreadsheet, job: number): JobChecks {
	const read = readJob(spreadsheet, job, ["Job"]);
	const rows = filledRows(read.cells("Job.checks")).map(
		([what = "", result = "", weight, cell = ""]) => ({
			what: String(what),
			result: String(result),
			weight: typeof weight === "number" ? weight : 1,
			cell: String(cell),
		}),
	);
	const severity = ({ result, weight }: (typeof rows)[number]): number =>
		result === "fine" ? 0 : weight;
	return {
		number: job,
		title: String(read.cell("Job.title")),
		rows: rows.sort((a, b) => severity(b) - severity(a)),
	};
}

/** Opens the tab of a job and selects the cell; answers the tab's name. */
export function cellShown(
	spreadsheet: Spreadsheet,
	job: number,
	cell: string,
): string {
	const [, tab, a1] = /^(.+)!([A-Z]+\d+)$/.exec(cell) ?? [];
	const found = readJob(spreadsheet, job, [tab ?? ""]).tabs[0];
	if (!found || a1 === undefined)
		throw new InputError(`There is no cell ${cell} in a job`);
	spreadsheet.setActiveRange(found.sheet.getRange(a1));
	return found.page.name;
}
