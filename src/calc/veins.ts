/** An impression of a folded piece, pixel by pixel. */
import type { PlanCutout } from "./cutoutplan";
import { InputError } from "./errors";
import type { Dimensions } from "./shapes";
import { type Silhouette, silhouetteOf } from "./silhouette";
import { sum } from "./sum";
import { veinField } from "./veinfield";

export interface VeinedPiece {
	outline: Dimensions;
	cutouts: readonly PlanCutout[];
	/** Corner of an L's notch or side of a U's, in lower case; blank where it is not known. */
	notchAt?: string;
	/** Relative weights of the tones in the order in which they lie before folding. */
	shares: readonly number[];
	folds: number;
	/** The same seed gives the same picture. */
	seed: number;
	/** Of the longer side. */
	widthPx: number;
	/** As a mold for casting face down is laid out: left and right change sides. */
	mirrored: boolean;
}

export interface Veins {
	widthPx: number;
	heightPx: number;
	/** A row after the other: the tone's place in the shares, `OUTSIDE` or `EDGE`. */
	tones: Uint8Array;
}

export const OUTSIDE = 255;
/** Where two faces of a basin meet. */
export const EDGE = 254;

/**
 * The tone of each pixel. Pixels are ranked by the folded field and dealt out in that order, so that each tone has its
 * share of the visible area to the pixel.
 *
 * @throws InputError when no share is above 0 or the piece has no size.
 */
export function veins(piece: VeinedPiece): Veins {
	const seen = silhouetteOf(piece.outline, piece.cutouts, piece.notchAt);
	const perPx = Math.max(seen.widthM, seen.heightM) / piece.widthPx;
	const widthPx = Math.max(1, Math.round(seen.widthM / perPx));
	const heightPx = Math.max(1, Math.round(seen.heightM / perPx));
	const tones = facesSeen(seen, widthPx, heightPx);
	const values = fieldOver(piece, seen, tones, widthPx);
	dealOut(tones, values, piece.shares);
	return {
		widthPx,
		heightPx,
		tones: piece.mirrored ? mirror(tones, widthPx) : tones,
	};
}

/** 0 where a face is seen, else `OUTSIDE` or `EDGE`. */
function facesSeen(
	{ widthM, heightM, faceAt }: Silhouette,
	widthPx: number,
	heightPx: number,
): Uint8Array {
	const faces = new Uint8Array(widthPx * heightPx);
	for (let row = 0, i = 0; row < heightPx; row++) {
		const yM = ((row + 0.5) / heightPx - 0.5) * heightM;
		for (let column = 0; column < widthPx; column++)
			faces[i++] = faceAt(((column + 0.5) / widthPx - 0.5) * widthM, yM);
	}
	// A basin's outermost face is the rim all around, so that a row's end meets the next row's start without an edge.
	const meets = (face: number, other = 0) => other > 0 && other !== face;
	return faces.map((face, i) => {
		if (face === 0) return OUTSIDE;
		return meets(face, faces[i + 1]) || meets(face, faces[i + widthPx])
			? EDGE
			: 0;
	});
}

/** The field at each pixel of a face, in their order. */
function fieldOver(
	{ seed, folds }: VeinedPiece,
	{ widthM, heightM, alongM }: Silhouette,
	tones: Uint8Array,
	widthPx: number,
): Float64Array {
	const field = veinField(seed, folds);
	const heightPx = tones.length / widthPx;
	const values = new Float64Array(tones.length);
	let count = 0;
	for (let i = 0; i < tones.length; i++) {
		if (tones[i] !== 0) continue;
		const column = i % widthPx;
		const row = (i - column) / widthPx;
		const xM = alongM(((column + 0.5) / widthPx - 0.5) * widthM);
		const yM = ((row + 0.5) / heightPx - 0.5) * heightM;
		// The little more a pixel tells equal values apart.
		values[count] = field(xM, yM) + 1e-12 * count++;
	}
	return values.subarray(0, count);
}

function dealOut(
	tones: Uint8Array,
	values: Float64Array,
	shares: readonly number[],
): void {
	const total = sum(shares);
	if (!(total > 0))
		throw new InputError("share must be above 0 for at least one tone");
	const ranked = values.slice().sort();
	let reached = 0;
	const ends = shares.map((share) => {
		reached += share / total;
		return ranked[Math.round(reached * ranked.length)] ?? Infinity;
	});
	let next = 0;
	for (let i = 0; i < tones.length; i++) {
		if (tones[i] !== 0) continue;
		const value = values[next++] as number;
		let tone = 0;
		while (value >= (ends[tone] as number)) tone++;
		tones[i] = tone;
	}
}

function mirror(tones: Uint8Array, widthPx: number): Uint8Array {
	const mirrored = tones.slice();
	for (let start = 0; start < tones.length; start += widthPx)
		mirrored.subarray(start, start + widthPx).reverse();
	return mirrored;
}
