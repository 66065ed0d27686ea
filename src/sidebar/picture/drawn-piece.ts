/** A piece of the job as the picture draws it. */
import type { PlanCutout } from "../../calc/cutoutplan";
import { moldPlan, SIDES } from "../../calc/mold";
import { nameKey, sameName } from "../../calc/names";
import type { Dimensions } from "../../calc/shapes";
import type { PlanDrop } from "../../calc/silhouette";
import {
	type Folded,
	type FoldedPiece,
	foldedPiece,
} from "../../calc/stone/fold";
import { type Piece, visibleDropM } from "../../calc/takeoff";
import type { Basis } from "../../job/answers/basis";
import {
	from,
	fromBoth,
	type Known,
	missing,
	orNull,
} from "../../job/answers/known";
import { isLayUp } from "../../job/answers/tones";
import type { Whole } from "../../job/answers/whole";

export interface SeenPiece {
	outline: Dimensions;
	cutouts: readonly PlanCutout[];
	/** No sides where the job does not say on which it is. */
	drop?: PlanDrop;
	/** Its place among the pieces: each is folded its own way. */
	index: number;
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

/** At once, while a control moves. */
const COARSE_PX = 200;

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
	const { notch, face, dropOn } = given.job.pieces[index] ?? {};
	const possible = fromBoth(found.piece, found.sizes, (piece) => piece);
	return fromBoth(possible, found.cutouts, (outline, cutouts) => ({
		outline,
		cutouts,
		drop: dropOf(outline, String(dropOn ?? "")),
		index,
		notchAt: nameKey(String(notch ?? "")),
		face: nameKey(String(face ?? "")),
	}));
}

function dropOf(piece: Piece, dropOn: string): PlanDrop | undefined {
	const heightM = visibleDropM(piece);
	if (heightM === undefined) return undefined;
	const said = moldPlan(piece, { dropOn, cut: false }).drop?.finished ?? "";
	const sides = SIDES.filter(
		(side) => said === "all around" || said.includes(side),
	);
	return { heightM, sides };
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
	/** How it is folded, to be drawn in any size. */
	how: Omit<FoldedPiece, "widthPx">;
	coarse: Folded;
}

/** The piece as folded, or what must be put right or typed first. */
export const drawnPiece = (
	whole: Whole,
	name: string,
	{ folds, arrangement }: { folds: number; arrangement: number },
): Known<DrawnPiece> =>
	fromBoth(seenPiece(whole.basis, name), seenTones(whole), (piece, tones) => {
		const how = {
			...piece,
			folds,
			seed: 100 * arrangement + piece.index,
			placing: isLayUp(whole.basis.given) ? "mold lay-up" : "bucket fold",
			shares: tones.map(({ share }) => share),
		} as const;
		const coarse = foldedPiece({ ...how, widthPx: COARSE_PX });
		return { piece, tones, how, coarse };
	});
