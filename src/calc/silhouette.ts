/** What is seen of a piece in plan: its outline with notches, a basin's walls and floor, and its cutouts. */
import { type Box, boxOf, inBox } from "./box";
import { cutoutOutlines, type PlanCutout } from "./cutoutplan";
import { InputError } from "./errors";
import type { Dimensions } from "./shapes";

export interface Silhouette {
	widthM: number;
	heightM: number;
	/** 0 outside and in a cutout; elsewhere the number of the face that is seen there. */
	faceAt(xM: number, yM: number): number;
	/** Where along a curved face a place is. */
	alongM(xM: number): number;
}

/** Length to width of the rectangle that stands for a free outline, of which only the area is known. */
const FREE = 1.5;

/**
 * The piece from above, in its finished hand: an L's notch at the back right, a U's in the middle of the back (of the
 * right where B is the longer side) unless `notchAt` says front or left; a basin seen into, a tube from the side.
 *
 * @throws InputError when the piece has no size.
 */
export function silhouetteOf(
	piece: Dimensions,
	cutouts: readonly PlanCutout[],
	notchAt = "",
): Silhouette {
	const [widthM, heightM] = sizeOf(piece);
	if (!(widthM > 0 && heightM > 0 && widthM < 1e6 && heightM < 1e6))
		throw new InputError("the piece has no size to draw");
	const whole = boxOf(widthM, heightM);
	const parts = partsOf(piece, whole);
	const solid = solidOf(piece, whole, parts);
	const holes = cutoutOutlines(
		cutouts,
		piece.shape === "basin" ? [floorOf(piece, whole)] : parts,
	);
	const faceOf = piece.shape === "basin" ? basinFace(piece, whole) : () => 1;
	const radius = widthM / 2;
	const toRight = notchAt.includes("left") ? -1 : 1;
	const toFront = notchAt.includes("front") ? -1 : 1;
	const isSolid = (x: number, y: number) =>
		solid(x, y) && !holes.some((hole) => hole(x, y));
	return {
		widthM,
		heightM,
		faceAt: (x, y) => (isSolid(x * toRight, y * toFront) ? faceOf(x, y) : 0),
		alongM: (x) =>
			piece.shape === "tube"
				? radius * Math.asin(Math.max(-1, Math.min(1, x / radius)))
				: x,
	};
}

function sizeOf(piece: Dimensions): [number, number] {
	const { shape, aM = 0, areaM2 = 0, bM = 0, cM = 0 } = piece;
	if (shape === "area")
		return [Math.sqrt(areaM2 * FREE), Math.sqrt(areaM2 / FREE)];
	if (shape === "round") return [aM, aM];
	return [aM, shape === "tube" ? cM : bM];
}

/** Boxes that together are the piece; of a notched one those that run past the notch. */
function partsOf({ shape, cM = 0, dM = 0 }: Dimensions, whole: Box): Box[] {
	const { left, top, right, bottom } = whole;
	if (shape === "L")
		return [
			{ ...whole, top: top + dM },
			{ ...whole, right: right - cM },
		];
	if (shape !== "U") return [whole];
	return right >= bottom
		? [
				{ ...whole, top: top + dM },
				{ ...whole, right: -cM / 2 },
				{ ...whole, left: cM / 2 },
			]
		: [
				{ ...whole, right: right - dM },
				{ left, right, top, bottom: -cM / 2 },
				{ left, right, top: cM / 2, bottom },
			];
}

function solidOf(
	{ shape }: Dimensions,
	{ right, bottom }: Box,
	parts: readonly Box[],
): (x: number, y: number) => boolean {
	if (shape === "round" || shape === "oval")
		return (x, y) => (x / right) ** 2 + (y / bottom) ** 2 <= 1;
	return (x, y) => parts.some((part) => inBox(part, x, y));
}

const innerOf = ({ thicknessM }: Dimensions, { right, bottom }: Box): Box =>
	boxOf(2 * (right - thicknessM), 2 * (bottom - thicknessM));

/** The floor, smaller for being farther: seen from twice the basin's longer side above the rim. */
function floorOf(piece: Dimensions, whole: Box): Box {
	const inner = innerOf(piece, whole);
	const eyeM = 4 * Math.max(whole.right, whole.bottom);
	const far = eyeM / (eyeM + (piece.cM ?? 0) - piece.thicknessM);
	return boxOf(2 * inner.right * far, 2 * inner.bottom * far);
}

/** 1 the rim, 2 the floor, 3 to 6 the walls. */
function basinFace(
	piece: Dimensions,
	whole: Box,
): (x: number, y: number) => number {
	const inner = innerOf(piece, whole);
	const floor = floorOf(piece, whole);
	return (x, y) => {
		if (!inBox(inner, x, y)) return 1;
		if (inBox(floor, x, y)) return 2;
		const sideways = Math.abs(x / inner.right) > Math.abs(y / inner.bottom);
		return sideways ? (x < 0 ? 3 : 4) : y < 0 ? 5 : 6;
	};
}
