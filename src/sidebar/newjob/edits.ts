/** The form after one of its rows was changed, renamed or taken out. */
import { sum } from "../../calc/sum";
import {
	blankPiece,
	blankTone,
	type CutoutRow,
	type JobForm,
	type PieceRow,
	type ToneRow,
} from "./form";

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
