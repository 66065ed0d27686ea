/** An impression of a folded piece: the tone of each pixel, and all that shading it takes. */
import type { PlanCutout } from "../cutoutplan";
import { uniform } from "../noise";
import type { Dimensions } from "../shapes";
import { type PlanDrop, type Silhouette, silhouetteOf } from "../silhouette";
import { type Dealt, deal } from "./deal";
import { type Places, type Placing, traceFolds, tracePour } from "./trace";
import { type Waves, waveAt, waves } from "./waves";

export interface FoldedPiece {
	outline: Dimensions;
	cutouts: readonly PlanCutout[];
	/** Corner of an L's notch or side of a U's, in lower case; blank where it is not known. */
	notchAt?: string;
	drop?: PlanDrop;
	placing: Placing;
	/** Relative weights of the tones by row; the first is the ground. */
	shares: readonly number[];
	folds: number;
	/** The same seed gives the same picture. */
	seed: number;
	/** Of the longer side. */
	widthPx: number;
}

export interface Folded extends Dealt {
	widthPx: number;
	heightPx: number;
	pixelM: number;
	seed: number;
	/** The face of the piece that each pixel shows; 0 outside. */
	faces: Uint8Array;
	/** Where the mix at each pixel was before it was folded. */
	places: Places;
	/** Of each tone but the first, which is the ground. */
	fields: ToneField[];
}

/** A tone is seen where its number is high. */
export interface ToneField {
	/** By where the mix lay before it was folded. */
	lying: Waves;
	/** By where it was poured. */
	poured: Float32Array;
	/** Both together. */
	all: Float32Array;
}

/** Lengths of the waves of tones as they lie before folding. */
const LYING = {
	"bucket fold": { startM: 1.05, layered: 2 },
	"mold lay-up": { startM: 0.95 * 1.05, layered: 1.4 },
} as const;

/** What is poured first leads at its place, however often it is folded. */
const POURED = 0.5;
const POURED_M = 0.8;

/** Before fields repeat, at least; what a pour draws long is shorter before. */
const REPEAT_M = 6;
const DRAWN_LONG = 1.5;

/** A stream of random numbers of its own for each use of a seed. */
export const stream = (seed: number, use: number): (() => number) =>
	uniform(Math.imul(seed + 1, 0x9e3779b1) ^ Math.imul(use, 0x85ebca6b));

/**
 * The tones of a piece, as folded and poured.
 *
 * @throws InputError when no share is above 0 or the piece has no size.
 */
export function foldedPiece(piece: FoldedPiece): Folded {
	const seen = silhouetteOf(
		piece.outline,
		piece.cutouts,
		piece.notchAt,
		piece.drop,
	);
	const { left, top, right, bottom } = seen.bounds;
	const pixelM = Math.max(right - left, bottom - top) / piece.widthPx;
	const widthPx = Math.max(1, Math.round((right - left) / pixelM));
	const heightPx = Math.max(1, Math.round((bottom - top) / pixelM));
	const { faces, places } = pixelsOf(seen, widthPx, heightPx);
	const longM = pixelM * Math.max(widthPx, heightPx);
	const fields = foldBack(piece, places, longM);
	return {
		...deal(
			faces,
			fields.map(({ all }) => all),
			piece.shares,
		),
		...{ widthPx, heightPx, pixelM, seed: piece.seed, faces, places, fields },
	};
}

/** Moves places of a piece of this length to where the mix was before it was folded; gives the fields there. */
export function foldBack(
	{ seed, shares, placing, folds }: Omit<FoldedPiece, "outline" | "cutouts">,
	places: Places,
	longM: number,
): ToneField[] {
	tracePour(places, placing, stream(seed, 1));
	const periodM = Math.max(REPEAT_M, 1.05 * DRAWN_LONG * longM);
	const fields = shares.slice(1).map((_, row) => {
		const read = waves(stream(seed, 40 + row), periodM, { startM: POURED_M });
		const poured = new Float32Array(places.x.length);
		addWaves(poured, read, places, POURED);
		const lying = waves(stream(seed, 10 + row), periodM, LYING[placing]);
		return { lying, poured, all: poured.slice() };
	});
	traceFolds(places, placing, folds, stream(seed, 2));
	for (const { all, lying } of fields) addWaves(all, lying, places, 1);
	return fields;
}

function pixelsOf(
	{ bounds, faceAt, alongM }: Silhouette,
	widthPx: number,
	heightPx: number,
): { faces: Uint8Array; places: Places } {
	const { left, top, right, bottom } = bounds;
	const faces = new Uint8Array(widthPx * heightPx);
	const x = new Float64Array(faces.length);
	const y = new Float64Array(faces.length);
	for (let row = 0, i = 0; row < heightPx; row++) {
		const yM = top + ((row + 0.5) / heightPx) * (bottom - top);
		for (let column = 0; column < widthPx; column++, i++) {
			const xM = left + ((column + 0.5) / widthPx) * (right - left);
			faces[i] = faceAt(xM, yM);
			x[i] = alongM(xM);
			y[i] = yM;
		}
	}
	return { faces, places: { x, y } };
}

function addWaves(
	values: Float32Array,
	read: Waves,
	{ x, y }: Places,
	times: number,
): void {
	for (let i = 0; i < values.length; i++)
		values[i] =
			(values[i] as number) +
			times * waveAt(read, x[i] as number, y[i] as number);
}
