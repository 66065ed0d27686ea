import { bandWidthM, foldsUntilBlurred } from "../calc/folding";
import { length, number, units } from "./arguments";
import { sheetFunction } from "./declare";

const IDEAL =
	"Of ideal folds: hands stretch unevenly and fibers resist, so real bands are coarser; count folds on your own pieces.";

export const BAND_WIDTH = sheetFunction({
	name: "BAND_WIDTH",
	group: "Folding",
	summary: "Width of the bands after whole folds: each fold halves it.",
	limits: `An upper bound on fineness. ${IDEAL}`,
	params: {
		start: length(`Width of the bands before folding, e.g. 40 or 1 1/2"`),
		folds: number("Folds, e.g. 5", { min: 0, whole: true }),
		units: units(),
	},
	answer: { text: "band width", unit: "length" },
	example: {
		shown: ["40", "3"],
		values: [40, 3],
		answer: 5,
		working: "40 mm / 2 / 2 / 2 = 5 mm",
	},
	source:
		"Baker's map; stretching and folding in Christov, Lueptow and Ottino, arXiv:1010.2256",
	compute: ({ start, folds }) => bandWidthM(start, folds),
});

export const FOLDS_UNTIL_BLURRED = sheetFunction({
	name: "FOLDS_UNTIL_BLURRED",
	group: "Folding",
	summary:
		"Folds after which the bands can no longer be told apart from a distance.",
	limits: `Finer than 1 arcminute, for tones that differ in lightness; tones that differ in hue alone blur about 1.3 folds sooner. ${IDEAL}`,
	params: {
		start: length("Width of the bands before folding, e.g. 40"),
		distance: length("Distance to the eye, e.g. 500 or 2 ft"),
		units: units(),
	},
	answer: { text: "whole folds" },
	example: {
		shown: ["40", "500"],
		values: [40, 500],
		answer: 9,
		working:
			"1 arcminute at 500 mm is 0.145 mm; 40 mm / 2⁸ = 0.156 mm is wider, / 2⁹ = 0.078 mm is finer",
	},
	source:
		"Visual acuity of 1 arcminute; hue contrast ends at 12 cycles per degree (Mullen, Journal of Physiology 359, 1985)",
	compute: ({ start, distance }) => foldsUntilBlurred(start, distance),
});
