/** The form as the job's file that the script writes, and a file as the form. */
import type { Field, Fields, Row, Typed } from "../../job/fields/field";
import { CUTOUT } from "../../job/fields/openings";
import { PIECE } from "../../job/fields/piece";
import { TONE } from "../../job/fields/tone";
import type { JobFile, ToneInput } from "../../job/jobfile";
import { isBlank } from "../../job/reading/cells";
import {
	mixNames,
	type StudioFile,
	spelled,
	studioPigments,
} from "../../job/studiofile";
import { numberOrText, percentOrText } from "../typed-number";
import {
	blankCutout,
	blankPiece,
	blankTone,
	filledPieces,
	type JobForm,
	type ToneRow,
} from "./form";

/** Lengths as typed (a bare number as number), shares as numbers; what is no number stays a text, and is a mistake. */
export const jobOf = (form: JobForm): JobFile => ({
	...form.rest,
	units: form.units,
	client: form.client.trim(),
	title: form.title.trim(),
	...(form.pourDate !== "" && { pourDate: form.pourDate }),
	mix: form.mix,
	pieces: filledPieces(form).map((row) => rowOf(PIECE, row)),
	...(form.cutouts.length > 0 && {
		cutouts: form.cutouts.map((row) => rowOf(CUTOUT, row)),
	}),
	tones: form.tones.map((tone) => toneOf(tone, form.pigments)),
});

/** What is typed in a field, as a file keeps it. */
function typedOf({ kind }: Field, text: string): Typed {
	if (kind === "share") return percentOrText(text);
	return kind === "length" || kind === "number"
		? numberOrText(text)
		: text.trim();
}

const rowOf = <F extends Fields>(
	fields: F,
	row: { readonly [K in keyof F]: string },
): Row<F> =>
	Object.fromEntries(
		Object.entries(fields)
			.map(([key, field]) => [key, typedOf(field, row[key] ?? "")] as const)
			.filter(([, typed]) => typed !== ""),
	) as Row<F>;

/** A blank dose is left out, so that a pigment which nobody doses is not in the job. */
const toneOf = (row: ToneRow, pigments: readonly string[]): ToneInput => ({
	...rowOf(TONE, row),
	doses: Object.fromEntries(
		pigments
			.map((name) => [name, percentOrText(row.doses[name] ?? "")] as const)
			.filter(([, dose]) => dose !== ""),
	),
});

/** A file without mistakes as the form, in the studio's spelling of names; what the form has no entry for is kept beside it. */
export function formOf(file: JobFile, studio: StudioFile): JobForm {
	const pigmentOf = (name: string) => spelled(name, studioPigments(studio));
	const { units, client, title, pourDate, mix, ...others } = file;
	const { pieces, cutouts, pigments, tones, ...rest } = others;
	const dosed = tones.flatMap(({ doses = {} }) =>
		Object.entries(doses)
			.filter(([, dose]) => !isBlank(dose))
			.map(([name]) => name),
	);
	return {
		units,
		client: String(client ?? ""),
		title: String(title ?? ""),
		pourDate: String(pourDate ?? ""),
		mix: spelled(String(mix ?? ""), mixNames(studio)),
		pieces: pieces.map((row) => ({ ...blankPiece(), ...textsOf(PIECE, row) })),
		cutouts: (cutouts ?? []).map((row) => ({
			...blankCutout(),
			...textsOf(CUTOUT, row),
		})),
		pigments: [...new Set([...(pigments ?? []), ...dosed].map(pigmentOf))],
		tones: tones.map((row) => ({
			...blankTone(),
			...textsOf(TONE, row),
			doses: Object.fromEntries(
				Object.entries(row.doses ?? {}).map(([name, dose]) => [
					pigmentOf(name),
					isBlank(dose) ? "" : percentText(dose),
				]),
			),
		})),
		rest,
	};
}

const textsOf = <F extends Fields>(
	fields: F,
	row: Row<F>,
): { [K in keyof F]: string } =>
	Object.fromEntries(
		Object.entries(fields).map(([key, { kind }]) => {
			const typed = row[key];
			if (isBlank(typed)) return [key, ""];
			return [key, kind === "share" ? percentText(typed) : String(typed)];
		}),
	) as { [K in keyof F]: string };

/** 0.55 as `55`. */
const percentText = (share: unknown): string =>
	String(Number((Number(share) * 100).toPrecision(15)));
