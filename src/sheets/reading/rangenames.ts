/** Names in the workbook, and which of them are whose. */

export const STUDIO_PREFIX = "studio_";
export const jobPrefix = (job: number): string => `job${job}_`;

/** Every name of the workbook. */
export const allNames = (
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
): string[] => spreadsheet.getNamedRanges().map((range) => range.getName());

/** The number of the job that a name belongs to, or none. */
export function jobOfName(name: string): number | undefined {
	const [, digits] = /^job(\d{1,6})_/i.exec(name) ?? [];
	return digits === undefined ? undefined : Number(digits);
}

/** The one name that a closed job keeps, on the first of its tabs. */
export const CLOSED = "closed";

/** Whether the job of this name is open: a closed one has its one name only. */
const isOpen = (name: string): boolean =>
	!name.toLowerCase().endsWith(`_${CLOSED}`);

/** Numbers of the open jobs that the names speak of, ascending; a tab may be called whatever one likes. */
export function jobNumbers(names: readonly string[]): number[] {
	const numbers = names.filter(isOpen).flatMap((name) => jobOfName(name) ?? []);
	return [...new Set(numbers)].sort((a, b) => a - b);
}

/** What a job's tab is called. */
export const jobTabName = (job: number, tab: string): string => `${job} ${tab}`;

/**
 * A number that no job has, from this one on, the next where none is missing; asks of few numbers, however many jobs
 * there are.
 */
export function nextJobNumber(
	isTaken: (job: number) => boolean,
	from = 1,
): number {
	let taken = from - 1;
	let free = from;
	while (isTaken(free)) {
		taken = free;
		free += Math.max(1, 2 * (free - from));
	}
	while (free - taken > 1) {
		const between = Math.floor((taken + free) / 2);
		if (isTaken(between)) taken = between;
		else free = between;
	}
	return free;
}
