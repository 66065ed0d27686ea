/** A job's row on the Jobs tab: its number, which leads to its tabs, and its summary. */
import { workbook } from "../../templates/index";
import type { Area } from "./a1";
import { firstName, namedArea } from "./names";
import { freeRow } from "./rows";
import type { Cell, Studio } from "./studio";

type Range = GoogleAppsScript.Spreadsheet.Range;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

const TAB = "Jobs";

/** The table's area in the template; it may be longer by now. */
export function jobsArea(): Area {
	const tab = workbook().studioTabs.find(({ name }) => name === TAB);
	if (!tab) throw new Error("There is no Jobs tab");
	return namedArea(tab, firstName(tab));
}

/** A job's number in the link to its tab. */
const LINKED = /"(\d{1,6})"\s*\)$/;

/**
 * The table's rows, whether calculated or not: a job's number is read from its link, and a formula is no blank cell.
 */
export function jobRows(table: Range): Cell[][] {
	const formulas = table.getFormulas();
	return (table.getValues() as Cell[][]).map((line, row) =>
		line.map((value, column) => {
			const formula = formulas[row]?.[column] ?? "";
			const linked = column === 0 && LINKED.exec(formula)?.[1];
			return linked ? Number(linked) : value === "" ? formula : value;
		}),
	);
}

/** Row of the tab, from 1, that a new job's row goes to. */
export const freeJobsRow = ({ exists, jobs }: Studio): number =>
	jobsArea().row + 1 + (exists ? freeRow(jobs, 1, TAB) : 0);

/** Row of the tab, from 1, that the job has; undefined where somebody took it away. */
export function jobsRowOf({ jobs }: Studio, job: number): number | undefined {
	const index = jobs.findIndex(([number]) => isNumber(number, job));
	return index < 0 ? undefined : jobsArea().row + 1 + index;
}

const isNumber = (cell: Cell | undefined, job: number): boolean =>
	cell !== "" && Number(cell) === job;

/** The largest number on the tab, 0 where there is none. */
export const lastJob = ({ jobs }: Studio): number =>
	jobs.reduce((last, [number]) => {
		const value = number === "" ? 0 : Number(number);
		return Number.isInteger(value) ? Math.max(last, value) : last;
	}, 0);

/** The whole row. */
export const jobsRange = (sheet: Sheet, row: number): Range =>
	sheet.getRange(row, jobsArea().column + 1, 1, jobsArea().columns);

/** `14`, and a click on it leads to the tab. */
export const linkTo = (sheet: Sheet, job: number): string =>
	`=HYPERLINK("#gid=${sheet.getSheetId()}";"${job}")`;

/** The job's summary beside its number; an error once columns were put in, here or there, for it would lie under other headings. */
export const summaryFrom = (cells: string): string =>
	`=IF((COLUMNS($B$1:$R$1)=17)*(COLUMNS(${cells})=17);ARRAYFORMULA(${cells});NA())`;
