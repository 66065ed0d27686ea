/** Days as `2026-05-04`, counted forwards and backwards, and those on which nobody works. */
import { InputError } from "./errors";

const DAY_MS = 86_400_000;
/** 1970-01-01, from which computers count, was a Thursday. */
const FIRST_WEEKDAY = 4;
/** The days that have a year of four digits. */
const LAST = Date.parse("9999-12-31T00:00:00Z") / DAY_MS;
const FIRST = Date.parse("0001-01-01T00:00:00Z") / DAY_MS;

/** Days since 1970-01-01. */
const dayNumber = (day: string): number =>
	Date.parse(`${day}T00:00:00Z`) / DAY_MS;

/**
 * The day so many days after another, or before it where the number is below 0.
 *
 * @throws InputError when its year has not four digits.
 */
export function dayAfter(day: string, days: number): string {
	const number = dayNumber(day) + days;
	if (!(number >= FIRST && number <= LAST))
		throw new InputError(`no calendar reaches ${days} days from ${day}`);
	return new Date(number * DAY_MS).toISOString().slice(0, 10);
}

/** How many days the second is after the first; below 0 it is before. */
export const daysBetween = (from: string, to: string): number =>
	dayNumber(to) - dayNumber(from);

/** 1 Monday to 7 Sunday. */
export const weekdayOf = (day: string): number =>
	((((dayNumber(day) + FIRST_WEEKDAY - 1) % 7) + 7) % 7) + 1;

/** When a studio works. */
export interface Workweek {
	/** 1 Monday to 7 Sunday. */
	lastWeekday: number;
	closedDays: readonly string[];
}

/** A studio that is closed for longer has no calendar. */
const SEARCHED = 60;

export const isWorkday = (
	day: string,
	{ lastWeekday, closedDays }: Workweek,
): boolean => weekdayOf(day) <= lastWeekday && !closedDays.includes(day);

/** The first workday from a day on. @throws InputError when there is none within 60 days. */
export const workdayFrom = (day: string, week: Workweek): string =>
	nearestWorkday(day, week, 1);

/** The last workday until a day. @throws InputError when there is none within 60 days. */
export const workdayUntil = (day: string, week: Workweek): string =>
	nearestWorkday(day, week, -1);

function nearestWorkday(day: string, week: Workweek, step: 1 | -1): string {
	for (let days = 0; days < SEARCHED; days++) {
		const candidate = dayAfter(day, step * days);
		if (isWorkday(candidate, week)) return candidate;
	}
	throw new InputError(
		`there is no day of work within ${SEARCHED} days ${step > 0 ? "from" : "before"} ${day}`,
	);
}
