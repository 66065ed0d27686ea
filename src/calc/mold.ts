/** Which hand a mold is: where notches and drop edges lie in it, seen from above with the front toward you. */
import { InputError, quoted } from "./errors";
import type { Piece } from "./takeoff";

export const FACES = ["face up", "face down"] as const;
export type Face = (typeof FACES)[number];

export const SIDES = ["front", "back", "left", "right"] as const;
export type Side = (typeof SIDES)[number];

const CORNERS = ["front left", "front right", "back left", "back right"];

/** What lies where in the mold; what does not concern a piece is left out. */
export interface MoldPlan {
	/** Whether anything of the piece has a left or a right. */
	handed: boolean;
	/** Where the notch is, finished and in the mold. */
	notch?: Place;
	/** Lengths of an L's four sides, as the mold has them. */
	sidesM?: Record<Side, number>;
	drop?: Place;
}

export interface Place {
	finished: string;
	/** Sides that are others than in the finished piece are in capitals. */
	mold: string;
}

/** A piece with what a person says about its lie. */
export interface Lie {
	face?: Face;
	/** Corner of an L's notch, side of a U's. */
	notchAt?: string;
	/** Sides with a drop edge. */
	dropOn?: string;
	/** Whether it has cutouts. */
	cut: boolean;
}

const OTHER: Readonly<Record<string, string>> = {
	left: "RIGHT",
	right: "LEFT",
};

const place = (finished: string, face: Face | undefined): Place => ({
	finished,
	mold:
		face === "face down"
			? finished.replace(/\b(?:left|right)\b/g, (side) => OTHER[side] ?? side)
			: finished,
});

/**
 * Where everything with a left or right lies in the mold. A piece cast face down is seen in the mold from its back:
 * left and right change sides, front and back do not. A goes from left to right, B from front to back.
 *
 * @throws InputError for a notch or a drop edge at a place that the piece has not.
 */
export function moldPlan(piece: Piece, lie: Lie): MoldPlan {
	const { shape } = piece;
	const dropped = piece.dropHeightM !== undefined;
	const handed =
		lie.cut || dropped || shape === "L" || shape === "U" || shape === "area";
	const notchAt = notchOf(piece, lie.notchAt);
	const notch = notchAt === undefined ? undefined : place(notchAt, lie.face);
	return {
		handed,
		notch,
		sidesM: shape === "L" && notch ? sidesOfL(piece, notch.mold) : undefined,
		drop: dropOf(dropped, lie),
	};
}

/** The notch's place in words that the shape allows. */
function notchOf({ shape, aM = 0, bM = 0 }: Piece, typed = "") {
	const said = typed.trim().toLowerCase();
	if (said === "") return undefined;
	if (shape !== "L" && shape !== "U")
		throw new InputError(
			`notch at must be blank for ${shape}: it has no notch`,
		);
	const allowed = shape === "L" ? CORNERS : longerSides(aM, bM);
	const words = said.split(/[\s,-]+/);
	const found = allowed.find((corner) =>
		corner.split(" ").every((word) => words.includes(word)),
	);
	if (found !== undefined && words.length === found.split(" ").length)
		return found;
	throw new InputError(
		`notch at must be one of ${allowed.join(", ")} for ${shape}, got ${quoted(said)}`,
	);
}

/** Those of the notch of a U. */
function longerSides(aM: number, bM: number): Side[] {
	if (aM === bM) return [...SIDES];
	return aM > bM ? ["front", "back"] : ["left", "right"];
}

/** Each side less the notch at its end, m. */
function sidesOfL(
	{ aM = 0, bM = 0, cM = 0, dM = 0 }: Piece,
	corner: string,
): Record<Side, number> {
	const at = corner.toLowerCase();
	const across = (side: Side) => aM - (at.includes(side) ? cM : 0);
	const deep = (side: Side) => bM - (at.includes(side) ? dM : 0);
	return {
		front: across("front"),
		back: across("back"),
		left: deep("left"),
		right: deep("right"),
	};
}

function dropOf(dropped: boolean, { dropOn, face }: Lie): Place | undefined {
	const said = (dropOn ?? "").trim().toLowerCase();
	if (said === "") return undefined;
	if (!dropped)
		throw new InputError(
			"drop edge on must be blank where there is no drop height",
		);
	if (said === "all around") return { finished: said, mold: said };
	const words = said.split(/[\s,+&]+/).filter((word) => word !== "and");
	const sides = SIDES.filter((side) => words.includes(side));
	if (sides.length !== words.length || sides.length === 0)
		throw new InputError(
			`drop edge on must be sides (front, back, left, right) or all around, got ${quoted(said)}`,
		);
	return place(listed(sides), face);
}

const listed = (words: readonly string[]): string =>
	words.length < 2
		? words.join("")
		: `${words.slice(0, -1).join(", ")} and ${words[words.length - 1]}`;
