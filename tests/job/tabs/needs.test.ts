/** An answer computed from its own regions alone is the answer from all that was typed. */
import { expect, test } from "vitest";
import {
	type JobRegion,
	TABLE_TITLES,
	toneTable,
} from "../../../src/job/cells/jobcells";
import { pigmentColumns } from "../../../src/job/cells/jobslots";
import { type Grid, labelText } from "../../../src/job/cells/regions";
import { CLOSED, type StudioRegion } from "../../../src/job/cells/studiocells";
import type { Fields, Row } from "../../../src/job/fields/field";
import { JOB } from "../../../src/job/fields/job";
import { INGREDIENT } from "../../../src/job/fields/mix";
import { CUTOUT, KNOCKOUT } from "../../../src/job/fields/openings";
import { PIECE } from "../../../src/job/fields/piece";
import { PIGMENT } from "../../../src/job/fields/pigment";
import { SETTINGS } from "../../../src/job/fields/settings";
import { STOCK } from "../../../src/job/fields/stock";
import { LOOK, TONE } from "../../../src/job/fields/tone";
import type { JobFile } from "../../../src/job/jobfile";
import type { StudioFile } from "../../../src/job/studiofile";
import {
	COST_MATERIALS,
	COST_SUMMARY,
	COST_WORK,
} from "../../../src/job/tabs/cost";
import { CURE_CALENDAR, CURE_FACTS } from "../../../src/job/tabs/cure";
import { QUOTE_LINES } from "../../../src/job/tabs/quote";
import { tabCells, tabInput } from "../../../src/job/tabs/tab";
import { cost } from "../../../templates/cost/costtab";
import { cure } from "../../../templates/cure/curetab";
import { quote } from "../../../templates/quote/quotetab";
import { starterStudio } from "../../../templates/starterstudio";
import { demoJob, regionOf, UNITS } from "./typedregion";

const listGrid = (
	fields: Fields,
	row: object,
	units: JobFile["units"],
	right = 1,
): Grid =>
	Object.entries(fields).map(([key, { label }]) => [
		labelText(label, units),
		...Array<string>(right - 1).fill(""),
		(row as Row<Fields>)[key] ?? "",
	]);

const tableGrid = (
	fields: Fields,
	rows: readonly object[],
	units: JobFile["units"],
): Grid => [
	Object.values(fields).map(({ label }) => labelText(label, units)),
	...rows.map((row) =>
		Object.keys(fields).map((key) => (row as Row<Fields>)[key] ?? ""),
	),
];

function tonesGrid(job: JobFile): Grid {
	const pigments = pigmentColumns(job);
	const [headings = [], ...rows] = tableGrid(TONE, job.tones, job.units);
	return [
		...listGrid(LOOK, job, job.units),
		[...headings, ...pigments],
		...rows.map((row, index) => [
			...row,
			...pigments.map((name) => job.tones[index]?.doses?.[name] ?? ""),
		]),
	];
}

const regionsOf = (
	studio: StudioFile,
	job: JobFile,
): Record<
	Exclude<JobRegion, "card"> | Exclude<StudioRegion, "swatches">,
	Grid
> => ({
	settings: [
		...listGrid(SETTINGS as Fields, studio.settings, job.units),
		[CLOSED.day.label],
		["2027-03-11"],
	],
	mixes: tableGrid(INGREDIENT, studio.mixes, job.units),
	pigments: tableGrid(PIGMENT, studio.pigments, job.units),
	stock: tableGrid(STOCK, studio.stock ?? [], job.units),
	head: listGrid(JOB, job, job.units, 2),
	pieces: [
		...tableGrid(PIECE, job.pieces, job.units),
		[TABLE_TITLES.cutouts],
		...tableGrid(CUTOUT, job.cutouts ?? [], job.units),
		[TABLE_TITLES.knockouts],
		...tableGrid(KNOCKOUT, job.knockouts ?? [], job.units),
	],
	tones: tonesGrid(job),
	cure: regionOf(cure, "cure", job),
	cost: regionOf(cost, "cost", job),
	quote: regionOf(quote, "quote", job),
});

const ANSWERS = [
	CURE_CALENDAR,
	CURE_FACTS,
	COST_SUMMARY,
	COST_WORK,
	COST_MATERIALS,
	QUOTE_LINES,
];

test.each(
	UNITS.flatMap((units) => ANSWERS.map((answer) => ({ units, answer }))),
)("$answer.name in $units", ({ units, answer }) => {
	const studio = starterStudio(units);
	const job: JobFile = {
		...demoJob(units),
		quotedOn: "2027-01-20",
		priceAgreed: 4321,
		moistureLimit: 3,
		moistureReading: 4,
	};
	const every = regionsOf(studio, job);
	expect(toneTable(every.tones, units).pigments).toEqual(pigmentColumns(job));
	const own = Object.fromEntries(
		Object.entries(every).filter(([region]) =>
			["settings", ...answer.needs].includes(region),
		),
	);
	const cells = tabCells(answer, tabInput(own));
	expect(cells).toEqual(tabCells(answer, tabInput(every)));
	expect(
		cells.flat().filter((cell) => typeof cell === "number").length,
	).toBeGreaterThan(4);
});
