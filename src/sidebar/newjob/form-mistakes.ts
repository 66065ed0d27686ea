/** What keeps the form from being a job, at the field where it is wrong. */

import type { Basis } from "../../job/answers/basis";
import { type Field, type Fields, wordOf } from "../../job/fields/field";
import { JOB } from "../../job/fields/job";
import { CUTOUT } from "../../job/fields/openings";
import { pieceFields } from "../../job/fields/piece";
import { LOOK, TONE } from "../../job/fields/tone";
import { DOSE, type JobFile } from "../../job/jobfile";
import { type Mistake, sentenceOf } from "../../job/mistakes";
import { isBlank } from "../../job/reading/cells";
import type { UnitSystem } from "../../job/reading/units";
import { refusals } from "../../job/refusals";
import { doseField, fieldId, filledPieces, type JobForm } from "./form";

/** Sentence by the field's id, in the order of the form. */
export type Mistakes = ReadonlyMap<string, string>;

/** Of a form whose job is worked out. */
export function mistakesIn(form: JobForm, basis: Basis): Mistakes {
	const typed = new Map(typedMistakes(form, basis.given.job));
	if (filledPieces(form).length === 0)
		typed.set(fieldId(form.pieces[0]?.key ?? 0, "name"), "name is blank");
	const wrongRows = new Set([...typed.keys()].map(rowOf));
	const refused = refusals(basis)
		.map(({ path, say }) => [idOf(form, path), say] as const)
		.filter(([id]) => !wrongRows.has(rowOf(id)));
	return inOrder(form, new Map([...typed, ...refused]));
}

/** `row7-` of `row7-name`; a field of the job itself is a row of its own. */
const rowOf = (id: string): string => id.replace(/^(row\d+-).*$/, "$1");

/** Mistakes of the job first, then those of each row where it stands. */
function inOrder(form: JobForm, mistakes: Mistakes): Mistakes {
	const { pieces, cutouts, tones } = form;
	const rows = [...pieces, ...cutouts, ...tones].map(({ key }) =>
		fieldId(key, ""),
	);
	const place = (id: string) => rows.indexOf(rowOf(id));
	return new Map(
		[...mistakes].sort(([one], [other]) => place(one) - place(other)),
	);
}

type Found = readonly [id: string, sentence: string];

function typedMistakes(form: JobForm, job: JobFile): Found[] {
	const { units, tones } = form;
	const inRow = (
		fields: Fields,
		row: object | undefined,
		key: number,
	): Found[] =>
		rowMistakes(fields, row ?? {}, units, (name) => fieldId(key, name));
	return [
		...rowMistakes(
			{ client: JOB.client, title: JOB.title, mix: LOOK.mix },
			job,
			units,
			(name) => name,
		),
		...filledPieces(form).flatMap(({ key }, index) => {
			const row = job.pieces[index];
			return inRow(pieceFields(row?.shape), row, key);
		}),
		...form.cutouts.flatMap(({ key }, index) =>
			inRow(CUTOUT, job.cutouts?.[index], key),
		),
		...tones.flatMap(({ key }, index) => {
			const { doses = {}, ...row } = job.tones[index] ?? {};
			return [
				...inRow(ASKED_TONE, row, key),
				...Object.entries(doses).flatMap(([name, dose]) =>
					mistakeOf(DOSE, name, dose, units).map(
						(say): Found => [fieldId(key, doseField(name)), say],
					),
				),
			];
		}),
	];
}

/** A file may leave the share of a tone for later; the form asks for it. */
const ASKED_TONE: Fields = {
	...TONE,
	share: { ...TONE.share, required: true },
};

const rowMistakes = (
	fields: Fields,
	row: object,
	units: UnitSystem,
	idFor: (name: string) => string,
): Found[] =>
	Object.entries(fields).flatMap(([name, field]) =>
		mistakeOf(
			field,
			wordOf(name),
			(row as Record<string, unknown>)[name],
			units,
		).map((say): Found => [idFor(name), say]),
	);

function mistakeOf(
	field: Field,
	word: string,
	typed: unknown,
	units: UnitSystem,
): string[] {
	if (isBlank(typed)) return field.required ? [`${word} is blank`] : [];
	const say = sentenceOf(() => field.read(word, typed, units));
	return say === undefined ? [] : [say];
}

/** The form's field of a path in the job's file. */
function idOf(form: JobForm, path: Mistake["path"]): string {
	const [, list, index = "0", key = "row"] =
		/^(pieces|cutouts|tones)(?:\[(\d+)\](?:\.(.+))?)?$/.exec(path) ?? [];
	if (!list) return path;
	const rows = {
		pieces: filledPieces(form),
		cutouts: form.cutouts,
		tones: form.tones,
	}[list as "pieces" | "cutouts" | "tones"];
	return fieldId(
		rows[Number(index)]?.key ?? 0,
		key.replace(/^doses\./, doseField("")),
	);
}
