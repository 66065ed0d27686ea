import { at } from "../calc/errors";
import { FACES, type Lie, type MoldPlan, moldPlan } from "../calc/mold";
import { sameName } from "../calc/names";
import type { Piece } from "../calc/takeoff";
import type { UnitSystem } from "../job/reading/units";
import { list, table, text, units, word } from "./arguments";
import { sheetFunction } from "./declare";
import { PIECES, pieceOf } from "./pieces";
import { onTape } from "./tape";

export const MOLD_PLAN = sheetFunction({
	name: "MOLD_PLAN",
	group: "Takeoff",
	summary:
		"Which hand each mold is: notch, sides, drop edge and cutouts as the mold has them, seen from above.",
	limits:
		"A goes from left to right and B from front to back of the finished piece, seen from above. In the mold the front is toward you, too: cast face down, left and right change sides. Where cutouts lie is not known to it: mark them on the mold's drawing.",
	params: {
		pieces: PIECES,
		lie: table(
			"Beside each piece, e.g. L2:N6: face up or face down, the corner (L) or side (U) of the notch, the sides with a drop edge",
			{
				face: word(FACES, "face up or face down", { optional: true }),
				notchAt: text("Corner or side of the notch", { optional: true }),
				dropOn: text("Sides with a drop edge, or all around", {
					optional: true,
				}),
			},
			{ optional: true },
		),
		cut: list(text("Names of the pieces that have cutouts, e.g. P2:P9"), {
			alone: true,
			optional: true,
			mayBeEmpty: true,
		}),
		units: units(),
	},
	answer: {
		shape: "table",
		text: "one row per piece",
		beside: "pieces",
		columns: [
			{ text: "hand" },
			{ text: "notch" },
			{ text: "sides" },
			{ text: "drop edge" },
			{ text: "cutouts" },
		],
	},
	example: {
		shown: ["A2:K2", "L2:N2"],
		values: [
			[["Bar", 1, "L", 2000, 1500, 1400, 900, 30, "", "", ""]],
			[["face down", "back right", ""]],
		],
		answer: [
			"MIRRORED: left and right change sides",
			"1400 × 900 at back LEFT (finished: back right)",
			"front 2000, back 600, left 600, right 1500",
			"",
			"",
		],
		working:
			"the notch moves from the right to the left: back 2000 − 1400 = 600, left 1500 − 900 = 600; front and right keep 2000 and 1500",
	},
	source: "A piece turned over about the line from front to back",
	compute: ({ pieces, lie, cut }, units) =>
		pieces.map((row, index) => {
			const piece = pieceOf(row);
			const said = {
				...lie[index],
				cut: cut.some((name) => sameName(name, piece.name)),
			};
			const plan = at(`row ${row.row}`, () => moldPlan(piece, said));
			return words(piece, said, plan, units);
		}),
});

const words = (
	piece: Piece,
	lie: Lie,
	plan: MoldPlan,
	units: UnitSystem,
): string[] => [
	handWords(lie, plan),
	notchWords(piece, lie, plan, units),
	sideWords(piece, plan, units),
	dropWords(piece, lie, plan),
	lie.cut ? CUT_WORDS[lie.face ?? "unsaid"] : "",
];

const CUT_WORDS = {
	"face up": "as seen from above",
	"face down": "Measure from the other side: left is RIGHT",
	unsaid: "wait for Cast",
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
