/** Names in the workbook, and which of them are whose. */
import type { Tab } from "../../../templates/plan";
import { blockArea } from "../writing/page";
import { type Area, areaOf } from "./a1";

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

/** The first name that a tab's cells have; by it the tab is found again. */
export function firstName({ name, blocks, names = {} }: Tab): string {
	const first =
		blocks.find((block) => block.name !== undefined)?.name ??
		Object.keys(names)[0];
	if (first === undefined) throw new Error(`${name} has no name to find it by`);
	return first;
}

/** The cells that a tab has by this name. */
export function namedArea(
	{ name: tab, blocks, names = {} }: Tab,
	name: string,
): Area {
	const block = blocks.find((one) => one.name === name);
	const a1 = names[name];
	if (block) return blockArea(block);
	if (a1 === undefined) throw new Error(`${tab} has no cells named ${name}`);
	return areaOf(a1);
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
