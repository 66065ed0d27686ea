/** A piece of the job as the picture draws it. */
import type { PieceCutout } from "../../calc/cutouts";
import { nameKey, sameName } from "../../calc/names";
import type { Dimensions } from "../../calc/shapes";
import { type Veins, veins } from "../../calc/veins";
import type { Basis } from "../../job/answers/basis";
import {
	from,
	fromBoth,
	type Known,
	missing,
	orNull,
} from "../../job/answers/known";
import type { Whole } from "../../job/answers/whole";

export interface SeenPiece {
	outline: Dimensions;
	cutouts: readonly PieceCutout[];
	/** Corner or side of the notch; blank where it is not known. */
	notchAt: string;
	/** `face up`, `face down` or blank. */
	face: string;
}

export interface SeenTone {
	name: string;
	/** Relative weight. */
	share: number;
	/** `#rrggbb`; blank while no swatch says it. */
	color: string;
}

/** Two pixels of the picture a pixel of the panel: fine on sharp screens and in print. */
const WIDTH_PX = 560;

/** The names of the pieces; rows without one are passed over. */
export const pieceNames = ({ pieces }: Basis): string[] =>
	pieces.map(({ name }) => name).filter(Boolean);

/** The piece of this name, once it and its cutouts are possible. */
export function seenPiece(
	{ pieces, given }: Basis,
	name: string,
): Known<SeenPiece> {
	const index = pieces.findIndex((piece) => sameName(piece.name, name));
	const found = pieces[index];
	if (!found) return missing("type the pieces");
	const { notch, face } = given.job.pieces[index] ?? {};
	const possible = fromBoth(found.piece, found.sizes, (piece) => piece);
	return fromBoth(possible, found.cutouts, (outline, cutouts) => ({
		outline,
		cutouts,
		notchAt: nameKey(String(notch ?? "")),
		face: nameKey(String(face ?? "")),
	}));
}

/** The tones that are seen, in a lay-up those of the face. */
export const seenTones = ({ basis, colors }: Whole): Known<SeenTone[]> =>
	from(basis.tones.typed, (tones) =>
		tones.map(({ name, share }, i) => ({
			name,
			share,
			color: orNull(colors().tones[i]?.color ?? missing("")) ?? "",
		})),
	);

export interface DrawnPiece {
	piece: SeenPiece;
	tones: readonly SeenTone[];
	seen: Veins;
}

/** The piece and its pixels, or what must be put right or typed first. */
export const drawnPiece = (
	whole: Whole,
	name: string,
	how: { folds: number; seed: number; mirrored: boolean },
): Known<DrawnPiece> =>
	fromBoth(seenPiece(whole.basis, name), seenTones(whole), (piece, tones) => ({
		piece,
		tones,
		seen: veins({
			...piece,
			...how,
			shares: tones.map(({ share }) => share),
			widthPx: WIDTH_PX,
		}),
	}));
