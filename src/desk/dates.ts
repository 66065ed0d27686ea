/** Moments and the days since 1899-12-30 that cells count them by, in the time zone of the file. */
const DAY = 864e5;
const EPOCH = Date.UTC(1899, 11, 30);

/** The zone of this machine. */
export const ownZone = (): string =>
	Intl.DateTimeFormat().resolvedOptions().timeZone;

const formats = new Map<string, Intl.DateTimeFormat>();

/** @throws RangeError for a zone that there is not. */
function formatFor(zone: string): Intl.DateTimeFormat {
	const made =
		formats.get(zone) ??
		new Intl.DateTimeFormat("en-US", {
			timeZone: zone,
			hourCycle: "h23",
			year: "numeric",
			month: "numeric",
			day: "numeric",
			hour: "numeric",
			minute: "numeric",
			second: "numeric",
		});
	formats.set(zone, made);
	return made;
}

/** What calendar and clock of the zone say, as if it were UTC, in milliseconds. */
function wallClock(time: number, zone: string): number {
	const parts = Object.fromEntries(
		formatFor(zone)
			.formatToParts(time)
			.map(({ type, value }) => [type, Number(value)]),
	);
	const { year = 0, month = 1, day = 1, hour, minute, second } = parts;
	return Date.UTC(year, month - 1, day, hour, minute, second);
}

/** Days since 1899-12-30 of a moment. */
export const serialOf = (date: Date, zone = ownZone()): number =>
	(wallClock(date.getTime(), zone) - EPOCH) / DAY;

/** The moment of days since 1899-12-30. */
export function dateOf(serial: number, zone = ownZone()): Date {
	const wall = EPOCH + Math.round(serial * 86400) * 1000;
	const about = wall - (wallClock(wall, zone) - wall);
	return new Date(wall - (wallClock(about, zone) - about));
}

/** Days since 1899-12-30 of a day, or undefined where the calendar has none such. */
export function serialOfDay(
	year: number,
	month: number,
	day: number,
): number | undefined {
	const made = new Date(Date.UTC(year, month - 1, day));
	return made.getUTCMonth() === month - 1 && made.getUTCDate() === day
		? (made.getTime() - EPOCH) / DAY
		: undefined;
}

const WIDTHS = { yyyy: 4, MM: 2, dd: 2, HH: 2, mm: 2, ss: 2 };

/** The moment as text by a pattern of `yyyy`, `MM`, `dd`, `HH`, `mm`, `ss`. @throws Error for other letters. */
export function dateText(date: Date, zone: string, pattern: string): string {
	const wall = new Date(wallClock(date.getTime(), zone));
	const numbers: Record<keyof typeof WIDTHS, number> = {
		yyyy: wall.getUTCFullYear(),
		MM: wall.getUTCMonth() + 1,
		dd: wall.getUTCDate(),
		HH: wall.getUTCHours(),
		mm: wall.getUTCMinutes(),
		ss: wall.getUTCSeconds(),
	};
	return pattern.replace(/([A-Za-z])\1*/g, (letters) => {
		if (!(letters in WIDTHS))
			throw new Error(`the desk does not know ${letters} in a date's pattern`);
		const key = letters as keyof typeof WIDTHS;
		return String(numbers[key]).padStart(WIDTHS[key], "0");
	});
}

/** Whether a number format shows a date or a time. */
export function isDatePattern(pattern: string | undefined): boolean {
	if (!pattern || /^general$/i.test(pattern)) return false;
	const bare = pattern.replace(/"[^"]*"|\\.|\[[^\]]*\]|_.|\*./g, "");
	return /[ymdhs]/i.test(bare);
}

/** Whether a value is a Date, of whatever script context. */
export function isDate(value: unknown): value is Date {
	return Object.prototype.toString.call(value) === "[object Date]";
}
