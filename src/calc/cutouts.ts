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
}

/**
 * Area and rim of all cutouts of one piece, m² and m.
 *
 * @throws InputError when a cutout misses a dimension, has one too many or does not fit, or the piece takes none.
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
			const straight = cutout.shape === "rectangle";
			areaM2 += cutout.count * (straight ? aM * bM : ovalAreaM2(aM, bM));
			rimM += cutout.count * (straight ? 2 * (aM + bM) : ovalEdgeM(aM, bM));
		});
	return { areaM2, rimM };
}

function sides({ shape, aM, bM }: PieceCutout): { aM: number; bM: number } {
	if (shape === "round" && bM !== undefined)
		throw new InputError("B must be blank: round has no B");
	if (shape === "round") return { aM, bM: aM };
	if (bM === undefined)
		throw new InputError(`B is blank, and ${shape} needs it`);
	return { aM, bM };
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
