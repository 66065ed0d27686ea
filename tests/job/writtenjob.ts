/** A job written into the pages of its tabs, as cells give it back, without a workbook. */
import fc from "fast-check";
import { JOB_REGIONS, jobIn } from "../../src/job/cells/jobcells";
import { jobSlots } from "../../src/job/cells/jobslots";
import {
	CHANGE,
	GOODS,
	PAYMENT,
	PRICE,
	QUOTE,
	TRAVEL,
	WHAT_IF,
	WORK,
} from "../../src/job/fields/cost";
import { CURE } from "../../src/job/fields/cure";
import type { Field, Fields, Row, Typed } from "../../src/job/fields/field";
import { JOB } from "../../src/job/fields/job";
import { CUTOUT, KNOCKOUT } from "../../src/job/fields/openings";
import { OPERATION_KEYS } from "../../src/job/fields/operations";
import { PIECE } from "../../src/job/fields/piece";
import { CURE_LOG, POUR } from "../../src/job/fields/pour";
import { LOOK, TONE } from "../../src/job/fields/tone";
import { type JobFile, MOST } from "../../src/job/jobfile";
import type { UnitSystem } from "../../src/job/reading/units";
import type { StudioFile } from "../../src/job/studiofile";
import { areaOf } from "../../src/sheets/reading/a1";
import { jobPages } from "../../src/sheets/writing/jobpages";

