/** Opens a closed job again: its tabs are made anew from the file that it keeps, then the closed ones go. */
import { workbook } from "../../../templates/index";
import { InputError } from "../../calc/errors";
import { isKnown } from "../../job/answers/known";
import { paidAnswer } from "../../job/answers/money/paid";
import type { PaymentRow } from "../../job/fields/cost";
import { JOB_LINE } from "../../job/fields/jobline";
import type { JobFile } from "../../job/jobfile";
import type { JobMade } from "../messages";
import { CLOSED, jobPrefix, jobTabName } from "../reading/rangenames";
import { readTrade } from "../reading/readstudio";
import { insistently } from "../writing/allornothing";
import {
	type JobsTable,
	jobRow,
	jobsRowOf,
	jobsTable,
	lineCells,
} from "../writing/jobsrow";
import { noteDone } from "../writing/journal";
import { writeInto } from "./createjob";
import { closedBefore, removeTabs } from "./removetabs";
import { takeTurn } from "./taketurn";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** The job's tabs. @throws InputError where no job of this number is closed. */
export function reopenJob(spreadsheet: Spreadsheet, number: number): JobMade {
	takeTurn(spreadsheet);
	const kept = spreadsheet.getRangeByName(jobPrefix(number) + CLOSED);
	if (!kept)
		throw new InputError(`There is no closed job ${number} in this workbook`);
	const table = jobsTable(spreadsheet);
	const row = jobRow(table, number);
	const file = fileIn(kept.getValues() as unknown[][], number);
	const job = withLaterPayments(table, number, file);
	const aside = closedTabs(spreadsheet, number, kept.getSheet());
	const studio = readTrade(spreadsheet);
	const made = writeInto(spreadsheet, studio, job, { number, aside });
	const why = insistently(() => {
		removeTabs(spreadsheet, closedBefore(number, aside), row);
		noteDone({ act: "making", job: number });
	});
	if (why)
		throw new Error(
			`Job ${number} is open again, and its closed tabs are not all gone yet: the next call takes them away. (${why})`,
		);
	return made;
}

/** @throws InputError where somebody typed over it, or a former version closed the job. */
function fileIn(cells: readonly (readonly unknown[])[], job: number): JobFile {
	try {
		return JSON.parse(cells.flat().join("")) as JobFile;
	} catch {
		throw new InputError(
			`Job ${job} keeps no file that it could be opened from: its values are in its hidden tabs`,
		);
	}
}

/** The job's closed tabs by id, with their names; the first has the file, whatever it is called now. */
function closedTabs(
	spreadsheet: Spreadsheet,
	job: number,
	first: Sheet,
): [id: number, name: string][] {
	const names = workbook().jobTabs.map(({ name }) => jobTabName(job, name));
	return spreadsheet
		.getSheets()
		.map((sheet): [number, string] => [sheet.getSheetId(), sheet.getName()])
		.filter(([id, name]) => id === first.getSheetId() || names.includes(name));
}

/** What was typed as received on the Jobs tab while the job was closed becomes payments. */
function withLaterPayments(
	table: JobsTable,
	number: number,
	job: JobFile,
): JobFile {
	const row = jobsRowOf(table, number);
	if (row === undefined) return job;
	const [values = []] = lineCells(table, row).getValues() as unknown[][];
	const paid = paidAnswer({ job, units: job.units });
	const later = (["deposit", "balance"] as const).flatMap(
		(what): PaymentRow[] => {
			const now = values[Object.keys(JOB_LINE).indexOf(`${what}Received`)];
			const before = paid[what];
			if (typeof now !== "number" || !isKnown(before)) return [];
			const cents = Math.round((now - before.is) * 100);
			return cents === 0 ? [] : [{ for: what, amount: cents / 100 }];
		},
	);
	return later.length === 0
		? job
		: { ...job, payments: [...(job.payments ?? []), ...later] };
}
