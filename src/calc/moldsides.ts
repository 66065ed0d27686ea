/** The straight sides of a piece, in the order in which they follow one another around it. */
import type { Side } from "./mold";
import type { Piece } from "./takeoff";

export interface StraightSide {
	/** Side of the piece that it is on; those of a notch are on none. */
	side: Side | "notch";
	name: string;
	lengthM: number;
	/** Whether it runs from left to right. */
	alongA: boolean;
	/** The corner to the next side: 1 where it stands out, −1 in a notch. */
	corner: 1 | -1;
}

type Drawn = [StraightSide["side"], string, number, boolean, 1 | -1];

const sidesFrom = (drawn: readonly Drawn[]): StraightSide[] =>
	drawn.map(([side, name, lengthM, alongA, corner]) => ({
		side,
		name,
		lengthM,
		alongA,
		corner,
	}));

/**
 * The sides of a rectangle, basin, L or U whose notch lies there; none of other shapes. Without a place the notch of an L is at the
 * back right, that of a U in the middle of the back, or of the right where B is the longer.
 */
export function straightSides(piece: Piece, notchAt?: string): StraightSide[] {
	const { shape, aM = 0, bM = 0, cM = 0, dM = 0 } = piece;
	const place = notchAt?.toLowerCase();
	if (shape === "rectangle" || shape === "basin")
		return sidesFrom([
			["front", "front side", aM, true, 1],
			["right", "right side", bM, false, 1],
			["back", "back side", aM, true, 1],
			["left", "left side", bM, false, 1],
		]);
	if (shape === "L")
		return turnedTo(
			place ?? "back right",
			sidesFrom([
				["front", "front side", aM, true, 1],
				["right", "right side", bM - dM, false, 1],
				["notch", "notch side, left to right", cM, true, -1],
				["notch", "notch side, front to back", dM, false, 1],
				["back", "back side", aM - cM, true, 1],
				["left", "left side", bM, false, 1],
			]),
		);
	if (shape !== "U") return [];
	return aM >= bM && place !== "left" && place !== "right"
		? turnedTo(
				place ?? "back",
				sidesFrom([
					["front", "front side", aM, true, 1],
					["right", "right side", bM, false, 1],
					["back", "back side, right arm", (aM - cM) / 2, true, 1],
					["notch", "notch side, right", dM, false, -1],
					["notch", "notch side, back", cM, true, -1],
					["notch", "notch side, left", dM, false, 1],
					["back", "back side, left arm", (aM - cM) / 2, true, 1],
					["left", "left side", bM, false, 1],
				]),
			)
		: turnedTo(
				place ?? "right",
				sidesFrom([
					["left", "left side", bM, false, 1],
					["front", "front side", aM, true, 1],
					["right", "right side, front arm", (bM - cM) / 2, false, 1],
					["notch", "notch side, front", dM, true, -1],
					["notch", "notch side, right", cM, false, -1],
					["notch", "notch side, back", dM, true, 1],
					["right", "right side, back arm", (bM - cM) / 2, false, 1],
					["back", "back side", aM, true, 1],
				]),
			);
}

/** The sides as they are called where the notch lies elsewhere: drawn at the back or the right, or both. */
function turnedTo(
	place: string,
	sides: readonly StraightSide[],
): StraightSide[] {
	const other: Record<string, string> = {
		...(place.includes("left") && { left: "right", right: "left" }),
		...(place.includes("front") && { front: "back", back: "front" }),
	};
	const called = (words: string) =>
		words.replace(/^\w+| (?:left|right|front|back)(?= arm|$)/g, (word) =>
			word.replace(/\w+/, (name) => other[name] ?? name),
		);
	return sides.map((one) => ({
		...one,
		side: (other[one.side] ?? one.side) as StraightSide["side"],
		name: one.name.includes(" to ") ? one.name : called(one.name),
	}));
}

/** Corners that stand out, less those of notches: 4 of any closed outline. */
export const convexCorners = (sides: readonly StraightSide[]): number =>
	sides.filter(({ corner }) => corner > 0).length;
