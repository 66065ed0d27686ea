/** Openings cast into a piece. */
import { at, InputError, quoted } from "./errors";
import { ovalAreaM2, ovalEdgeM } from "./oval";
import { withRounding } from "./rounding";
import type { LengthText, Outline } from "./shapes";

export const CUTOUT_SHAPES = ["rectangle", "round", "oval"] as const;

export interface PieceCutout {
	/** Place in the table, for errors. */
	row: number;
	/** Name of the piece it is in. */
	piece: string;
	/** How many in each piece. */
	count: number;
	shape: (typeof CUTOUT_SHAPES)[number];
	aM: number;
	bM?: number;
	/** From the piece's left side to its middle, or to the middle of a row of them. */
	leftM?: number;
	/** Strip of concrete before it. */
	frontM?: number;
	/** Of its corners. */
	radiusM?: number;
	/** From middle to middle of several in a row. */
	spacingM?: number;
}

/**
 * Area and rim of all cutouts of one piece, m² and m.
 *
 * @throws InputError when a cutout misses a dimension, has one too many or a radius that it cannot have, or does not fit, or
 * the piece takes none.
 */
export function cutoutTotals(
	cutouts: readonly PieceCutout[],
	outline: Outline,
	lengthText: LengthText,
): { areaM2: number; rimM: number } {
	let areaM2 = 0;
	let rimM = 0;
	for (const cutout of cutouts)
		at(`cutouts row ${cutout.row}`, () => {
			const { aM, bM } = sides(cutout);
			checkFit(cutout.piece, aM, bM, outline, lengthText);
			checkDetails(cutout, lengthText);
			const straight = cutout.shape === "rectangle";
			const r = cutout.radiusM ?? 0;
			areaM2 +=
				cutout.count *
				(straight ? aM * bM - (4 - Math.PI) * r ** 2 : ovalAreaM2(aM, bM));
			rimM +=
				cutout.count *
				(straight ? 2 * (aM + bM) - (8 - 2 * Math.PI) * r : ovalEdgeM(aM, bM));
		});
	return { areaM2, rimM };
}

/** Its dimensions along A and along B. @throws InputError when one is missing or one too many. */
export function sides({ shape, aM, bM }: PieceCutout): {
	aM: number;
	bM: number;
} {
	if (shape === "round" && bM !== undefined)
		throw new InputError("B must be blank: round has no B");
	if (shape === "round") return { aM, bM: aM };
	if (bM === undefined)
		throw new InputError(`B is blank, and ${shape} needs it`);
	return { aM, bM };
}

function checkDetails(cutout: PieceCutout, lengthText: LengthText): void {
	const { shape, count, radiusM = 0, spacingM, aM, bM = aM } = cutout;
	if (radiusM > 0 && shape !== "rectangle")
		throw new InputError(
			`corner radius must be blank: ${shape} has no corners`,
		);
	const most = Math.min(aM, bM) / 2;
	if (radiusM > withRounding(most))
		throw new InputError(
			`corner radius must be at most half of the shorter side (${lengthText(most)}), got ${lengthText(radiusM)}`,
		);
	if (spacingM !== undefined && count < 2)
		throw new InputError("spacing must be blank for a single cutout");
}

function checkFit(
	piece: string,
	aM: number,
	bM: number,
	{ fits, takesCutouts }: Outline,
	lengthText: LengthText,
): void {
	if (!takesCutouts)
		throw new InputError(
			`piece ${quoted(piece)} is a tube, which takes no cutouts`,
		);
	if (fits === undefined) return;
	const within = (inner: number, outer: number) => inner <= withRounding(outer);
	const [roomA, roomB] = fits;
	const fit =
		(within(aM, roomA) && within(bM, roomB)) ||
		(within(aM, roomB) && within(bM, roomA));
	if (!fit)
		throw new InputError(
			`${lengthText(aM)} × ${lengthText(bM)} does not fit in ${quoted(piece)} (${lengthText(roomA)} × ${lengthText(roomB)})`,
		);
}
