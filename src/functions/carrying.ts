import { bending, CARRIED } from "../calc/carrying";
import { InputError } from "../calc/errors";
import { nameKey } from "../calc/names";
import { notchOf, placeTroubles } from "../calc/places";
import { isSlab, pieceSizes } from "../calc/takeoff";
import { inTheMiddle } from "../calc/unplaced";
import { lengthText } from "../job/reading/cells";
import { density, length, table, units, word } from "./arguments";
import { sheetFunction } from "./declare";
import { CUTOUT_COLUMNS, PIECES, pieceOf } from "./pieces";

export const CARRY_STRESS = sheetFunction({
	name: "CARRY_STRESS",
	group: "Handling",
	summary:
		"Bending stress of each piece under its own weight where its section is weakest, held by the ends of A.",
	limits:
		"A screening number without a factor for impact, not a design: torsion, sharp inside corners and fibers after cracking are not in it. An L's notch is at the back right, a U's in the middle of the back. A drop edge counts by its weight, and by its lip where that is worse. Basins, tubes and free outlines stay blank. Compare with the strength of your own mix at that age, and ask a licensed engineer where someone could be hurt.",
	params: {
		pieces: PIECES,
		cutouts: table(
			"One row per cutout, e.g. M2:S9: piece name, count per piece, shape (rectangle, round, oval), A, B, left side of the piece to the cutout's center, strip of concrete before it; blank places are in the middle",
			{
				...CUTOUT_COLUMNS,
				left: length("Left side to center", { min: 0, optional: true }),
				front: length("Strip before it", { min: 0, optional: true }),
			},
			{ alone: true, optional: true },
		),
		density: density("Density, e.g. 2150"),
		carried: word(
			CARRIED,
			"flat, or on edge with the wider strip down; blank is flat",
			{ blank: "flat" },
		),
		units: units(),
	},
	answer: {
		shape: "table",
		text: "one row per piece",
		beside: "pieces",
		columns: [
			{ text: "bending stress without a factor", unit: "stress" },
			{ text: "concrete left across that section", unit: "length" },
			{ text: "distance of that section from the left", unit: "length" },
		],
	},
	example: {
		shown: ["A2:K2", "M2:S2", "2300"],
		values: [
			[["Counter", 1, "rectangle", 2000, 600, "", "", 40, "", "", ""]],
			[["Counter", 1, "rectangle", 800, 500, 1000, 50]],
			2300,
		],
		answer: [4.73661195, 100, 1000],
		working:
			"ρgt 902.2118 N/m²; reaction (2 × 0.6 − 0.8 × 0.5)/2 × 902.2118 = 360.885 N; in the middle M = 360.885 − 541.327/2 + 902.2118 × 0.5 × 0.4²/2 = 126.310 N·m; S = (600 − 500) × 40²/6 = 26 667 mm³",
	},
	source:
		"Statics of a beam on two supports by its true weight; on edge with the strips beside an opening as a frame",
	compute: ({ pieces, cutouts, density, carried }, units) => {
		const rows = pieces.map(pieceOf);
		const openings = cutouts.map(({ a, b, left, front, ...cutout }) => ({
			...cutout,
			aM: a,
			bM: b,
			leftM: left,
			frontM: front,
		}));
		const text = lengthText(units);
		pieceSizes(rows, openings, text);
		return rows.map((piece) => {
			if (!isSlab(piece)) return ["", "", ""];
			const notch = notchOf(piece);
			const own = openings.filter(
				(cutout) => nameKey(cutout.piece) === nameKey(piece.name),
			);
			const holes = inTheMiddle(piece, notch, own);
			const [trouble] = placeTroubles(piece, notch, holes, 0, text);
			if (trouble) throw new InputError(`${trouble}: see left and front`);
			const { stressPa, netM, atM } = bending(
				{ piece, notch, holes },
				density,
				carried,
			);
			return [stressPa, netM, atM];
		});
	},
});
