/** Cells as the panel's messages may carry them. */
import { momentText } from "./days";
import type { Typed } from "./messages";
import type { Cell } from "./studio";

const isDate = (value: unknown): value is Date =>
	Object.prototype.toString.call(value) === "[object Date]";

/** A number or a text; a day as `2026-05-04`, a time of day as `14:05`. */
export function plain(cell: Cell | undefined): Typed {
	if (cell === undefined) return "";
	if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
	if (!isDate(cell)) return cell;
	const [day = "", time = ""] = momentText(cell).split(" ");
	// a time of day is a moment of the day that cells count from
	return day < "1900" ? time : day;
}

export const plainRows = (rows: readonly (readonly Cell[])[]): Typed[][] =>
	rows.map((row) => row.map(plain));

/** The rows whose first cell holds something. */
export const filledRows = (rows: readonly (readonly Cell[])[]): Typed[][] =>
	plainRows(rows).filter(([first]) => first !== "" && first !== undefined);

/** The cell's number. */
export const numberIn = (cell: Cell | undefined): number | undefined =>
	typeof cell === "number" && Number.isFinite(cell) ? cell : undefined;
