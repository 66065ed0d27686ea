import { GRIPS, liftLimitKg, liftLimitLb } from "../calc/lifting";
import { fromSi, toSi } from "../job/reading/units";
import { length, number, units, word } from "./arguments";
import { sheetFunction } from "./declare";

export const LIFT_LIMIT = sheetFunction({
	name: "LIFT_LIMIT",
	group: "Handling",
	summary: "Weight one person should lift at most, for a lift of this kind.",
	limits:
		"For one healthy person, two hands, standing, a stable load and a good floor, with no carrying beyond a step or two. It does not cover team lifts, one hand, kneeling, carrying, pushing, slippery floors or sudden lifts. Only the start of the lift is judged: judge the end too where the load is set down with care. 0 where the method gives 0: beyond 63 cm (25 in) reach, 175 cm (70 in) height or travel, 135° twist or 15 lifts a minute.",
	params: {
		reach: length(
			"Hands ahead of mid-ankle, e.g. 400: about 200 mm (8 in) and half the width of the piece",
		),
		height: length("Height of the hands at the start, e.g. 750", { min: 0 }),
		travel: length("How far up or down the load goes, e.g. 500", { min: 0 }),
		twist: number("Turn of the body in degrees, e.g. 30", { min: 0, blank: 0 }),
		lifts_per_minute: number(
			"Lifts a minute, e.g. 0.5; below 0.2 counts as 0.2",
			{
				min: 0,
				blank: 0.2,
			},
		),
		hours: number("How many hours the lifting lasts, e.g. 2; at most 8", {
			min: 0,
			blank: 1,
		}),
		grip: word(GRIPS, "good (handles), fair or poor", { blank: "fair" }),
		units: units(),
	},
	answer: { text: "the limit for one person", unit: "mass" },
	example: {
		shown: ["250", "750", "250"],
		values: [250, 750, 250],
		answer: 23,
		working:
			"25/25 × (1 − 0.003 × 0) × (0.82 + 4.5/25) × 1 × 1 × 1: every multiplier is 1, so the load constant of 23 kg",
	},
	source:
		"Waters, Putz-Anderson, Garg: Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) Pub. 94-110; US and SI forms as published",
	compute: (
		{ reach, height, travel, twist, lifts_per_minute, hours, grip },
		units,
	) => {
		const task = {
			twistDeg: twist,
			liftsPerMinute: lifts_per_minute,
			hours,
			grip,
		};
		const inches = (meters: number) => fromSi(meters, "length", "us");
		const cm = (meters: number) => fromSi(meters, "length", "metric") / 10;
		return units === "us"
			? toSi(
					liftLimitLb({
						...task,
						reachIn: inches(reach),
						heightIn: inches(height),
						travelIn: inches(travel),
					}),
					"mass",
					"us",
				)
			: liftLimitKg({
					...task,
					reachCm: cm(reach),
					heightCm: cm(height),
					travelCm: cm(travel),
				});
	},
});
