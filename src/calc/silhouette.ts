/** What is seen of a piece in plan: its outline with notches, a basin's walls and floor, drop edges, and its cutouts. */
import { type Box, boxOf, inBox } from "./box";
import { cutoutOutlines, type PlanCutout } from "./cutoutplan";
import { InputError } from "./errors";
import type { Side } from "./mold";
import type { Dimensions } from "./shapes";

export interface Silhouette {
	/** All that is seen; the piece's middle is at 0, 0. */
	bounds: Box;
	/** 0 outside and in a cutout; elsewhere the number of the face that is seen there (`FACES`). */
	faceAt(xM: number, yM: number): number;
	/** Where along a curved face a place is. */
	alongM(xM: number): number;
}

/** Drop edges: on these sides, this high as seen from the side. */
export interface PlanDrop {
	heightM: number;
	sides: readonly Side[];
}

/** Faces by where they look; a drop edge looks to its side, a basin's wall to the middle. */
export const FACES = { up: 1, front: 2, back: 3, left: 4, right: 5, floor: 6 };

/** Drop edges are folded out by this much of their height, as if seen a little from their side. */
const FOLDED_OUT = 0.5;

/** Length to width of the rectangle that stands for a free outline, of which only the area is known. */
const FREE = 1.5;

/**
 * The piece from above, in its finished hand: an L's notch at the back right, a U's in the middle of the back (of the
 * right where B is the longer side) unless `notchAt` says front or left; a basin seen into, a tube from the side; drop
 * edges folded out.
 *
 * @throws InputError when the piece has no size.
 */
export function silhouetteOf(
	piece: Dimensions,
	cutouts: readonly PlanCutout[],
	notchAt = "",
	drop: PlanDrop = { heightM: 0, sides: [] },
): Silhouette {
	const [widthM, heightM] = sizeOf(piece);
	if (!(widthM > 0 && heightM > 0 && widthM < 1e6 && heightM < 1e6))
		throw new InputError("the piece has no size to draw");
	const whole = boxOf(widthM, heightM);
	const parts = partsOf(piece, whole).map((part) => flipped(part, notchAt));
	const basin = piece.shape === "basin";
	const solid = solidOf(piece, whole, parts);
	const holes = cutoutOutlines(
		cutouts,
		basin ? [floorOf(piece, whole)] : parts,
		whole,
	);
	const faceOf = basin ? basinFace(piece, whole) : () => FACES.up;
	const outM = drop.heightM * FOLDED_OUT;
	const radius = widthM / 2;
	return {
		bounds: foldedOut(whole, drop.sides, outM),
		faceAt: (x, y) => {
			if (solid(x, y))
				return holes.some((hole) => hole(x, y)) ? 0 : faceOf(x, y);
			if (outM === 0) return 0;
			const side = dropSide(piece, solid, whole, outM, x, y);
			return side && drop.sides.includes(side) ? FACES[side] : 0;
		},
		alongM: (x) =>
			piece.shape === "tube"
				? radius * Math.asin(Math.max(-1, Math.min(1, x / radius)))
				: x,
	};
}

/** The box with what is folded out of its sides. */
function foldedOut(box: Box, sides: readonly Side[], outM: number): Box {
	const at = (side: Side) => (sides.includes(side) ? outM : 0);
	return {
		left: box.left - at("left"),
		top: box.top - at("back"),
		right: box.right + at("right"),
		bottom: box.bottom + at("front"),
	};
}

/** The side whose drop edge is seen at a place outside of the piece; notches have none. */
function dropSide(
	{ shape }: Dimensions,
	solid: (x: number, y: number) => boolean,
	{ right, bottom }: Box,
	outM: number,
	x: number,
	y: number,
): Side | undefined {
	if (shape === "round" || shape === "oval") {
		if ((x / (right + outM)) ** 2 + (y / (bottom + outM)) ** 2 > 1)
			return undefined;
		if (Math.abs(x / right) > Math.abs(y / bottom))
			return x < 0 ? "left" : "right";
		return y < 0 ? "back" : "front";
	}
	const within = 1 - 1e-9;
	if (Math.abs(x) < right && Math.abs(y) >= bottom)
		return solid(x, Math.sign(y) * bottom * within)
			? y < 0
				? "back"
				: "front"
			: undefined;
	if (Math.abs(y) < bottom && Math.abs(x) >= right)
		return solid(Math.sign(x) * right * within, y)
			? x < 0
				? "left"
				: "right"
			: undefined;
	return undefined;
}

/** An L and a U are cut at the back or the right: the notch is where it is said to be. */
function flipped(box: Box, notchAt: string): Box {
	const { left, top, right, bottom } = box;
	const sideways = notchAt.includes("left")
		? { left: -right, right: -left }
		: { left, right };
	return notchAt.includes("front")
		? { ...sideways, top: -bottom, bottom: -top }
		: { ...sideways, top, bottom };
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
	{ shape, radiusM = 0 }: Dimensions,
	{ right, bottom }: Box,
	parts: readonly Box[],
): (x: number, y: number) => boolean {
	if (shape === "round" || shape === "oval")
		return (x, y) => (x / right) ** 2 + (y / bottom) ** 2 <= 1;
	return (x, y) => {
		const u = Math.abs(x) - (right - radiusM);
		const v = Math.abs(y) - (bottom - radiusM);
		if (u > 0 && v > 0 && Math.hypot(u, v) > radiusM) return false;
		return parts.some((part) => inBox(part, x, y));
	};
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

/** Rim, floor and walls; a wall looks to the side across from it. */
function basinFace(
	piece: Dimensions,
	whole: Box,
): (x: number, y: number) => number {
	const inner = innerOf(piece, whole);
	const floor = floorOf(piece, whole);
	return (x, y) => {
		if (!inBox(inner, x, y)) return FACES.up;
		if (inBox(floor, x, y)) return FACES.floor;
		const sideways = Math.abs(x / inner.right) > Math.abs(y / inner.bottom);
		if (sideways) return x < 0 ? FACES.right : FACES.left;
		return y < 0 ? FACES.front : FACES.back;
	};
}
