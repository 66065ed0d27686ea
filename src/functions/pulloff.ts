import { planSteps } from "../job/answers/plan";
import { list, mass, number, units } from "./arguments";
import { sheetFunction } from "./declare";
import {
	BINDER_IN_MIX,
	notTooMany,
	PIGMENTS,
	TONES,
	tonesOf,
	unique,
} from "./tonetable";

export const PULL_OFF_PLAN = sheetFunction({
	name: "PULL_OFF_PLAN",
	group: "Tones",
	summary:
		"The steps that dose one batch into all its tones, worked out again from what was weighed.",
	limits:
		"Pigment can only be added, so tones that cannot be made from one another need a bucket each; the plan uses the fewest. What is typed beside a step is what happened: later amounts follow from it, steps never change. 0 means nothing was done; a value beside keep is for comparison and changes nothing.",
	params: {
		tones: TONES,
		pigments: PIGMENTS,
		mass: mass("Undosed mix in the mixer, e.g. 100"),
		binder_share: BINDER_IN_MIX,
		weighed: list(
			number(
				"What the scale showed beside each step, e.g. J2:J30; blank is to come",
				{
					optional: true,
				},
			),
			{ alone: true, optional: true },
		),
		units: units(),
	},
	answer: {
		shape: "table",
		text: "one row per step",
		columns: [
			{ text: "step" },
			{ text: "vessel" },
			{ text: "action" },
			{ text: "what" },
			{ text: "amount on the scale" },
			{ text: "unit" },
			{ text: "total dose in the vessel after it" },
			{ text: "undosed mix left in the vessel", unit: "mass" },
			{ text: "remark" },
		],
	},
	example: {
		shown: ["A2:C3", "E1", "100", "50%"],
		values: [
			[
				["light", 0.75, 0.01],
				["dark", 0.25, 0.04],
			],
			[["black"]],
			100,
			0.5,
		],
		answer: [
			[1, "mixer", "add", "black", 500, "g", 0.01, 100, ""],
			[2, "mixer", "pull off", "light", 75.375, "kg", 0.01, 25, ""],
			[3, "mixer", "add", "black", 375, "g", 0.04, 25, ""],
			[4, "mixer", "keep", "dark", 25.5, "kg", 0.04, 25, ""],
		],
		working:
			"100 kg × 50% × 1% = 500 g; 75 kg × (1 + 50% × 1%) = 75.375 kg; 25 kg × 50% × (4% − 1%) = 375 g; 25 kg × (1 + 50% × 4%) = 25.5 kg",
	},
	source:
		"Conservation of mass; fewest vessels by Dilworth, Annals of Mathematics 51 (1950)",
	compute: ({ tones, pigments, mass, binder_share, weighed }, units) => {
		notTooMany(tones, "a plan");
		return planSteps({
			tones: tonesOf(tones, unique("pigments", pigments)),
			pigments,
			massKg: mass,
			binderShare: binder_share,
			weighed,
			units,
		}).map((step) => Object.values(step));
	},
});
