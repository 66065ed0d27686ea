/** The form's rows as the cells of a range, for the sheet functions. */
import {
	CUTOUT_FIELDS,
	type CutoutField,
	type CutoutRow,
	PIECE_FIELDS,
	type PieceField,
	type PieceRow,
	type ToneRow,
} from "./form";
import { numberOrText, percentOrText } from "./typed";

export type Cell = number | string;

const WORDS = new Set(["name", "piece", "shape"]);

const cellOf = (field: string, typed: string): Cell =>
	WORDS.has(field) ? typed.trim() : numberOrText(typed);

/** A row of PIECE_TAKEOFF's `pieces`. */
export const pieceCells = (row: PieceRow): Cell[] =>
	(Object.keys(PIECE_FIELDS) as PieceField[]).map((field) =>
		cellOf(field, row[field]),
	);

/** A row of PIECE_TAKEOFF's `cutouts`. */
export const cutoutCells = (row: CutoutRow): Cell[] =>
	(Object.keys(CUTOUT_FIELDS) as CutoutField[]).map((field) =>
		cellOf(field, row[field]),
	);

/** A row of TONE_WEIGHTS' `tones`: name, share, a dose a pigment. */
export const toneCells = (
	row: ToneRow,
	pigments: readonly string[],
): Cell[] => [
	row.name.trim(),
	percentOrText(row.share),
	...pigments.map((pigment) => percentOrText(row.doses[pigment] ?? "")),
];
