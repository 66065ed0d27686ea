/** The pieces of a job as the picture draws them, from cells as people typed them. */
import type { PieceCutout } from "../../calc/cutouts";
import { at } from "../../calc/errors";
import type { Dimensions } from "../../calc/shapes";
import { pieceSizes } from "../../calc/takeoff";
import { PIECE_TAKEOFF } from "../../functions/takeoff";
import { fromSi, type UnitSystem, unitName } from "../../job/reading/units";
import type { JobView } from "../../sheets/messages";
import { columnsOf } from "../newjob/sentences";

export interface SeenPiece {
	outline: Dimensions;
	cutouts: readonly PieceCutout[];
	notchAt: string;
}

type Row = readonly unknown[];

/** The words of the columns, as sentences use them. */
const PIECE = ["name", "quantity", "shape", "A", "B", "C", "D", "thickness"];
const CUTOUT = ["piece", "count", "shape", "A", "B"];

/** The cells of a row, each by its own column's rule; a blank one that may be blank is undefined. */
function read(
	table: "pieces" | "cutouts",
	words: readonly string[],
	row: Row,
	units: UnitSystem,
): unknown[] {
	const columns = columnsOf(PIECE_TAKEOFF, table);
	return words.map((word, i) => {
		const cell = row[i] ?? "";
		const column = columns[i];
		return column?.optional && cell === ""
			? undefined
			: column?.read(word, cell, units);
	});
}

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

function outlineFrom(row: Row, units: UnitSystem): Dimensions {
	const [, , shape, a, bM, cM, dM, thicknessM] = read(
		"pieces",
		PIECE,
		row,
		units,
	) as [
		string,
		number,
		Dimensions["shape"],
		{ lengthM(): number; areaM2(): number } | undefined,
		number?,
		number?,
		number?,
		number?,
	];
	const free = shape === "area";
	return {
		shape,
		aM: free ? undefined : a?.lengthM(),
		areaM2: free ? a?.areaM2() : undefined,
		bM,
		cM,
		dM,
		thicknessM: thicknessM ?? 0,
	};
}

function cutoutFrom(cells: Row, row: number, units: UnitSystem): PieceCutout {
	const [piece, count, shape, aM, bM] = read(
		"cutouts",
		CUTOUT,
		cells,
		units,
	) as [string, number, PieceCutout["shape"], number, number?];
	return { row, piece, count, shape, aM, bM };
}
