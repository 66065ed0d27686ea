/** Cells as the panel's messages may carry them. */
import type { Typed } from "./messages";
import type { Cell } from "./studio";

const isDate = (value: unknown): value is Date =>
	Object.prototype.toString.call(value) === "[object Date]";

const twoDigits = (number: number): string => String(number).padStart(2, "0");

/** A number or a text; a day as `2026-05-04`, a time of day as `14:05`. */
export function plain(cell: Cell | undefined): Typed {
	if (cell === undefined) return "";
	if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
	if (!isDate(cell)) return cell;
	// a time of day is a moment of the day that cells count from
	return cell.getFullYear() < 1900
		? `${twoDigits(cell.getHours())}:${twoDigits(cell.getMinutes())}`
		: [
				cell.getFullYear(),
				twoDigits(cell.getMonth() + 1),
				twoDigits(cell.getDate()),
			].join("-");
}

export const plainRows = (rows: readonly (readonly Cell[])[]): Typed[][] =>
	rows.map((row) => row.map(plain));

/** The rows whose first cell holds something. */
export const filledRows = (rows: readonly (readonly Cell[])[]): Typed[][] =>
	plainRows(rows).filter(([first]) => first !== "" && first !== undefined);

/** The cell's number. */
export const numberIn = (cell: Cell | undefined): number | undefined =>
	typeof cell === "number" && Number.isFinite(cell) ? cell : undefined;
