/** A mold in words: which hand it is, and where notch, sides, drop edge and cutouts lie in it. */
import type { Lie, MoldPlan } from "../../calc/mold";
import type { Piece } from "../../calc/takeoff";
import { onTape } from "../reading/tape";
import type { UnitSystem } from "../reading/units";

/** A mold in words, in the order in which MOLD_PLAN answers them. */
export interface MoldWords {
	hand: string;
	notch: string;
	sides: string;
	drop: string;
	cutouts: string;
}

/** What lies where in the mold, as whoever builds it reads it. */
export const moldWords = (
	piece: Piece,
	lie: Lie,
	plan: MoldPlan,
	units: UnitSystem,
): MoldWords => ({
	hand: handWords(lie, plan),
	notch: notchWords(piece, lie, plan, units),
	sides: sideWords(piece, plan, units),
	drop: dropWords(piece, lie, plan),
	cutouts: lie.cut ? CUT_WORDS[lie.face ?? "unsaid"] : "",
});

const CUT_WORDS = {
	"face up": "as seen from above",
	"face down": "Measure from the other side: left is RIGHT",
	unsaid: "first type face up or face down under Cast",
} as const;

function handWords({ face }: Lie, { handed }: MoldPlan): string {
	if (!handed) return "the same from both faces";
	if (face === undefined) return "Look: type face up or face down under Cast";
	return face === "face up"
		? "as seen from above"
		: "MIRRORED: left and right change sides";
}

/** A place in the mold, with the finished one where it is another. */
function placeWords(
	place: MoldPlan["notch"],
	{ face }: Lie,
	missing: string,
): string {
	if (place === undefined) return missing;
	if (face === undefined) return `finished: ${place.finished}`;
	return place.mold === place.finished
		? place.mold
		: `${place.mold} (finished: ${place.finished})`;
}

function notchWords(
	{ shape, cM = 0, dM = 0 }: Piece,
	lie: Lie,
	{ notch }: MoldPlan,
	units: UnitSystem,
): string {
	if (shape !== "L" && shape !== "U") return "";
	const missing = "Look: where is it? Type it under Notch at";
	if (notch === undefined) return missing;
	return `${onTape(cM, units)} × ${onTape(dM, units)} at ${placeWords(notch, lie, missing)}`;
}

function sideWords(
	{ shape, aM, bM, cM }: Piece,
	{ sidesM }: MoldPlan,
	units: UnitSystem,
): string {
	const tape = (lengthM = 0) => onTape(lengthM, units);
	if (sidesM)
		return Object.entries(sidesM)
			.map(([side, lengthM]) => `${side} ${tape(lengthM)}`)
			.join(", ");
	if (shape === "area") return "by the template";
	if (shape === "round") return `across ${tape(aM)}`;
	if (shape === "tube") return `across ${tape(aM)}, ${tape(cM)} high`;
	const plan = `${tape(aM)} left to right, ${tape(bM)} deep`;
	return shape === "basin" ? `${plan}, ${tape(cM)} high` : plan;
}

const dropWords = (piece: Piece, lie: Lie, { drop }: MoldPlan): string =>
	piece.dropHeightM === undefined
		? ""
		: placeWords(drop, lie, "Look: where is it? Type it under Drop edge on");
