/** Names in the workbook, and which of them are whose. */

export const STUDIO_PREFIX = "studio_";
export const jobPrefix = (job: number): string => `job${job}_`;

/** Every name of the workbook. */
export const allNames = (
	spreadsheet: GoogleAppsScript.Spreadsheet.Spreadsheet,
): string[] => spreadsheet.getNamedRanges().map((range) => range.getName());

/** Numbers of the jobs that the names speak of, ascending; a tab may be called whatever one likes. */
export function jobNumbers(names: readonly string[]): number[] {
	const numbers = names.flatMap((name) => {
		const [, digits] = /^job(\d{1,6})_/i.exec(name) ?? [];
		return digits === undefined ? [] : [Number(digits)];
	});
	return [...new Set(numbers)].sort((a, b) => a - b);
}

/** What a job's tab is called. */
export const jobTabName = (job: number, tab: string): string => `${job} ${tab}`;

/**
 * The number of the next job: above every job there is, and none whose tabs' names are taken by something else.
 */
export function nextJobNumber(
	names: readonly string[],
	tabsThere: readonly string[],
	tabsWanted: readonly string[],
): number {
	const taken = new Set(tabsThere.map((tab) => tab.toLowerCase()));
	let number = Math.max(0, ...jobNumbers(names)) + 1;
	while (
		tabsWanted.some((tab) => taken.has(jobTabName(number, tab).toLowerCase()))
	)
		number += 1;
	return number;
}
