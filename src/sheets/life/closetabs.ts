/** Puts the values of a job's tabs in the place of their formulas; begun again, it goes on where it was. */
import { InputError } from "../../calc/errors";
import { JOB_LINE } from "../../job/fields/jobline";
import type { JobFile } from "../../job/jobfile";
import { columnLetters } from "../reading/a1";
import { CLOSED, jobOfName, jobPrefix } from "../reading/rangenames";
import { readJob } from "../reading/readjob";
import { hasStudio } from "../reading/readstudio";
import { isUnready, notReady } from "../reading/unready";
import { throughout } from "../writing/allornothing";
import { keptAsText } from "../writing/content";
import { GENERAL, PLAIN_TEXT } from "../writing/formats";
import { jobsRowOf, jobsTable, lineCells } from "../writing/jobsrow";
import { type Ending, noteBegun, noteDone } from "../writing/journal";
import { RISKY } from "../writing/typedcell";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;
type Step = () => unknown;

/**
 * Names of the tabs, which hold values now and are out of sight.
 *
 * Everything is read before anything is written. Whatever is done already shows what it showed, so that a failure in
 * the middle harms nothing, and the next call finishes the rest.
 *
 * The first tab keeps the job's file: from then on the name of closed jobs leads to it.
 *
 * @throws InputError when a cell is not calculated yet.
 */
export function closeTabs(
	spreadsheet: Spreadsheet,
	entry: Ending,
	file?: JobFile,
): string[] {
	const { job, tabs } = entry;
	const sheets = spreadsheet
		.getSheets()
		.filter((sheet) => tabs.includes(sheet.getSheetId()));
	const [first] = sheets;
	const names = sheets.map((sheet) => sheet.getName());
	const ranges = sheets.map((sheet) => sheet.getDataRange());
	const values = sheets.flatMap((sheet) =>
		valueSteps({ sheet, range: sheet.getDataRange() }),
	);
	const line = lineOf(spreadsheet, job);
	const closed = jobPrefix(job) + CLOSED;
	const isKept = spreadsheet.getRangeByName(closed) !== null;
	const keeping =
		first && !isKept
			? keptFile(first, entry, file ?? readJob(spreadsheet, job).job)
			: undefined;
	const others = spreadsheet
		.getNamedRanges()
		.filter((name) => jobOfName(name.getName()) === job)
		.filter((name) => name.getName() !== closed);
	throughout(
		`Job ${job} is closed in part, and shows what it showed: choose Close a job again to finish`,
		[
			() => noteBegun(entry),
			// A value that was pasted past its rule is kept too.
			...ranges.map((range) => () => range.setDataValidation(null)),
			...values,
			...(line ? valueSteps(line.cells) : []),
			// rows put in make what leads to the tab calculate: only once that is values
			...(keeping?.steps ?? []),
			() => keeping && spreadsheet.setNamedRange(closed, keeping.cells()),
			...others.map((name) => () => name.remove()),
			...sheets.map((sheet) => () => sheet.hideSheet()),
			...(line?.owed ?? []),
			() => SpreadsheetApp.flush(),
			() => noteDone(entry),
		],
	);
	return names;
}

/** No cell takes more than 50,000 letters. */
const LETTERS = 40_000;

/** Keeps the job's file in rows of its own below a tab, from which the job is opened again. */
function keptFile(
	sheet: Sheet,
	{ rows = sheet.getMaxRows() }: Ending,
	file: JobFile,
): { cells: () => Range; steps: Step[] } {
	const text = JSON.stringify(file);
	const parts = Array.from(
		{ length: Math.ceil(text.length / LETTERS) },
		(_, part) => [text.slice(part * LETTERS, (part + 1) * LETTERS)],
	);
	const cells = () => sheet.getRange(rows + 1, 1, parts.length, 1);
	const isThere = sheet.getMaxRows() > rows;
	return {
		cells,
		steps: [
			() => !isThere && sheet.insertRowsAfter(rows, parts.length),
			() => cells().setNumberFormat(PLAIN_TEXT),
			() => cells().setValues(parts),
		],
	};
}

interface Line {
	cells: Cells;
	/** Writes what is still to be paid as what is left of the total after what is received. */
	owed: readonly Step[];
}

/** The job's line on the Jobs tab; its number goes on leading to the tabs. */
function lineOf(spreadsheet: Spreadsheet, job: number): Line | undefined {
	const table = hasStudio(spreadsheet) ? jobsTable(spreadsheet) : undefined;
	const row = table && jobsRowOf(table, job);
	if (!table || row === undefined) return undefined;
	const range = lineCells(table, row);
	const column = table.place.line + 1;
	const cells = { sheet: range.getSheet(), range, row, column };
	return { cells, owed: owedSteps(cells) };
}

/** Payments that come once the job is closed are typed beside those received, and still count. */
function owedSteps({ sheet, range, row, column }: Cells): Step[] {
	const [values = []] = range.getValues() as unknown[][];
	const [toPay, ...received] = (
		["toPay", "depositReceived", "balanceReceived"] as const
	).map((key) => {
		const at = Object.keys(JOB_LINE).indexOf(key);
		return { value: values[at], column: column + at };
	});
	const amounts = [toPay, ...received].map((one) => one?.value);
	if (!toPay || amounts.some((amount) => typeof amount !== "number")) return [];
	const cents = Math.round((amounts as number[]).reduce((a, b) => a + b) * 100);
	const less = received.map((one) => `-${columnLetters(one.column - 1)}${row}`);
	return [
		() =>
			sheet
				.getRange(row, toPay.column)
				.setFormula(`=ROUND(${cents}/100${less.join("")};2)`),
	];
}

/** Cells of a tab; row and column of the first count from 1. */
interface Cells {
	sheet: Sheet;
	range: GoogleAppsScript.Spreadsheet.Range;
	row: number;
	column: number;
}

/** Writes what the cells show; nothing where no cell has a formula. */
function valueSteps({ sheet, range }: Pick<Cells, "sheet" | "range">): Step[] {
	const formulas = range.getFormulas();
	if (formulas.flat().every((formula) => formula === "")) return [];
	const values = range.getValues() as unknown[][];
	if (values.flat().some(isUnready))
		throw new InputError(notReady(sheet.getName()));
	const before = range.getNumberFormats();
	// written again, a text that looks like a formula would become one: its cell is plain text no more, and takes the mark
	const formats = before.map((line, row) =>
		line.map((format, column) =>
			format === PLAIN_TEXT && RISKY.test(String(values[row]?.[column]))
				? GENERAL
				: format,
		),
	);
	const written = values.map((line, row) =>
		line.map((value, column) =>
			formats[row]?.[column] === PLAIN_TEXT ? value : keptAsText(value),
		),
	);
	const isOther = formats.flat().join() !== before.flat().join();
	return [
		...(isOther ? [() => range.setNumberFormats(formats)] : []),
		() => range.setValues(written),
	];
}
