/** What keeps the form from being a job, at the field where it is wrong, in the words the cells use. */

import { area, length } from "../../functions/arguments";
import { callFunction } from "../../functions/call";
import type { CellParam } from "../../functions/declare";
import { PIECE_TAKEOFF } from "../../functions/takeoff";
import { TONE_WEIGHTS } from "../../functions/tones";
import type { PanelStart } from "../../sheets/messages";
import { type Cell, cutoutCells, pieceCells, toneCells } from "./cells";
import {
	CUTOUT_FIELDS,
	filledPieces,
	type JobForm,
	PIECE_FIELDS,
} from "./form";
import {
	cellMistakes,
	columnsOf,
	type FormTable,
	fieldId,
	type Mistakes,
	placed,
	sentenceOf,
} from "./sentences";

export interface FormMistakes {
	job: Mistakes;
	pieces: Mistakes;
	tones: Mistakes;
}

export const mistakesIn = (form: JobForm, start: PanelStart): FormMistakes => ({
	job: jobMistakes(form, start),
	pieces: pieceMistakes(form),
	tones: toneMistakes(form),
});

/** Sentence by field, in the order of the form. */
export const sentencesOf = ({
	job,
	pieces,
	tones,
}: FormMistakes): Map<string, string> => new Map([...job, ...pieces, ...tones]);

/** What PIECE_TAKEOFF is called with. */
export const takeoffArguments = (form: JobForm): unknown[] => [
	filledPieces(form).map(pieceCells),
	form.cutouts.length > 0 ? form.cutouts.map(cutoutCells) : "",
	form.units,
];

/** The doses' columns: a batch without pigment has one of zeros, since TONE_WEIGHTS wants one. */
const doseColumns = ({ pigments }: JobForm): readonly string[] =>
	pigments.length > 0 ? pigments : ["no pigment"];

/** What TONE_WEIGHTS is called with. */
export const toneArguments = (
	form: JobForm,
	mass: number,
	binderShare: number,
): unknown[] => [
	form.tones.map((row) => toneCells(row, doseColumns(form))),
	[doseColumns(form)],
	mass,
	binderShare,
	form.units,
];

function jobMistakes(
	{ client, title, mix }: JobForm,
	{ mixes }: PanelStart,
): Mistakes {
	const found: Mistakes = new Map(
		Object.entries({ client, title, mix })
			.filter(([, typed]) => typed.trim() === "")
			.map(([name]) => [name, `${name} is blank`]),
	);
	if (mix !== "" && !mixes.some(({ name }) => name === mix))
		found.set("mix", `mix "${mix}" is not on the Mixes tab`);
	return found;
}

const FACE_AREA = area("", { optional: true });
const FIRST_LENGTH = length("", { optional: true });

/** PIECE_TAKEOFF's own, but for A: it reads that late, when it knows the shape, and its mistake is wanted with the others. */
function pieceColumns(cells: readonly Cell[]): CellParam<unknown>[] {
	const columns = columnsOf(PIECE_TAKEOFF, "pieces");
	columns[3] = cells[2] === "area" ? FACE_AREA : FIRST_LENGTH;
	return columns;
}

function pieceTable(form: JobForm): FormTable {
	return {
		name: "pieces",
		rows: filledPieces(form).map((row) => ({
			key: row.key,
			cells: pieceCells(row),
		})),
		fields: Object.entries(PIECE_FIELDS),
		columns: pieceColumns,
	};
}

const cutoutTable = (form: JobForm): FormTable => ({
	name: "cutouts",
	rows: form.cutouts.map((row) => ({ key: row.key, cells: cutoutCells(row) })),
	fields: Object.entries(CUTOUT_FIELDS),
	columns: () => columnsOf(PIECE_TAKEOFF, "cutouts"),
});

function pieceMistakes(form: JobForm): Mistakes {
	const pieces = pieceTable(form);
	const cutouts = cutoutTable(form);
	if (pieces.rows.length === 0)
		return new Map([
			[fieldId(form.pieces[0]?.key ?? 0, "name"), "name is blank"],
		]);
	const found: Mistakes = new Map([
		...cellMistakes(pieces, form.units),
		...cellMistakes(cutouts, form.units),
	]);
	for (const row of pieces.rows.filter(({ key }) => rowIsWell(found, key))) {
		const sentence = sentenceOf(() =>
			callFunction(PIECE_TAKEOFF, [[row.cells], "", form.units]),
		);
		if (sentence) found.set(...placed(sentence, [{ ...pieces, rows: [row] }]));
	}
	if (found.size > 0) return found;
	const sentence = sentenceOf(() =>
		callFunction(PIECE_TAKEOFF, takeoffArguments(form)),
	);
	return sentence ? new Map([placed(sentence, [pieces, cutouts])]) : found;
}

const rowIsWell = (found: Mistakes, key: number): boolean =>
	![...found.keys()].some((id) => id.startsWith(fieldId(key, "")));

function toneMistakes(form: JobForm): Mistakes {
	const { pigments } = form;
	const tones: FormTable = {
		name: "tones",
		rows: form.tones.map((row) => ({
			key: row.key,
			cells: toneCells(row, pigments),
		})),
		fields: [
			["name", "name"],
			["share", "share"],
			...pigments.map((pigment) => [doseField(pigment), pigment] as const),
		],
		columns: () => columnsOf(TONE_WEIGHTS, "tones", pigments.length),
	};
	const found = cellMistakes(tones, form.units);
	if (found.size > 0) return found;
	const sentence = sentenceOf(() =>
		callFunction(TONE_WEIGHTS, toneArguments(form, 1, 1)),
	);
	return sentence ? new Map([placed(sentence, [tones])]) : found;
}

/** The field of a pigment's dose in a tone. */
export const doseField = (pigment: string): string => `dose-${pigment}`;
