import { doseUncertainty } from "../calc/weighing";
import { mass, number, pigment, units } from "./arguments";
import { sheetFunction } from "./declare";

export const DOSE_UNCERTAINTY = sheetFunction({
	name: "DOSE_UNCERTAINTY",
	group: "Tones",
	summary: "How far off a dose may be by the divisions of the scales alone.",
	limits:
		"Relative standard uncertainty (k = 1; double it for about 95%). Of the scales' divisions only: not their calibration, drift or what sticks to a tool.",
	params: {
		pigment_grams: pigment("Pigment to weigh, e.g. 20"),
		pigment_division: pigment("Division of the gram scale, e.g. 0.1"),
		mass: mass("Mix that is dosed, e.g. 10"),
		mass_division: mass("Division of the mix scale, e.g. 0.02"),
		weighings: number("Weighings that the mix is a difference of, e.g. 2", {
			blank: 1,
			min: 1,
			whole: true,
		}),
		units: units(),
	},
	answer: { text: "share of the dose" },
	example: {
		shown: ["3", "3", "1", "1", "1"],
		values: [3, 3, 1, 1, 1],
		answer: Math.sqrt(1 / 3),
		working: "√2 × 1/√12 = √(1/6) for each; √(1/6 + 1/6) = √(1/3) = 0.577",
	},
	source: "JCGM 100:2008 (GUM), 5.1.2 and F.2.2.1",
	compute: (args) =>
		doseUncertainty({
			pigmentKg: args.pigment_grams,
			pigmentDivisionKg: args.pigment_division,
			massKg: args.mass,
			massDivisionKg: args.mass_division,
			weighings: args.weighings,
		}),
});