/** What a cell gives back of what is written into it; a mark in front only says that the text stays one. */
const given = (value: unknown): unknown =>
	typeof value === "string" ? value.replace(/^'/, "") : value;

/** The job as it is read from the cells that are written for it. */
export function readBack(job: JobFile, studio: StudioFile): JobFile {
	const { units } = job;
	const { pages } = jobPages({
		number: 14,
		units,
		studio: undefined,
		slots: jobSlots(job, studio),
	});
	const regions = Object.fromEntries(
		JOB_REGIONS.map((region) => {
			const page = pages.find(({ names }) => names[`job14_${region}`]);
			const { row, column, rows, columns } = areaOf(
				page?.names[`job14_${region}`] ?? "",
			);
			const cells = page?.cells
				.slice(row, row + rows)
				.map((line) =>
					line.slice(column, column + columns).map(({ value }) => given(value)),
				);
			return [region, cells ?? []];
		}),
	);
	return jobIn(regions, studio, units);
}

/** Numbers as texts, and nothing that is blank: a length of 980 and its text are the same. */
export const asTexts = (value: unknown): unknown =>
	typeof value === "number"
		? String(value)
		: Array.isArray(value)
			? value.map(asTexts)
			: typeof value === "object" && value !== null
				? Object.fromEntries(
						Object.entries(value).map(([key, own]) => [key, asTexts(own)]),
					)
				: value;

/** Texts that a sheet might take for something else, or cut. */
export const HOSTILE = [
	...["=1+1", '=HYPERLINK("http://example.org","x")', "'x", "''", "+49", "-3"],
	...["@a", "007", "3/4", "3-4", "5%", "1e5", "TRUE", "#REF!x", "1.234,5"],
	...["Look: no", "not known yet: no", "{mass}", "{job}head", "a\nb", "\t="],
	...["ß Ünïcode שלום 🪨", "x".repeat(300), "Client", "Cutouts and more"],
	// words that the titles of tables are, too
	...["Cutouts", "knockouts", "Change orders", "PAYMENTS", "Work"],
];

const text = fc
	.oneof(
		fc.constantFrom(...HOSTILE),
		fc.string({ minLength: 1, maxLength: 20, unit: "grapheme" }),
	)
	.map((any) => any.trim())
	.filter((any) => any !== "");

/** Numbers as scales and hands give them, binary or not. */
export const amount = (min: number, max: number): fc.Arbitrary<number> =>
	fc.oneof(
		fc.integer({ min: min * 1000, max: max * 1000 }).map((n) => n / 1000),
		fc.constantFrom(min, max, 1 / 3, 0.1 + 0.2, 0.07),
	);

const day = fc
	.integer({ min: 1, max: 60_000 })
	.map((days) =>
		new Date(Date.UTC(1900, 2, 1 + days)).toISOString().slice(0, 10),
	);

const length = fc.oneof(
	fc.integer({ min: 1, max: 9999 }),
	fc.constantFrom("8' 1/2\"", "25 1/2", "25-1/2 in", "2.4 m", "65 cm", "3/4"),
	fc.constantFrom("1,5", "1e3", "=2+2", "-1"),
);

function typedFor({ kind, words, limits }: Field): fc.Arbitrary<Typed> {
	if (words) return fc.constantFrom(...words);
	switch (kind) {
		case "text":
		case "color":
			return text;
		case "length":
			return length;
		case "day":
			return day;
		case "time":
			return fc.constantFrom("9:40", "14:05", "0:00", "7.30");
		case "share":
			return amount(0, 1);
		default:
			return limits?.whole
				? fc.integer({ min: 0, max: 1000 })
				: amount(-1e6, 1e6);
	}
}

const row = <F extends Fields>(fields: F): fc.Arbitrary<Row<F>> =>
	fc.record(
		Object.fromEntries(
			Object.entries(fields).map(([key, field]) => [key, typedFor(field)]),
		),
		{ requiredKeys: [] },
	) as fc.Arbitrary<Row<F>>;

/** Rows that hold something each. */
const rows = <F extends Fields>(fields: F, maxLength: number) =>
	fc.array(
		row(fields).filter((one) => Object.keys(one).length > 0),
		{ minLength: 1, maxLength },
	);

/** A value that the field's own reading accepts. */
const soundFor = (field: Field): fc.Arbitrary<Typed> =>
	(field.kind === "length"
		? fc.constantFrom<Typed>(40, "2 m", "6 ft")
		: typedFor(field)
	).filter((typed) => {
		try {
			field.read("it", typed, "metric");
			field.read("it", typed, "us");
			return true;
		} catch {
			return false;
		}
	});

/** A record that no check refuses. */
export const soundRow = <F extends Fields>(fields: F): fc.Arbitrary<Row<F>> =>
	fc.record(
		Object.fromEntries(
			Object.entries(fields).map(([key, field]) => [key, soundFor(field)]),
		),
		{ requiredKeys: [] },
	) as fc.Arbitrary<Row<F>>;

export const soundRows = <F extends Fields>(fields: F, maxLength: number) =>
	fc.array(
		soundRow(fields).filter((one) => Object.keys(one).length > 0),
		{ minLength: 1, maxLength },
	);

const PIGMENTS = ["Umber", "=Black", "'Ocher", "007"];
const doses = fc.dictionary(fc.constantFrom(...PIGMENTS), amount(0, 1), {
	minKeys: 1,
});
const tones = fc.array(
	fc
		.tuple(row(TONE), fc.option(doses, { nil: undefined }))
		.map(([tone, own]) => ({
			...tone,
			name: tone.name ?? "A",
			...(own && { doses: own }),
		})),
	{ minLength: 1, maxLength: MOST.tones },
);

const weight = amount(0, 500);

const correction = fc.record(
	{
		tone: fc.constantFrom("Plain", "'Deep", "=7"),
		foldedIn: weight,
		takenOut: weight,
		added: fc.dictionary(fc.constantFrom(...PIGMENTS), weight, { minKeys: 1 }),
	},
	{ requiredKeys: ["tone"] },
);

const pours = (ingredients: readonly string[]) =>
	fc.uniqueArray(
		fc
			.record(
				{
					load: fc.integer({ min: 1, max: MOST.pours }),
					own: row(POUR),
					weighed: fc.dictionary(fc.constantFrom(...ingredients), weight, {
						minKeys: 1,
					}),
					steps: fc.dictionary(
						fc.integer({ min: 0, max: 36 }).map(String),
						weight,
						{ minKeys: 1 },
					),
					corrections: fc.array(correction, {
						minLength: 1,
						maxLength: MOST.corrections,
					}),
				},
				{ requiredKeys: ["load", "own", "steps"] },
			)
			.map(({ load, own, ...weights }) => ({ load, ...own, ...weights })),
		{ selector: ({ load }) => load, minLength: 1, maxLength: MOST.pours },
	);

/** A job as somebody might type it; a mix of the studio or none. */
export const anyJob = (
	units: UnitSystem,
	mix: string,
	ingredients: readonly string[],
): fc.Arbitrary<JobFile> =>
	fc
		.record(
			{
				head: row(JOB),
				look: row(LOOK),
				cure: row(CURE),
				price: row(PRICE),
				quote: row(QUOTE),
				pieces: rows(PIECE, MOST.pieces),
				tones,
				cutouts: rows(CUTOUT, MOST.cutouts),
				knockouts: rows(KNOCKOUT, MOST.knockouts),
				pours: pours(ingredients),
				load: fc.integer({ min: 1, max: MOST.pours }),
				cureLog: rows(CURE_LOG, MOST.cureLog),
				whatIfs: fc.tuple(row(WHAT_IF), row(WHAT_IF)),
				changes: rows(CHANGE, MOST.changes),
				payments: rows(PAYMENT, MOST.payments),
				goods: rows(GOODS, MOST.goods),
				travel: rows(TRAVEL, MOST.travel),
				work: fc.dictionary(
					fc.constantFrom(...OPERATION_KEYS),
					row(WORK).filter((one) => Object.keys(one).length > 0),
					{ minKeys: 1 },
				),
			},
			{
				requiredKeys: [
					"head",
					"look",
					"cure",
					"price",
					"quote",
					"pieces",
					"tones",
				],
			},
		)
		.map(
			({ head, look, cure, price, quote, ...rest }): JobFile => ({
				units,
				...head,
				...look,
				mix,
				...cure,
				...price,
				...quote,
				...rest,
			}),
		);
