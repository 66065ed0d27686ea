/** A repeat order: the same job once more, without what was typed for its one pour, its one client's agreement or its own days. */
import type { Fields } from "./fields/field";
import { JOB_SHAPE, type JobFile } from "./jobfile";
import type { Shape } from "./mistakes";

type Part = Readonly<Record<string, unknown>>;

/** The job as it is ordered again: each field says itself whether it is typed only once. */
export const repeatOrder = (job: JobFile): JobFile => {
	const { about: _, ...typed } = job;
	return repeated(typed, JOB_SHAPE) as unknown as JobFile;
};

/** Rows of which nothing is left are left out, and lists without a row too. */
function repeated(part: object, shape: Shape): Part {
	const kept = Object.entries(part).flatMap(([key, value]) => {
		const again = memberAgain(key, value, shape);
		return again === undefined || isEmptied(value, again) ? [] : [[key, again]];
	});
	return Object.fromEntries(kept);
}

/** What a repeat order has of one member; undefined where it begins without. */
function memberAgain(key: string, value: unknown, shape: Shape): unknown {
	const { fields, lists = {}, rowsByKey = {}, values = {} } = shape;
	if (fields[key]?.once || values[key]?.once) return undefined;
	const list = lists[key];
	if (list)
		return (value as readonly Part[])
			.map((row) => [row, repeated(row, list.of)] as const)
			.filter(([row, again]) => !isEmptied(row, again))
			.map(([, again]) => again);
	const byKey = rowsByKey[key];
	return byKey ? rowsAgain(value as Record<string, Part>, byKey) : value;
}

const rowsAgain = (rows: Record<string, Part>, fields: Fields): Part =>
	Object.fromEntries(
		Object.entries(rows).flatMap(([key, row]) => {
			const again = repeated(row, { fields });
			return isEmptied(row, again) ? [] : [[key, again]];
		}),
	);

/** A row that was blank keeps its place: of two plans each has its own. */
const isEmptied = (was: unknown, now: unknown): boolean =>
	isHollow(now) && !isHollow(was);

const isHollow = (value: unknown): boolean =>
	typeof value === "object" &&
	value !== null &&
	Object.keys(value).length === 0;
