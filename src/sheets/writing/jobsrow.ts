/** A job's row on the Jobs tab: its number, which leads to its tabs, and its line. */
import { InputError } from "../../calc/errors";
import { type Grid, placeOf } from "../../job/cells/regions";
import { JOB_LINE, JOBS_ROW } from "../../job/fields/jobline";
import type { UnitSystem } from "../../job/reading/units";
import { type Area, areaOf, columnLetters } from "../reading/a1";
import { STUDIO_PREFIX } from "../reading/rangenames";
import { areaIn, namedCells } from "../reading/regiongrids";
import { textsOf } from "./blockcells";
import { freeRow } from "./newrows";
import { studioPage } from "./studiopage";

type Range = GoogleAppsScript.Spreadsheet.Range;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

const NAME = "jobs";

const LINE = Object.keys(JOB_LINE).length;

/** Where a job's number and the first cell of its line stand, and the first of the rows; counted from 0, on the tab. */
interface JobsPlace {
	job: number;
	line: number;
	row: number;
	/** How many rows there are. */
	rows: number;
}

/** The Jobs tab as it is now. */
export interface JobsTable {
	range: Range;
	place: JobsPlace;
	/** The number that is typed or linked in each row. */
	numbers: readonly (number | undefined)[];
	/** Which rows hold anything, calculated or not. */
	filled: readonly boolean[];
}

/** A job's number in the link to its tab. */
const LINKED = /"(\d{1,6})"\s*\)$/;

/** @throws InputError where a heading is gone, or a column stands in a job's line, which is one formula. */
function jobsPlace(
	grid: Grid,
	{ row, column }: Pick<Area, "row" | "column">,
	tab: () => string,
): JobsPlace {
	// no heading of the tab holds a unit
	const place = placeOf(JOBS_ROW, grid, "metric");
	const { job = 0, client = 0, ...rest } = place.columns;
	if (Object.values(rest).some((at, index) => at !== client + index + 1))
		throw new InputError(
			`On the ${tab()} tab columns were added or moved between Client and ${JOB_LINE.toPay.label}. Undo that, then try again`,
		);
	return {
		job: column + job,
		line: column + client,
		row: row + place.row + 1,
		rows: place.end - place.row - 1,
	};
}

/** The table of a tab that is made with the first job. */
export function newJobsPlace(units: UnitSystem): { tab: string } & JobsPlace {
	const { page, region } = studioPage(NAME, units);
	const area = areaOf(region);
	const grid = textsOf(page)
		.slice(area.row, area.row + area.rows)
		.map((row) => row.slice(area.column, area.column + area.columns));
	return { tab: page.name, ...jobsPlace(grid, area, () => page.name) };
}

/** @throws InputError where the tab's name is gone, or its headings are not as they were. */
export function jobsTable(
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
): JobsTable {
	const range = namedCells(spreadsheet, STUDIO_PREFIX + NAME);
	const values = range.getValues() as unknown[][];
	const formulas = range.getFormulas();
	const first = areaIn(range);
	const place = jobsPlace(values, first, () => range.getSheet().getName());
	const rows = Array.from(
		{ length: place.rows },
		(_, index) => place.row - first.row + index,
	);
	const at = place.job - first.column;
	return {
		range,
		place,
		numbers: rows.map((row) => {
			const linked = LINKED.exec(formulas[row]?.[at] ?? "")?.[1];
			const typed = linked ?? values[row]?.[at];
			return typed === "" ? undefined : Number(typed);
		}),
		filled: rows.map((row) =>
			[values, formulas].some((cells) =>
				cells[row]?.some((cell) => cell !== ""),
			),
		),
	};
}

/** Row of the tab, from 1, that a new job's row goes to. @throws InputError when it is full. */
export const freeJobsRow = ({ place, filled, range }: JobsTable): number =>
	place.row + 1 + freeRow(filled, 1, () => range.getSheet().getName());

/** Row of the tab, from 1, that the job has; undefined where somebody took it away. */
export function jobsRowOf(
	{ place, numbers }: JobsTable,
	job: number,
): number | undefined {
	const index = numbers.indexOf(job);
	return index < 0 ? undefined : place.row + 1 + index;
}

/** The largest number on the tab, 0 where there is none. */
export const lastJob = ({ numbers }: JobsTable): number =>
	numbers.reduce<number>(
		(last, number = 0) =>
			Number.isInteger(number) ? Math.max(last, number) : last,
		0,
	);

/** All cells of the table in the job's row; null where it has none. */
export function jobRow(table: JobsTable, job: number): Range | null {
	const { range } = table;
	const row = jobsRowOf(table, job);
	if (row === undefined) return null;
	const { column, columns } = areaIn(range);
	return range.getSheet().getRange(row, column + 1, 1, columns);
}

/** The cells of the line in a row of the tab. */
export const lineCells = ({ range, place }: JobsTable, row: number): Range =>
	range.getSheet().getRange(row, place.line + 1, 1, LINE);

/** `14`, and a click on it leads to the tab. */
export const linkTo = (sheet: Sheet, job: number): string =>
	`=HYPERLINK("#gid=${sheet.getSheetId()}";"${job}")`;

/** The job's line beside its number; what to do once columns were put in, here or there, for it would lie under other headings. */
export function lineFrom(cells: string, column: number): string {
	const own = [column, column + LINE - 1]
		.map((at) => `$${columnLetters(at)}$1`)
		.join(":");
	return `=IF((COLUMNS(${own})=${LINE})*(COLUMNS(${cells})=${LINE});ARRAYFORMULA(${cells});studio_undo)`;
}
