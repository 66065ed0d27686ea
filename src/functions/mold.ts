import { at } from "../calc/errors";
import { FACES, moldPlan } from "../calc/mold";
import { sameName } from "../calc/names";
import { moldWords } from "../job/answers/moldwords";
import { list, table, text, units, word } from "./arguments";
import { sheetFunction } from "./declare";
import { PIECES, pieceOf } from "./pieces";

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
			return Object.values(moldWords(piece, said, plan, units));
		}),
});
