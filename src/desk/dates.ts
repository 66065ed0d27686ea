const DAY = 864e5;
const EPOCH = Date.UTC(1899, 11, 30);

/** Days since 1899-12-30 of a moment in the local time zone, which is the script's. */
export function serialOf(date: Date): number {
	const local = Date.UTC(
		date.getFullYear(),
		date.getMonth(),
		date.getDate(),
		date.getHours(),
		date.getMinutes(),
		date.getSeconds(),
	);
	return (local - EPOCH) / DAY;
}

/** The moment in the local time zone of days since 1899-12-30. */
export function dateOf(serial: number): Date {
	const utc = new Date(EPOCH + Math.round(serial * 86400) * 1000);
	return new Date(
		utc.getUTCFullYear(),
		utc.getUTCMonth(),
		utc.getUTCDate(),
		utc.getUTCHours(),
		utc.getUTCMinutes(),
		utc.getUTCSeconds(),
	);
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
