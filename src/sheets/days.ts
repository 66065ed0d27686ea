/** Days and moments as cells count them, in whatever time zone: from 1899-12-30. */

const DAY_MS = 86_400_000;
/** 1970-01-01, from which computers count. */
const EPOCH = 25_569;

/** The day of `2026-05-04`. */
export const serialDay = (day: string): number =>
	Date.parse(`${day}T00:00:00Z`) / DAY_MS + EPOCH;

/** The moment that a cell gave as a date, to the minute. */
export const serialOf = (date: Date): number =>
	Date.UTC(
		date.getFullYear(),
		date.getMonth(),
		date.getDate(),
		date.getHours(),
		date.getMinutes(),
	) /
		DAY_MS +
	EPOCH;
