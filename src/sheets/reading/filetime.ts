/** Days and moments as cells count them: from 1899-12-30, in the time zone of the file. */

const DAY_MS = 86_400_000;
/** 1970-01-01, from which computers count. */
const EPOCH = 25_569;

let zone: string | undefined;

/** The file's; the script's own may be another. */
function fileZone(): string {
	zone ??= SpreadsheetApp.getActiveSpreadsheet().getSpreadsheetTimeZone();
	return zone;
}

/** `2026-05-04 14:05`, as calendar and clock in the file's zone say it. */
export const momentText = (date: Date): string =>
	Utilities.formatDate(date, fileZone(), "yyyy-MM-dd HH:mm");

const serial = (utc: string): number => Date.parse(utc) / DAY_MS + EPOCH;

/** The day of `2026-05-04`. */
export const serialDay = (day: string): number => serial(`${day}T00:00:00Z`);

/** The moment that a cell gave as a date, to the minute. */
export const serialOf = (date: Date): number =>
	serial(`${momentText(date).replace(" ", "T")}:00Z`);
