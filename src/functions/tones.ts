import { pigmentHeadroom } from "../calc/headroom";
import {
	mixToLightenKg,
	pigmentKg,
	pigmentToDeepenKg,
	toneWeights,
} from "../calc/tones";
import { doseUncertainty } from "../calc/weighing";
import {
	list,
	mass,
	number,
	pigment,
	share,
	table,
	text,
	units,
} from "./arguments";
import { sheetFunction } from "./declare";
import { planTable } from "./plan";
import { oneRowAsWide, tonesOf, unique } from "./tonetable";

const binderShare = () =>
	share("Binder in the undosed mix, e.g. 55%", { above: 0, max: 1 });

const tones = () =>
	table(
		"One row per tone: name, share of the batch, then a dose of each pigment",
		{
			name: text("Name of the tone, e.g. warm gray"),
			share: number("Share of the batch, or any weight, e.g. 60%", { min: 0 }),
		},
		{ more: share("dose", { blank: 0 }) },
	);

const pigments = () =>
	list(text("Names of the pigments, in the order of the dose columns"), {
		alone: true,
		mayBeEmpty: true,
	});

const undosed = () => mass("Mix before pigment, e.g. 100");

const COMMON = "A dose is dry pigment as a share of binder mass.";

export const PIGMENT_GRAMS = sheetFunction({
	name: "PIGMENT_GRAMS",
	group: "Tones",
	summary: "Grams of dry pigment for a mass of undosed mix.",
	limits: `${COMMON} A pigment slurry or liquid weighs more: divide by its solids share.`,
	params: {
		mass: undosed(),
		binder_share: binderShare(),
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
	summary: "Mix and grams of each pigment, a row for each tone of a batch.",
	limits: `${COMMON} Shares are relative weights and need not add up to 100%.`,
	params: {
		tones: tones(),
		pigments: pigments(),
		mass: mass("Undosed mix of the whole batch, e.g. 100"),
		binder_share: binderShare(),
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

export const PULL_OFF_PLAN = sheetFunction({
	name: "PULL_OFF_PLAN",
	group: "Tones",
	summary:
		"The steps that dose one batch into all its tones, worked out again from what was weighed.",
	limits:
		"Pigment can only be added, so tones that cannot be made from one another need a bucket each; the plan uses the fewest. What is typed beside a step is what happened: later amounts follow from it, steps never change. 0 means nothing was done; a value beside keep is for comparison and changes nothing.",
	params: {
		tones: tones(),
		pigments: pigments(),
		mass: mass("Undosed mix in the mixer, e.g. 100"),
		binder_share: binderShare(),
		weighed: list(
			number("What the scale showed, beside each step; blank is to come", {
				optional: true,
			}),
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
	compute: ({ tones, pigments, mass, binder_share, weighed }, units) =>
		planTable({
			tones: tonesOf(tones, unique("pigments", pigments)),
			pigments,
			massKg: mass,
			binderShare: binder_share,
			weighed,
			units,
		}),
});

const change = () => ({
	mass: mass("The tone as the scale shows it now, pigment included, e.g. 20"),
	binder_share: binderShare(),
	dose_now: share("Dose it has, e.g. 2%"),
	dose_wanted: share("Dose it should have, e.g. 3%"),
	units: units(),
});

export const PIGMENT_TO_DEEPEN = sheetFunction({
	name: "PIGMENT_TO_DEEPEN",
	group: "Tones",
	summary: "Grams of pigment to add to a tone that is too light.",
	limits: `${COMMON} For a tone of several pigments in fixed proportion, the doses are totals and so are the grams.`,
	params: change(),
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
	limits: `${COMMON} The tone then is more than planned by as much.`,
	params: change(),
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

export const DOSE_UNCERTAINTY = sheetFunction({
	name: "DOSE_UNCERTAINTY",
	group: "Tones",
	summary: "How far off a dose may be for the divisions of the scales alone.",
	limits:
		"Relative standard uncertainty (k = 1; double it for about 95%). Of the scales' divisions only: not their calibration, drift or what sticks to a tool.",
	params: {
		pigment_grams: pigment("Pigment to weigh, in grams, e.g. 20"),
		pigment_division: pigment("Division of the gram scale, e.g. 1"),
		mass: mass("Mix that is dosed, e.g. 10"),
		mass_division: mass("Division of the mix scale, e.g. 1"),
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

export const PIGMENT_HEADROOM = sheetFunction({
	name: "PIGMENT_HEADROOM",
	group: "Tones",
	summary: "How far each tone is below the highest pigment dose allowed.",
	limits:
		"ASTM C979 counts pigment as a share of cement: at most 10%, and all pigments together at most the smallest maximum of those present. Negative is over. A maker's own limit, and trials for strength, come first.",
	params: {
		doses: table(
			"One row per tone, one column per pigment: doses as shares of binder, e.g. A2:B5",
			{},
			{ more: share("dose", { blank: 0 }) },
		),
		maxima: table(
			"One row: each pigment's maximum as a share of cement, 10% where blank",
			{},
			{
				more: share("maximum", { optional: true }),
				alone: true,
				optional: true,
			},
		),
		cement_share: share("Cement in the binder, e.g. 80%", {
			blank: 1,
			above: 0,
			max: 1,
		}),
	},
	answer: {
		shape: "column",
		text: "share of cement still allowed",
		beside: "doses",
	},
	example: {
		shown: ["A2:B2", "A1:B1", "80%"],
		values: [[[0.02, 0.02]], [[0.08, 0.06]], 0.8],
		answer: 0.01,
		working: "(2% + 2%) / 80% = 5% of cement; 6% − 5% = 1%",
	},
	source: "ASTM C979/C979M, 1.4",
	compute: ({ doses, maxima, cement_share }) => {
		const allowed = oneRowAsWide("maxima", maxima, "doses", doses);
		return doses.map(({ more }) =>
			pigmentHeadroom({
				doses: more,
				maxima: allowed,
				cementShare: cement_share,
			}),
		);
	},
});
