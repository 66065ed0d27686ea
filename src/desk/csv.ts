import type { CellValue } from "./contract";
import { isDate } from "./dates";

const two = (value: number) => String(value).padStart(2, "0");

/** `yyyy-mm-dd`, and the time where there is one. */
function dateText(date: Date): string {
	const day = `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
	const time = `${two(date.getHours())}:${two(date.getMinutes())}`;
	return time === "00:00" ? day : `${day} ${time}`;
}

function field(value: CellValue): string {
	if (isDate(value)) return dateText(value);
	if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
	const text = String(value);
	return /[",\r\n]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text;
}

const lengthWithout = <T>(items: readonly T[], isBlank: (item: T) => boolean) =>
	items.reduce((last, item, index) => (isBlank(item) ? last : index + 1), 0);

/** Rows without the blank rows and columns at the end. */
function trimmed(rows: readonly CellValue[][]): CellValue[][] {
	const width = Math.max(
		0,
		...rows.map((row) => lengthWithout(row, (cell) => cell === "")),
	);
	const height = lengthWithout(rows, (row) => row.every((cell) => cell === ""));
	return rows.slice(0, height).map((row) => row.slice(0, width));
}

/**
 * Comma-separated values.
 *
 * @source RFC 4180: lines end in CRLF, fields with comma, quote or line break in quotes, quotes doubled
 */
export function csv(rows: readonly CellValue[][]): string {
	return trimmed(rows)
		.map((row) => `${row.map(field).join(",")}\r\n`)
		.join("");
}
