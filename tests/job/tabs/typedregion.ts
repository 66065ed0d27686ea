/** A region of a tab as its template writes it for a job, and jobs as people might type them. */
import fc from "fast-check";
import { nameKey } from "../../../src/calc/names";
import { TABLE_TITLES } from "../../../src/job/cells/jobcells";
import { jobSlots } from "../../../src/job/cells/jobslots";
import type { Grid } from "../../../src/job/cells/regions";
import type { Field, Fields, Row, Typed } from "../../../src/job/fields/field";
import { checkedJob, type JobFile } from "../../../src/job/jobfile";
import type { UnitSystem } from "../../../src/job/reading/units";
import { areaOf } from "../../../src/sheets/a1";
import { type Page, pageOf } from "../../../src/sheets/page";
import type { Tab } from "../../../src/template/plan";
import guesthouse from "../../../templates/demo/guesthouse.json";
import guesthouseUs from "../../../templates/demo/guesthouse-us.json";
import { starterStudio } from "../../../templates/starterstudio";

export const UNITS: readonly UnitSystem[] = ["metric", "us"];

export const demoJob = (units: UnitSystem): JobFile =>
	checkedJob(units === "us" ? guesthouseUs : guesthouse);

/** What no field says is in no file. */
export const emptyJob = (units: UnitSystem): JobFile => ({
	units,
	pieces: [],
	tones: [],
});

/** Addresses of other tabs' cells, which no region needs. */
const ANY_CELLS = new Proxy({} as Record<string, string>, {
	get: () => "'Other'!$A$1",
});

export const pageFor = (tab: Tab, job: JobFile): Page =>
	pageOf({
		tab,
		tokens: {
			units: job.units,
			job: "job1_",
			tabs: { [tab.name]: tab.name },
			cells: ANY_CELLS,
		},
		prefix: "job1_",
		slots: jobSlots(job, starterStudio(job.units)),
	});

/** The cells of the region as a call reads them back: without the mark of a text that stays as it is. */
export function regionOf(tab: Tab, region: string, job: JobFile): Grid {
	const page = pageFor(tab, job);
	const { row, column, rows, columns } = areaOf(
		page.names[`job1_${region}`] ?? "",
	);
	return page.cells
		.slice(row, row + rows)
		.map((cells) =>
			cells
				.slice(column, column + columns)
				.map(({ value }) =>
					typeof value === "string" ? value.replace(/^'/, "") : value,
				),
		);
}

/** How many formulas a region has. */
export const formulasIn = (tab: Tab, region: string): number =>
	regionOf(tab, region, emptyJob("metric"))
		.flat()
		.filter((value) => String(value).startsWith("=")).length;

const TITLES = Object.values(TABLE_TITLES).map(nameKey);

const TEXT = fc
	.string({ minLength: 1, maxLength: 12, unit: "grapheme" })
	.filter((text) => text.trim() !== "" && !TITLES.includes(nameKey(text)));

const DAY = fc
	.integer({ min: 0, max: 20_000 })
	.map((days) =>
		new Date(Date.UTC(2000, 0, 1 + days)).toISOString().slice(0, 10),
	);

const typedOf = ({ kind, words, limits }: Field): fc.Arbitrary<Typed> => {
	if (words) return fc.constantFrom(...words);
	if (kind === "text") return TEXT;
	if (kind === "day") return DAY;
	if (kind === "share") return fc.double({ min: 0, max: 1, noNaN: true });
	return limits?.whole
		? fc.integer({ min: 0, max: 1000 })
		: fc.double({ min: 0.001, max: 1e6, noNaN: true });
};

/** A record with some of its fields typed. */
export const anyRow = <F extends Fields>(fields: F): fc.Arbitrary<Row<F>> =>
	fc.record(
		Object.fromEntries(
			Object.entries(fields).map(([key, field]) => [key, typedOf(field)]),
		),
		{ requiredKeys: [] },
	) as fc.Arbitrary<Row<F>>;

/** Rows with at least one field typed in each. */
export const anyRows = <F extends Fields>(
	fields: F,
	most: number,
): fc.Arbitrary<Row<F>[]> =>
	fc.array(
		anyRow(fields).filter((row) => Object.keys(row).length > 0),
		{ minLength: 1, maxLength: most },
	);

export const anyUnits = fc.constantFrom(...UNITS);
