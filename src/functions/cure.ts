import {
	ageDays,
	CEMENTS,
	equivalentAgeH,
	type Interval,
	strengthShare,
	temperatureTimeCH,
	workingTimeMin,
} from "../calc/cure";
import { list, number, share, temperature, units, word } from "./arguments";
import { sheetFunction } from "./declare";

const group = "Water, weather and cure";

/** Temperatures that a kelvin formula divides by. */
const ABOVE_ABSOLUTE_ZERO = { above: -273.15 };

const hours = () =>
	list(number("Length of each interval in hours, e.g. A2:A20", { min: 0 }));

const temps = () =>
	list(
		temperature("Mean temperature of each interval, e.g. B2:B20", {
			...ABOVE_ABSOLUTE_ZERO,
		}),
	);

const cement = () =>
	word(CEMENTS, "rapid, normal or slow: cement of class R, N or S", {
		blank: "normal",
	});

const intervals = (
	hours: readonly number[],
	temps: readonly number[],
): Interval[] =>
	hours.map((length, index) => ({
		hours: length,
		temperatureC: temps[index] ?? Number.NaN,
	}));

export const TEMPERATURE_TIME_FACTOR = sheetFunction({
	name: "TEMPERATURE_TIME_FACTOR",
	group,
	summary: "Maturity as degree-hours above a datum (Nurse–Saul).",
	limits:
		"Compares one mix with itself: the strength that belongs to it comes from tests of that mix. Below the datum nothing counts.",
	params: {
		hours: hours(),
		temps: temps(),
		datum: temperature("Temperature at which hardening stops, e.g. 0", {
			blank: 0,
			min: -273.15,
		}),
		units: units(),
	},
	answer: { text: "degree-hours", unit: "degreeHours" },
	example: {
		shown: ["A2:A3", "B2:B3"],
		values: [
			[[12], [24]],
			[[20], [15]],
		],
		answer: 600,
		working: "12 × 20 + 24 × 15 = 600 °C·h",
	},
	source: "Nurse–Saul, ASTM C1074; datum 0 °C from memory",
	compute: ({ hours, temps, datum }) =>
		temperatureTimeCH(intervals(hours, temps), datum),
});

export const EQUIVALENT_AGE = sheetFunction({
	name: "EQUIVALENT_AGE",
	group,
	summary: "Age in hours at a reference temperature that is worth the same.",
	limits:
		"For concrete kept moist. q differs between cements and admixtures: 5000 K is for plain Portland cement. Frozen mix does not harden, whatever the formula says.",
	params: {
		hours: hours(),
		temps: temps(),
		reference: temperature("Reference temperature, e.g. 20", {
			blank: 20,
			...ABOVE_ABSOLUTE_ZERO,
		}),
		q: number("Activation energy over the gas constant, in kelvin, e.g. 5000", {
			blank: 5000,
			above: 0,
		}),
		units: units(),
	},
	answer: { text: "hours at the reference temperature" },
	example: {
		shown: ["24", "30"],
		values: [24, 30],
		answer: 42.127,
		working: "24 × exp(−5000 × (1 / 303.15 − 1 / 293.15)) = 24 × exp(0.5626)",
	},
	source: "ASTM C1074, Arrhenius form; 5000 K for Type I cement from memory",
	compute: ({ hours, temps, reference, q }) =>
		equivalentAgeH(intervals(hours, temps), reference, q),
});

export const STRENGTH_AT_AGE = sheetFunction({
	name: "STRENGTH_AT_AGE",
	group,
	summary: "Strength at an age as a share of the 28-day strength.",
	limits:
		"For Portland cement concrete kept moist at 20 °C (68 °F); may exceed 100%. Below 3 days the code asks for tests: demold and load by a test of your mix, not by this formula.",
	params: {
		age_days: number("Age in days, e.g. 7", { min: 0 }),
		cement: cement(),
	},
	answer: { text: "share of the 28-day strength" },
	example: {
		shown: ["7"],
		values: [7],
		answer: 0.7788,
		working: "exp(0.25 × (1 − √(28 / 7))) = exp(−0.25)",
	},
	source: "EN 1992-1-1:2004, eq. 3.2 and 3.1.2(6)",
	compute: ({ age_days, cement }) => strengthShare(age_days, cement),
});

export const AGE_FOR_STRENGTH = sheetFunction({
	name: "AGE_FOR_STRENGTH",
	group,
	summary: "Days until a share of the 28-day strength is reached.",
	limits:
		"For Portland cement concrete kept moist at 20 °C (68 °F). Below 3 days the code asks for tests: demold and load by a test of your mix, not by this formula.",
	params: {
		share: share("Share of the 28-day strength, e.g. 70%", {
			above: 0,
			max: 10,
		}),
		cement: cement(),
	},
	answer: { text: "days" },
	example: {
		shown: ["100%"],
		values: [1],
		answer: 28,
		working: "28 / (1 − ln 1 / 0.25)² = 28",
	},
	source: "EN 1992-1-1:2004, eq. 3.2, solved for the age",
	compute: ({ share, cement }) => ageDays(share, cement),
});

export const WORKING_TIME = sheetFunction({
	name: "WORKING_TIME",
	group,
	summary: "Working time in minutes at another temperature, from one trial.",
	limits:
		"Of the same mix with the same admixtures: retarders and accelerators change with temperature in their own ways.",
	params: {
		minutes: number("Working time of the trial in minutes, e.g. 45", {
			above: 0,
		}),
		tested_temp: temperature("Mix temperature of the trial, e.g. 20", {
			...ABOVE_ABSOLUTE_ZERO,
		}),
		mix_temp: temperature("Mix temperature now, e.g. 28", {
			...ABOVE_ABSOLUTE_ZERO,
		}),
		units: units(),
	},
	answer: { text: "minutes" },
	example: {
		shown: ["45", "20", "30"],
		values: [45, 20, 30],
		answer: 25.637,
		working: "45 × exp(5000 × (1 / 303.15 − 1 / 293.15)) = 45 × exp(−0.5626)",
	},
	source: "Arrhenius form of ASTM C1074 with 5000 K, turned into time",
	compute: ({ minutes, tested_temp, mix_temp }) =>
		workingTimeMin({ minutes, testedC: tested_temp, mixC: mix_temp }),
});
