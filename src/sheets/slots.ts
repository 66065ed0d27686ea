/** A job's file as the cells of its tabs. */
import { sameName } from "../calc/names";
import { pigmentNames } from "../job/answers/pigments";
import { startOf } from "../job/answers/startvalues";
import type { Fields, Row, Typed } from "../job/fields/field";
import { CUTOUT, KNOCKOUT } from "../job/fields/openings";
import { PIECE } from "../job/fields/piece";
import { LOOK } from "../job/fields/tone";
import type { JobFile, ToneInput } from "../job/jobfile";
import { isBlank } from "../job/reading/cells";
import { serialDay } from "../job/reading/days";
import {
	mixNames,
	type StudioFile,
	spelled,
	studioPigments,
} from "../job/studiofile";
import type { Slots, Value } from "../template/plan";

/** What the tab has no room for beside the piece's sizes. */
const LIE = ["face", "notch", "dropOn"] as const;

const SIZES = Object.fromEntries(
	Object.entries(PIECE).filter(([key]) => !LIE.includes(key as never)),
);

/** The data for the named blocks of a job's tabs; names are spelled as the studio does. */
export function jobSlots(job: JobFile, studio: StudioFile): Slots {
	const { units, pieces, cutouts = [], knockouts = [], tones } = job;
	const pigments = pigmentNames({ job }).map((name) =>
		spelled(name, studioPigments(studio)),
	);
	const started = (key: "bandStart" | "folds" | "seenFrom"): Value =>
		cellOf(isBlank(job[key]) ? startOf(LOOK[key], units) : job[key]);
	return {
		client: cellOf(job.client),
		title: cellOf(job.title),
		...dayIn("pour_date", job.pourDate),
		...dayIn("due_date", job.dueDate),
		waste: cellOf(isBlank(job.waste) ? studio.settings.waste : job.waste),
		pieces: rowsOf(SIZES, pieces),
		faces: pieces.map(({ face }) => [cellOf(face)]),
		notches: pieces.map(({ notch }) => [cellOf(notch)]),
		drop_sides: pieces.map(({ dropOn }) => [cellOf(dropOn)]),
		cutouts: rowsOf(CUTOUT, cutouts),
		knockouts: rowsOf(KNOCKOUT, knockouts),
		mix: spelled(String(job.mix ?? ""), mixNames(studio)),
		pigments: [pigments],
		typed_tones: tones.map((tone) => toneRow(tone, pigments)),
		band_start: started("bandStart"),
		folds: started("folds"),
		seen_from: started("seenFrom"),
	};
}

const cellOf = (typed: Typed | null | undefined): Value =>
	isBlank(typed) ? "" : (typed as Typed);

const dayIn = (slot: string, day: Typed | undefined): Slots =>
	isBlank(day) ? {} : { [slot]: serialDay(String(day).trim()) };

/** Rows with a column for each field, in the fields' order. */
const rowsOf = <F extends Fields>(
	fields: F,
	rows: readonly Row<F>[],
): Value[][] =>
	rows.map((row) => Object.keys(fields).map((key) => cellOf(row[key])));

const toneRow = (
	{ name, share, doses = {} }: ToneInput,
	pigments: readonly string[],
): Value[] => [
	cellOf(name),
	cellOf(share),
	...pigments.map((pigment) =>
		cellOf(Object.entries(doses).find(([key]) => sameName(key, pigment))?.[1]),
	),
];
