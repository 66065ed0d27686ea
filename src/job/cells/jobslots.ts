/** What stands in the typed cells of a job's tabs, by the keys of their blocks: the inverse of reading them. */
import { sameName } from "../../calc/names";
import {
	CHANGE,
	GOODS,
	PAYMENT,
	PRICE,
	QUOTE,
	TRAVEL,
	WHAT_IF,
	WHAT_IF_STARTS,
	WORK,
} from "../fields/cost";
import { CURE } from "../fields/cure";
import type { Field, Fields, Row, Typed } from "../fields/field";
import { JOB } from "../fields/job";
import { CUTOUT, KNOCKOUT } from "../fields/openings";
import { OPERATION_KEYS, OPERATIONS } from "../fields/operations";
import { PIECE } from "../fields/piece";
import { CURE_LOG, POUR } from "../fields/pour";
import { LOOK, TONE } from "../fields/tone";
import { type JobFile, MOST, type PourInput } from "../jobfile";
import { isBlank } from "../reading/cells";
import { isDay, serialDay } from "../reading/days";
import type { UnitSystem } from "../reading/units";
import type { StudioFile } from "../studiofile";
import {
	addedText,
	CARD_ROWS,
	CORRECTION_PARTS,
	ICE,
	ingredientsOf,
} from "./jobcells";

/** One value, or rows. */
export type Slots = Readonly<
	Record<string, Typed | readonly (readonly Typed[])[]>
>;

/** A typed value as a cell takes it: a day as the number by which cells count it. */
export function cellOf({ kind }: Field, typed: Typed | undefined): Typed {
	if (typed === undefined || isBlank(typed)) return "";
	const day = kind === "day" ? String(typed).trim() : "";
	return isDay(day) ? serialDay(day) : typed;
}

export const rowOf = <F extends Fields>(fields: F, row: Row<F>): Typed[] =>
	Object.entries(fields).map(([key, field]) => cellOf(field, row[key]));

/** A value for each label; nothing for a label beside which nothing was typed. */
export const listSlots = <F extends Fields>(fields: F, row: Row<F>): Slots =>
	Object.fromEntries(
		Object.entries(fields).flatMap(([key, field]) =>
			isBlank(row[key]) ? [] : [[key, cellOf(field, row[key])]],
		),
	);

/** What a job begins with where that depends on the units: the template's cells begin with the rest. */
const startSlots = (fields: Fields, units: UnitSystem): Slots =>
	Object.fromEntries(
		Object.entries(fields).flatMap(([key, { start }]) =>
			typeof start === "object" ? [[key, start[units]]] : [],
		),
	);

export const tableSlot = <F extends Fields>(
	key: string,
	fields: F,
	rows: readonly Row<F>[] = [],
): Slots =>
	rows.length === 0 ? {} : { [key]: rows.map((row) => rowOf(fields, row)) };

/** Names of the pigments that get a column, in the order of the file. */
export function pigmentColumns({ pigments = [], tones }: JobFile): string[] {
	const names: string[] = [];
	for (const name of [
		...pigments,
		...tones.flatMap(({ doses = {} }) => Object.keys(doses)),
	])
		if (!names.some((one) => sameName(one, name))) names.push(name);
	return names;
}

/** What stands under a name, however its letters are written. */
const valueUnder = (
	values: Readonly<Record<string, Typed>>,
	name: string,
): Typed =>
	Object.entries(values).find(([key]) => sameName(key, name))?.[1] ?? "";

function toneSlots(job: JobFile): Slots {
	const pigments = pigmentColumns(job);
	return {
		...(pigments.length > 0 && { pigments: [pigments] }),
		tones: job.tones.map((tone) => [
			...rowOf(TONE, tone),
			...pigments.map((pigment) => valueUnder(tone.doses ?? {}, pigment)),
		]),
	};
}

/** A row of the card for each key, a column a load. */
function pourSlots(
	{ pours = [], load, mix }: JobFile,
	studio: StudioFile,
): Slots {
	const ingredients = ingredientsOf(studio, mix);
	const loads = Array.from({ length: MOST.pours }, (_, i) =>
		pours.find((pour) => pour.load === i + 1),
	);
	const across = (value: (pour: PourInput) => Typed | undefined): Typed[] =>
		loads.map((pour) => (pour ? (value(pour) ?? "") : ""));
	return {
		...(load !== undefined && { load }),
		...Object.fromEntries(
			Object.entries(POUR).map(([key, field]) => [
				key,
				[across((pour) => cellOf(field, pour[key as keyof typeof POUR]))],
			]),
		),
		weighed: Array.from({ length: CARD_ROWS.weighed }, (_, row) => {
			const name =
				row === CARD_ROWS.weighed - 1
					? ICE
					: (ingredients.slice(0, -1)[row] ?? "");
			return across(({ weighed = {} }) =>
				name === "" ? "" : valueUnder(weighed, name),
			);
		}),
		steps: Array.from({ length: CARD_ROWS.steps }, (_, step) =>
			across(({ steps = {} }) => steps[String(step)]),
		),
		corrections: Array.from({ length: MOST.corrections }, (_, i) =>
			CORRECTION_PARTS.map((part) =>
				across(({ corrections = [] }) => {
					const { added, ...typed } = corrections[i] ?? {};
					return part === "added" ? addedText(added) : typed[part];
				}),
			),
		).flat(),
	};
}

/** Every typed cell of the job's tabs. */
export const jobSlots = (job: JobFile, studio: StudioFile): Slots => ({
	...listSlots(JOB, job),
	...tableSlot("pieces", PIECE, job.pieces),
	...tableSlot("cutouts", CUTOUT, job.cutouts),
	...tableSlot("knockouts", KNOCKOUT, job.knockouts),
	...startSlots(LOOK, job.units),
	...listSlots(LOOK, job),
	...toneSlots(job),
	...(job.pours || job.load !== undefined ? pourSlots(job, studio) : {}),
	...listSlots(CURE, job),
	...tableSlot("cureLog", CURE_LOG, job.cureLog),
	...listSlots(PRICE, job),
	...whatIfSlots(job),
	...tableSlot("changes", CHANGE, job.changes),
	...tableSlot("payments", PAYMENT, job.payments),
	...workSlots(job),
	...(job.goods && { goods: job.goods.map((row) => rowOf(GOODS, row)) }),
	...tableSlot("travel", TRAVEL, job.travel),
	...listSlots(QUOTE, job),
});

/** Both plans; what a file leaves out of them begins as in a new job. */
function whatIfSlots({ whatIfs }: JobFile): Slots {
	if (whatIfs === undefined) return {};
	const plans = WHAT_IF_STARTS.map((start, index) => ({
		...start,
		...whatIfs[index],
	}));
	return Object.fromEntries(
		Object.entries(WHAT_IF).map(([key, field]) => [
			key,
			[plans.map((plan) => cellOf(field, plan[key as keyof typeof WHAT_IF]))],
		]),
	);
}

/** Hours of every operation; hours each that a file leaves out begin as in a new job. */
const workSlots = ({ work }: JobFile): Slots =>
	work === undefined
		? {}
		: {
				work: OPERATION_KEYS.map((key) =>
					rowOf(WORK, { hoursEach: OPERATIONS[key].hoursEach, ...work[key] }),
				),
			};
