/** The regions of typed cells, by their names in the workbook: what stands in them, days as calendars say them. */
import { InputError } from "../../calc/errors";
import type { Typed } from "../../job/fields/field";
import { type Area, areaOf } from "./a1";
import { momentText } from "./filetime";
import { isLoading, notReady } from "./unready";

type Spreadsheet = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

/** A region as it is now. */
export interface RegionRead {
	range: Range;
	grid: readonly (readonly Typed[])[];
}

/** Where the range lies on its tab. */
export const areaIn = (range: Range): Area => areaOf(range.getA1Notation());

/** What is said of a name that leads nowhere. */
export const goneText = (name: string): string =>
	`The name ${name} is gone, and its cells or their tab perhaps too: bring it back with File, Version history`;

/** The cells of a name. @throws InputError where it is gone. */
export function namedCells(spreadsheet: Spreadsheet, name: string): Range {
	const range = spreadsheet.getRangeByName(name);
	if (!range) throw new InputError(goneText(name));
	return range;
}

/** What stands in the cells. @throws InputError while one is not calculated. */
export function regionRead(range: Range): RegionRead {
	const values = range.getValues() as unknown[][];
	if (values.some((row) => row.some(isLoading)))
		throw new InputError(notReady(range.getSheet().getName()));
	return { range, grid: values.map((row) => row.map(typedCell)) };
}

const isDate = (value: unknown): value is Date =>
	Object.prototype.toString.call(value) === "[object Date]";

/** A number or a text; a day as `2026-05-04`, a time of day as `14:05`, by the file's time zone. */
function typedCell(cell: unknown): Typed {
	if (typeof cell === "number" || typeof cell === "string") return cell;
	if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
	if (!isDate(cell)) return "";
	const [day = "", time = ""] = momentText(cell).split(" ");
	// a time of day is a moment of the day that cells count from
	return day < "1900" ? time : day;
}
