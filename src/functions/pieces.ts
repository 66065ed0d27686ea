/** The table of a job's pieces, as several functions take it. */
import { CUTOUT_SHAPES } from "../calc/cutouts";
import { at } from "../calc/errors";
import { SHAPES } from "../calc/shapes";
import type { Piece } from "../calc/takeoff";
import { checkComma } from "../job/reading/typed";
import { area, custom, length, number, table, text, word } from "./arguments";
import type { Arguments } from "./declare";

/** In a column of typed lengths, cells are plain text: there a bare number is a text too. */
function numeric(name: string, cell: unknown): unknown {
	if (typeof cell !== "string" || !/^\s*\d+(?:[.,]\d+)?\s*$/.test(cell))
		return cell;
	at(name, () => checkComma(cell));
	return Number(cell.replace(",", "."));
}

const A_LENGTH = length("A as a length");
const A_AREA = area("A as an area");

/** Column A is a length, but of the shape `area` an area: what it is shows in another column of the row. */
const FACE_OR_LENGTH = custom(
	"A: first dimension; of the shape area the face area",
	(name, cell, units) => ({
		lengthM: () => A_LENGTH.read(name, cell, units),
		areaM2: () => A_AREA.read(name, numeric(name, cell), units),
	}),
	{ optional: true },
);

const dimension = (help: string) => length(help, { optional: true });

/** What a person knows of a piece. */
export const PIECES = table(
	"One row per piece, e.g. A2:K6: name, quantity, shape, A, B, C, D, thickness, drop height, drop run, drop thickness. Shapes: rectangle, round, oval, L, U, basin, tube, area (A is m² or ft²)",
	{
		name: text("Name, each one once"),
		quantity: number("How many", { min: 0, whole: true }),
		shape: word(SHAPES, "Shape"),
		a: FACE_OR_LENGTH,
		b: dimension("B: second dimension; of the shape area the outline"),
		c: dimension("C: notch across, or height of a basin or tube"),
		d: dimension("D: notch down"),
		thickness: length("Thickness; of a basin or tube that of its walls"),
		dropHeight: dimension("Drop edge: height below the slab"),
		dropRun: dimension("Drop edge: length along the outline"),
		dropThickness: dimension("Drop edge: thickness; blank = thickness"),
	},
);

/** What a person knows of a cutout. */
export const CUTOUT_COLUMNS = {
	piece: text("Name of the piece"),
	count: number("How many in each piece", { min: 1, whole: true }),
	shape: word(CUTOUT_SHAPES, "Shape"),
	a: length("A: first dimension, or the diameter"),
	b: dimension("B: second dimension"),
};

type PieceRow = Arguments<{ pieces: typeof PIECES }>["pieces"][number];

const ofRow = <T>(piece: PieceRow, read: (piece: PieceRow) => T): T =>
	at(`row ${piece.row}`, () => read(piece));

export const pieceOf = (piece: PieceRow): Piece => ({
	aM: ofRow(piece, ({ shape, a }) =>
		shape === "area" ? undefined : a?.lengthM(),
	),
	areaM2: ofRow(piece, ({ shape, a }) =>
		shape === "area" ? a?.areaM2() : undefined,
	),
	row: piece.row,
	name: piece.name,
	quantity: piece.quantity,
	shape: piece.shape,
	bM: piece.b,
	cM: piece.c,
	dM: piece.d,
	thicknessM: piece.thickness,
	dropHeightM: piece.dropHeight,
	dropRunM: piece.dropRun,
	dropThicknessM: piece.dropThickness,
});
