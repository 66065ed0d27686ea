import {
	mixToLightenKg,
	pigmentKg,
	pigmentToDeepenKg,
	toneWeights,
} from "../calc/tones";
import { mass, share, units } from "./arguments";
import { sheetFunction } from "./declare";
import { BINDER_IN_MIX, PIGMENTS, TONES, tonesOf, unique } from "./tonetable";

const COMMON = "A dose is dry pigment as a share of binder mass.";

export const PIGMENT_GRAMS = sheetFunction({
	name: "PIGMENT_GRAMS",
	group: "Tones",
	summary: "Grams of dry pigment for a mass of undosed mix.",
	limits: `${COMMON} A pigment slurry or liquid weighs more: divide by its solids share.`,
	params: {
		mass: mass("Mix before pigment, e.g. 100"),
		binder_share: BINDER_IN_MIX,
		dose: share("Dry pigment as a share of binder, e.g. 4%"),
		units: units(),
	},
	answer: { text: "dry pigment", unit: "pigment" },
	example: {
		shown: ["100", "55%", "4%"],
		values: [100, 0.55, 0.04],
		answer: 2200,
		working: "100 kg × 55% = 55 kg of binder; 55 kg × 4% = 2.2 kg",
	},
	source: "Definition of a dose by mass of binder",
	compute: ({ mass, binder_share, dose }) =>
		pigmentKg({ massKg: mass, binderShare: binder_share, dose }),
});

export const TONE_WEIGHTS = sheetFunction({
	name: "TONE_WEIGHTS",
	group: "Tones",
	summary: "Mix and grams of each pigment for every tone of a batch.",
	limits: `${COMMON} Shares are relative weights and need not add up to 100%.`,
	params: {
		tones: TONES,
		pigments: PIGMENTS,
		mass: mass("Undosed mix of the whole batch, e.g. 100"),
		binder_share: BINDER_IN_MIX,
		units: units(),
	},
	answer: {
		shape: "table",
		text: "one row per tone: undosed mix, mass on the scale, grams of each pigment",
		columns: [
			{ text: "undosed mix", unit: "mass" },
			{ text: "mass on the scale, pigment included", unit: "mass" },
			{ text: "pigment", unit: "pigment" },
		],
		beside: "tones",
	},
	example: {
		shown: ["A2:C3", "E1", "100", "50%"],
		values: [
			[
				["light", 0.75, 0],
				["dark", 0.25, 0.04],
			],
			[["black"]],
			100,
			0.5,
		],
		answer: [
			[75, 75, 0],
			[25, 25.5, 500],
		],
		working:
			"dark: 25 kg × 50% × 4% = 0.5 kg of black, so the scale shows 25.5 kg",
	},
	source: "Definition of a dose by mass of binder",
	compute: ({ tones, pigments, mass, binder_share }) =>
		toneWeights({
			tones: tonesOf(tones, unique("pigments", pigments)),
			massKg: mass,
			binderShare: binder_share,
		}).map(({ undosedKg, scaleKg, pigmentsKg }) => [
			undosedKg,
			scaleKg,
			...pigmentsKg.slice(0, pigments.length),
		]),
});

const change = (now: string, wanted: string) => ({
	mass: mass("The tone as the scale shows it now, pigment included, e.g. 20"),
	binder_share: BINDER_IN_MIX,
	dose_now: share(`Dose it has, e.g. ${now}`),
	dose_wanted: share(`Dose it should have, e.g. ${wanted}`),
	units: units(),
});

export const PIGMENT_TO_DEEPEN = sheetFunction({
	name: "PIGMENT_TO_DEEPEN",
	group: "Tones",
	summary: "Grams of pigment to add to a tone that is too light.",
	limits: `${COMMON} For a tone of several pigments in fixed proportion, the doses are totals and so are the grams.`,
	params: change("2%", "3%"),
	answer: { text: "pigment to add", unit: "pigment" },
	example: {
		shown: ["101", "50%", "2%", "3%"],
		values: [101, 0.5, 0.02, 0.03],
		answer: 500,
		working:
			"101 kg / (1 + 50% × 2%) = 100 kg undosed; 100 kg × 50% × (3% − 2%) = 0.5 kg",
	},
	source: "Conservation of mass",
	compute: ({ mass, binder_share, dose_now, dose_wanted }) =>
		pigmentToDeepenKg({
			massKg: mass,
			binderShare: binder_share,
			doseNow: dose_now,
			doseWanted: dose_wanted,
		}),
});

export const MIX_TO_LIGHTEN = sheetFunction({
	name: "MIX_TO_LIGHTEN",
	group: "Tones",
	summary: "Undosed mix to fold into a tone that is too dark.",
	limits: `${COMMON} There is that much more of the tone then.`,
	params: change("4%", "2%"),
	answer: { text: "undosed mix to fold in", unit: "mass" },
	example: {
		shown: ["102", "50%", "4%", "2%"],
		values: [102, 0.5, 0.04, 0.02],
		answer: 100,
		working:
			"102 kg / (1 + 50% × 4%) = 100 kg undosed; 100 kg × (4% / 2% − 1) = 100 kg",
	},
	source: "Conservation of mass",
	compute: ({ mass, binder_share, dose_now, dose_wanted }) =>
		mixToLightenKg({
			massKg: mass,
			binderShare: binder_share,
			doseNow: dose_now,
			doseWanted: dose_wanted,
		}),
});
