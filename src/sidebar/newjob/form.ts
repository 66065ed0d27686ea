/** The New job form as it is typed: a job's file whose fields are texts, so that nothing a person wrote is changed. */
import { sum } from "../../calc/sum";
import type { Fields } from "../../job/fields/field";
import { CUTOUT } from "../../job/fields/openings";
import { PIECE } from "../../job/fields/piece";
import { TONE } from "../../job/fields/tone";
import type { JobFile } from "../../job/jobfile";
import type { UnitSystem } from "../../job/reading/units";
import { mixNames, type StudioFile } from "../../job/studiofile";

/** A row of the form; `key` is its own for as long as it is there. */
type FormRow<F extends Fields> = { [K in keyof F]: string } & { key: number };

export type PieceRow = FormRow<typeof PIECE>;
export type CutoutRow = FormRow<typeof CUTOUT>;
export type ToneRow = FormRow<typeof TONE> & {
	/** Percent as typed, by pigment. */
	doses: Readonly<Record<string, string>>;
};

export interface JobForm {
	units: UnitSystem;
	client: string;
	title: string;
	pourDate: string;
	mix: string;
	pieces: readonly PieceRow[];
	cutouts: readonly CutoutRow[];
	/** Pigments that the tones show a field for. */
	pigments: readonly string[];
	tones: readonly ToneRow[];
	/** What the file that it was started from has besides. */
	rest: Partial<JobFile>;
}

let lastKey = 0;
const newKey = (): number => {
	lastKey += 1;
	return lastKey;
};

/** A row with what new ones begin with. */
const blankRow = <F extends Fields>(fields: F): FormRow<F> =>
	({
		...Object.fromEntries(
			Object.entries(fields).map(([key, { start = "" }]) => [
				key,
				String(start),
			]),
		),
		key: newKey(),
	}) as FormRow<F>;

export const blankPiece = (): PieceRow => blankRow(PIECE);
export const blankCutout = (piece = ""): CutoutRow => ({
	...blankRow(CUTOUT),
	piece,
});
export const blankTone = (share = ""): ToneRow => ({
	...blankRow(TONE),
	share,
	doses: {},
});

export const blankForm = (studio: StudioFile, units: UnitSystem): JobForm => ({
	units,
	client: "",
	title: "",
	pourDate: "",
	mix: mixNames(studio)[0] ?? "",
	pieces: [blankPiece()],
	cutouts: [],
	pigments: [],
	tones: [blankTone("100")],
	rest: {},
});

const LENGTHS = Object.entries(PIECE)
	.filter(([, { kind }]) => kind === "length")
	.map(([key]) => key as keyof typeof PIECE);

/** True for a piece that nobody has begun to type. */
export const pieceIsBlank = (row: PieceRow): boolean =>
	["name" as const, ...LENGTHS].every((field) => row[field].trim() === "");

export const filledPieces = (form: JobForm): readonly PieceRow[] =>
	form.pieces.filter((row) => !pieceIsBlank(row));

/** The field's id in the page; the field `row` stands for the row as a whole. */
export const fieldId = (key: number, field: string): string =>
	`row${key}-${field}`;

/** The field of a pigment's dose in a tone. */
export const doseField = (pigment: string): string => `dose-${pigment}`;

type Rows = "pieces" | "cutouts" | "tones";

/** The form with some fields of one row changed. */
export function withRow<R extends Rows>(
	form: JobForm,
	rows: R,
	key: number,
	change: Partial<JobForm[R][number]>,
): JobForm {
	const list: readonly { key: number }[] = form[rows];
	return {
		...form,
		[rows]: list.map((row) => (row.key === key ? { ...row, ...change } : row)),
	};
}

/** The form with a piece renamed; its cutouts go along. */
export function withPieceName(
	form: JobForm,
	{ key, name: before }: PieceRow,
	name: string,
): JobForm {
	const follows = (row: CutoutRow) =>
		before.trim() !== "" && row.piece.trim() === before.trim();
	return {
		...withRow(form, "pieces", key, { name }),
		cutouts: form.cutouts.map((row) =>
			follows(row) ? { ...row, piece: name.trim() } : row,
		),
	};
}

/** The form without one row; the last piece or tone becomes a blank one. */
export function withoutRow(form: JobForm, rows: Rows, key: number): JobForm {
	const list: readonly { key: number }[] = form[rows];
	const left = list.filter((row) => row.key !== key);
	if (left.length > 0 || rows === "cutouts") return { ...form, [rows]: left };
	const blank = rows === "pieces" ? blankPiece() : blankTone("100");
	return { ...form, [rows]: [blank] };
}

/** The share left for the next tone, as typed text; blank where nothing is left. */
export function shareLeft(tones: readonly ToneRow[]): string {
	const taken = sum(
		tones.map(({ share }) => Number(share.replace(",", ".")) || 0),
	);
	return taken < 100 ? String(Number((100 - taken).toPrecision(6))) : "";
}
