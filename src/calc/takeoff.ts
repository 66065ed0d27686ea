/** Areas, edges and volumes of the pieces of a job. */
import { cutoutTotals, type PieceCutout } from "./cutouts";
import { at, InputError, quoted } from "./errors";
import { nameKey } from "./names";
import { withRounding } from "./rounding";
import {
	type Dimensions,
	type LengthText,
	type Outline,
	outlineOf,
} from "./shapes";

export interface Piece extends Dimensions {
	/** Place in the table, for errors. */
	row: number;
	name: string;
	quantity: number;
	/** Below the slab. */
	dropHeightM?: number;
	dropRunM?: number;
	dropThicknessM?: number;
}

export interface PieceSizes {
	faceM2: number;
	edgeM: number;
	volumeM3: number;
	finishM2: number;
	/** For the whole quantity. */
	volumeAllM3: number;
}

/** Volume of a flat rectangular slab, m³. */
export const slabVolumeM3 = (slab: {
	lengthM: number;
	widthM: number;
	thicknessM: number;
}): number => slab.lengthM * slab.widthM * slab.thicknessM;

/**
 * Sizes of one piece of each row: face m², edge m, volume m³, finish area m², and volume of the quantity m³.
 *
 * Volume: the shape's, less cutout area × thickness, plus drop height × run × drop thickness (corners are not deducted).
 * Finish area: the shape's, less cutouts, plus cutout rims × thickness, plus drop height × run.
 *
 * @throws InputError when names repeat, a dimension is missing, unused or out of its shape's limits, a drop edge is
 * half given, or a cutout has no piece, does not fit or leaves no face.
 */
export function pieceSizes(
	pieces: readonly Piece[],
	cutouts: readonly PieceCutout[],
	lengthText: LengthText,
): PieceSizes[] {
	checkUnique(pieces);
	const byPiece = cutoutsByPiece(pieces, cutouts);
	return pieces.map((piece) => {
		const outline = at(`row ${piece.row}`, () => outlineOf(piece, lengthText));
		const own = byPiece.get(nameKey(piece.name)) ?? [];
		return sizesOf(piece, outline, own, lengthText);
	});
}

function checkUnique(pieces: readonly Piece[]): void {
	const rows = new Map<string, number>();
	for (const { name, row } of pieces) {
		const earlier = rows.get(nameKey(name));
		if (earlier !== undefined)
			throw new InputError(
				`row ${row}: name must be unique, ${quoted(name)} is in row ${earlier} too`,
			);
		rows.set(nameKey(name), row);
	}
}

function cutoutsByPiece(
	pieces: readonly Piece[],
	cutouts: readonly PieceCutout[],
): Map<string, PieceCutout[]> {
	const byPiece = new Map<string, PieceCutout[]>(
		pieces.map(({ name }) => [nameKey(name), []]),
	);
	for (const cutout of cutouts) {
		const own = byPiece.get(nameKey(cutout.piece));
		if (!own)
			throw new InputError(
				`cutouts row ${cutout.row}: piece ${quoted(cutout.piece)} is not in pieces`,
			);
		own.push(cutout);
	}
	return byPiece;
}

function sizesOf(
	piece: Piece,
	outline: Outline,
	cutouts: readonly PieceCutout[],
	lengthText: LengthText,
): PieceSizes {
	const { row, quantity, thicknessM } = piece;
	const cut = cutoutTotals(cutouts, outline, lengthText);
	if (withRounding(cut.areaM2) >= outline.cuttableM2 && cutouts.length > 0)
		throw new InputError(
			`row ${row}: the cutouts together leave nothing of the ${piece.shape === "basin" ? "floor" : "face"}`,
		);
	const drop = at(`row ${row}`, () => dropEdge(piece));
	const volumeM3 =
		outline.volumeM3 - cut.areaM2 * thicknessM + drop.areaM2 * drop.thicknessM;
	return {
		faceM2: outline.faceM2 - cut.areaM2,
		edgeM: outline.edgeM + cut.rimM,
		volumeM3,
		finishM2:
			outline.finishM2 - cut.areaM2 + cut.rimM * thicknessM + drop.areaM2,
		volumeAllM3: volumeM3 * quantity,
	};
}

/** What a drop edge adds. @throws InputError when it is half given. */
export function dropEdge(piece: Piece): { areaM2: number; thicknessM: number } {
	const { dropHeightM, dropRunM, dropThicknessM, thicknessM } = piece;
	if (dropHeightM === undefined) {
		const stray =
			dropRunM !== undefined
				? "drop run"
				: dropThicknessM !== undefined
					? "drop thickness"
					: undefined;
		if (stray)
			throw new InputError(
				`drop height is blank and ${stray} is not: fill the drop height or clear the ${stray}`,
			);
		return { areaM2: 0, thicknessM };
	}
	if (dropRunM === undefined)
		throw new InputError("drop run is blank and drop height is not");
	return {
		areaM2: dropHeightM * dropRunM,
		thicknessM: dropThicknessM ?? thicknessM,
	};
}

/** Longest of a piece's outside dimensions, m; unknown for a piece given by its area. */
export function longestSideM(piece: Piece): number | undefined {
	const { shape, aM = 0, bM = 0, cM = 0 } = piece;
	if (shape === "area") return undefined;
	return shape === "basin" || shape === "tube"
		? Math.max(aM, bM, cM)
		: Math.max(aM, bM);
}

/** What is seen of a drop edge from the front, m: the drop below the slab and the slab's thickness. */
export const visibleDropM = ({
	dropHeightM,
	thicknessM,
}: Piece): number | undefined =>
	dropHeightM === undefined ? undefined : dropHeightM + thicknessM;

/** Whether it has walls: a basin or a tube. */
export const isHollow = ({ shape }: Piece): boolean =>
	shape === "basin" || shape === "tube";

/** Whether it is one flat slab whose outline is known. */
export const isSlab = (piece: Piece): boolean =>
	!isHollow(piece) && piece.shape !== "area";
