/** Days as people type them and cells count them, in whatever time zone the file is. */
import { InputError, quoted } from "../../calc/errors";
import { came, filled } from "./cells";

const DAY_MS = 86_400_000;
const HOUR_MS = 3_600_000;
/** 1970-01-01, from which computers count; cells count from 1899-12-30. */
const EPOCH = 25_569;
/** No place on earth is farther ahead of Greenwich, but two island groups. */
const FARTHEST_AHEAD_H = 13;

/** The number by which a cell counts the day `2026-05-04`. */
export const serialDay = (day: string): number =>
	Date.parse(`${day}T00:00:00Z`) / DAY_MS + EPOCH;

/** The day of a cell's number; what is behind the decimal point is a time of that day. */
export const dayOfSerial = (serial: number): string =>
	new Date((Math.floor(serial) - EPOCH) * DAY_MS).toISOString().slice(0, 10);

/** True for a day that exists, as `2026-05-04`. */
export function isDay(text: string): boolean {
	if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
	const day = new Date(`${text}T00:00:00Z`);
	return (
		!Number.isNaN(day.getTime()) && day.toISOString().slice(0, 10) === text
	);
}

/**
 * The day of a date that a cell passes: the instant at which the day begins in the file's time zone.
 *
 * The zone is not known in a cell's call, and the script's own may be another. The hour at Greenwich tells it: a day begins
 * there up to 13 hours before (ahead of Greenwich) or up to 11 hours after (behind it). Not told apart are zones 14 hours
 * ahead, and 11 and 12 behind: Kiritimati, Samoa's American part and Niue.
 */
export function dayOfInstant(instant: Date): string {
	const ms = instant.getTime();
	const sinceMidnight = ((ms % DAY_MS) + DAY_MS) % DAY_MS;
	const aheadMs = DAY_MS - sinceMidnight;
	const isAhead = sinceMidnight > 0 && aheadMs <= FARTHEST_AHEAD_H * HOUR_MS;
	return new Date(ms + (isAhead ? aheadMs : 0)).toISOString().slice(0, 10);
}

const isDate = (cell: unknown): cell is Date =>
	Object.prototype.toString.call(cell) === "[object Date]";

/**
 * A day as `2026-05-04`, from a date, a cell's number or a text.
 *
 * @throws InputError when the cell is blank or holds no day.
 */
export function dayIn(name: string, cell: unknown): string {
	const value = filled(name, cell);
	if (isDate(value)) return dayOfInstant(value);
	if (typeof value === "number" && value >= 1 && value < 1e6)
		return dayOfSerial(value);
	const text = String(value).trim();
	if (isDay(text)) return text;
	throw new InputError(
		`${name} must be a day such as 2026-05-04, got ${came(value)}`,
	);
}

const TIME = /^(\d{1,2})[:.h](\d{2})$/;

/**
 * A time of day in minutes after midnight, from `9:40` or a cell's share of a day.
 *
 * @throws InputError when the cell is blank or holds no time.
 */
export function minutesIn(name: string, cell: unknown): number {
	const value = filled(name, cell);
	if (typeof value === "number" && value >= 0)
		return Math.round((value % 1) * 1440) % 1440;
	const [, hours, minutes] = TIME.exec(String(value).trim()) ?? [];
	if (Number(hours) < 24 && Number(minutes) < 60)
		return Number(hours) * 60 + Number(minutes);
	throw new InputError(
		`${name} must be a time like 9:40, got ${typeof value === "string" ? quoted(value) : came(value)}`,
	);
}

/** `9:40` of minutes after midnight, past the next midnight too. */
export function clockOf(minutes: number): string {
	const whole = ((Math.round(minutes) % 1440) + 1440) % 1440;
	return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}
