/** The pieces of a job as the picture draws them, from cells as people typed them. */
import type { PieceCutout } from "../../calc/cutouts";
import { at } from "../../calc/errors";
import type { Dimensions } from "../../calc/shapes";
import { pieceSizes } from "../../calc/takeoff";
import { type Fields, type Read, wordOf } from "../../job/fields/field";
import { CUTOUT } from "../../job/fields/openings";
import { type PIECE, pieceFields } from "../../job/fields/piece";
import { isBlank } from "../../job/reading/cells";
import { fromSi, type UnitSystem, unitName } from "../../job/reading/units";
import type { JobView } from "../../sheets/messages";

export interface SeenPiece {
	outline: Dimensions;
	cutouts: readonly PieceCutout[];
	notchAt: string;
}

type Cells = readonly unknown[];

/** The first cells of a row, each by its own field; a blank one that may be blank is undefined. */
function read<F extends Fields>(
	fields: F,
	cells: Cells,
	units: UnitSystem,
): Read<F> {
	return Object.fromEntries(
		Object.entries(fields).map(([key, field], i) => {
			const cell = cells[i] ?? "";
			return [
				key,
				isBlank(cell) && !field.required
					? undefined
					: field.read(wordOf(key), cell, units),
			];
		}),
	) as Read<F>;
}

/** Up to the thickness: drop edges are not drawn. */
const sized = ({
	name,
	quantity,
	shape,
	a,
	b,
	c,
	d,
	thickness,
}: typeof PIECE) => ({ name, quantity, shape, a, b, c, d, thickness });

const keyOf = (name: unknown): string =>
	String(name ?? "")
		.trim()
		.toLowerCase();

/** The names of the pieces; rows without one are passed over. */
export const pieceNames = ({ pieces }: JobView): string[] =>
	pieces.map(([name]) => String(name ?? "").trim()).filter(Boolean);

/** The place of a piece among the rows. */
export const pieceRow = ({ pieces }: JobView, name: string): number =>
	pieces.findIndex(([cell]) => keyOf(cell) === keyOf(name));

/**
 * The piece of this name.
 *
 * @throws InputError when its cells cannot be read, or piece and cutouts are not possible.
 */
export function seenPiece(job: JobView, name: string): SeenPiece {
	const outline = at(name, () =>
		outlineFrom(job.pieces[pieceRow(job, name)] ?? [], job.units),
	);
	const cutouts = job.cutouts.flatMap((cells, i) =>
		keyOf(cells[0]) === keyOf(name)
			? [at(`cutouts row ${i + 1}`, () => cutoutFrom(cells, i + 1, job.units))]
			: [],
	);
	at(name, () =>
		pieceSizes(
			[{ ...outline, row: pieceRow(job, name) + 1, name, quantity: 1 }],
			cutouts,
			(lengthM) =>
				`${Number(fromSi(lengthM, "length", job.units).toPrecision(6))} ${unitName("length", job.units)}`,
		),
	);
	return { outline, cutouts, notchAt: keyOf(job.notches[pieceRow(job, name)]) };
}

function outlineFrom(cells: Cells, units: UnitSystem): Dimensions {
	const fields = sized(pieceFields(cells[2]));
	const {
		shape = "rectangle",
		a,
		b,
		c,
		d,
		thickness,
	} = read(fields, cells, units);
	const free = shape === "area";
	return {
		shape,
		aM: free ? undefined : a,
		areaM2: free ? a : undefined,
		bM: b,
		cM: c,
		dM: d,
		thicknessM: thickness ?? 0,
	};
}

function cutoutFrom(cells: Cells, row: number, units: UnitSystem): PieceCutout {
	const { piece, count, shape, a, b } = CUTOUT;
	const cutout = read({ piece, count, shape, a, b }, cells, units);
	return {
		row,
		piece: cutout.piece ?? "",
		count: cutout.count ?? 1,
		shape: cutout.shape ?? "rectangle",
		aM: cutout.a ?? 0,
		bM: cutout.b,
	};
}
