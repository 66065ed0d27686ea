/** What the Tones tab answers of the mix, the tones and their pigments. */

import { colorsAnswer } from "../answers/colors";
import { foldingAnswer } from "../answers/folding";
import { from, type Known } from "../answers/known";
import { lookWords } from "../answers/lookwords";
import { wantedWords } from "../answers/recipewords";
import { tonesCheck } from "../answers/tonescheck";
import { filledPlaces, toneTable } from "../cells/jobcells";
import { MOST } from "../jobfile";
import { unitName } from "../reading/units";
import { besideTyped, type Shown, type TabAnswer, type TabInput } from "./tab";

const NEEDS = ["head", "pieces", "tones", "mixes", "pigments"] as const;

/** Facts of the mix by their keys. */
const FACTS = {
	binder: {
		label: "Binder in fresh mix",
		format: "share",
		by: "BINDER_SHARE",
		of: ({ mix }) => mix.binderShare,
	},
	density: {
		label: "Fresh density, {density}",
		format: "density",
		unit: "density",
		by: "MIX_DENSITY",
		of: ({ mix }) => mix.densityKgPerM3,
		note: "Where none was measured.",
	},
	densitySaid: {
		label: "Density is",
		format: "text",
		of: ({ mix }) => from(mix.densityOff, densityWords),
	},
	waterBinder: {
		label: "Water over binder",
		format: "number",
		by: "WATER_BINDER_RATIO",
		of: ({ mix }) => mix.waterBinder,
	},
	cement: {
		label: "Cement in binder",
		format: "share",
		of: ({ mix }) => mix.cementShare,
	},
	dryMix: {
		label: "Dry mix to binder",
		format: "number",
		note: "Dry mix is every solid but the rows with fiber in their name.",
		of: ({ mix }) => mix.dryMixShare,
	},
	face: {
		label: "Toned face in the mix",
		format: "share",
		of: ({ tones }) => tones.faceShare,
	},
	pigmentWater: {
		label: "Water in the pigment, of the mix",
		format: "share",
		note: "Left out of the mix water, on the Pour card and in the sample.",
		of: ({ tones }) => tones.pigmentWater,
	},
	bands: {
		label: "Bands after the folds, {length}",
		format: "length",
		unit: "length",
		by: "BAND_WIDTH",
		note: "Each fold halves the bands. At the finest: hands and fibers leave them wider.",
		of: (input) => foldingAnswer(input).bandM,
	},
	blur: {
		label: "Folds until they blur",
		format: "whole",
		by: "FOLDS_UNTIL_BLURRED",
		note: "Hue alone blurs a fold sooner.",
		of: (input) => foldingAnswer(input).foldsUntilBlurred,
	},
	farColor: {
		label: "Color across the room",
		format: "text",
		by: "FAR_COLOR",
		of: (input) => colorsAnswer(input).far,
	},
	swatches: {
		label: "Swatches used",
		format: "text",
		of: (input) => colorsAnswer(input).used,
	},
	look: {
		label: "Look, as the quote says it",
		format: "text",
		of: lookWords,
	},
	check: { label: "Check", format: "text", of: tonesCheck },
	recipe: {
		label: "Recipe for the color wanted",
		format: "text",
		by: "PIGMENTS_FOR_COLOR",
		note: "Doses as their makers state them. The panel's Color has others beside it, and puts one into a tone.",
		of: wantedWords,
	},
} satisfies Record<
	string,
	Shown & {
		of(input: TabInput): ReturnType<TabAnswer["values"]>[number][number];
	}
>;

/** By how much a measured density changes all masses. */
const densityWords = (off: number | undefined): string => {
	if (off === undefined) return "worked out from specific gravities";
	const percent = Number((Math.abs(off) * 100).toFixed(1));
	return `as measured: all masses ${percent}% ${off < 0 ? "less" : "more"} than from specific gravities`;
};

export type MixFact = keyof typeof FACTS;
export const MIX_FACTS = Object.keys(FACTS) as MixFact[];

export const JOB_MIX: TabAnswer = {
	name: "JOB_MIX",
	summary: "What the mix of a job is, and what its tones come to.",
	needs: [...NEEDS, "card", "swatches"],
	shape: "list",
	shown: Object.values(FACTS),
	values: (input) => [Object.values(FACTS).map(({ of }) => of(input))],
};

/** Columns of pigments: as many as a job may have. */
export const perPigment = <T>(one: (index: number) => T): T[] =>
	Array.from({ length: MOST.pigments }, (_, i) => one(i));

/** Headings with the names of the pigments, from a column on. */
export const pigmentHeadings = (
	{ pigments }: Pick<TabInput, "pigments">,
	first: number,
	heading: (name: string) => string,
): Readonly<Record<number, string>> =>
	Object.fromEntries(
		pigments.map(({ name }, i) => [first + i, heading(name)] as const),
	);

const GRAMS: Shown = {
	label: "",
	format: "pigment",
	unit: "pigment",
	by: "TONE_WEIGHTS",
};

const WEIGHED_FROM = 2;
const DRY_FROM = 11;

export const JOB_TONES: TabAnswer = {
	name: "JOB_TONES",
	summary:
		"Of each tone: its mix, its pigment as weighed and dry, its color, and whether it can be told from the others.",
	needs: [...NEEDS, "swatches"],
	shape: "table",
	shown: [
		{
			label: "Undosed mix, {mass}",
			format: "mass",
			unit: "mass",
			by: "TONE_WEIGHTS",
		},
		{
			label: "On the scale, {mass}",
			format: "mass",
			unit: "mass",
			by: "TONE_WEIGHTS",
		},
		...perPigment(() => ({ ...GRAMS, note: "Pigment with its water." })),
		{
			label: "Below the limit by",
			format: "share",
			by: "PIGMENT_HEADROOM",
			note: "Of cement.",
		},
		{ label: "Expected color", format: "text", by: "EXPECTED_COLORS" },
		{ label: "Most like", format: "text", by: "EXPECTED_COLORS" },
		{ label: "Differs by", format: "temperature", by: "EXPECTED_COLORS" },
		{
			label: "Told from the others",
			format: "text",
			wrap: true,
			note: "By CIEDE2000: half of people see 0.8 and accept 1.8 (Paravina and others, 2015). The words change at 2 and at 5: common practice, no source.",
		},
		...perPigment(() => ({ ...GRAMS, note: "Dry pigment." })),
		{
			label: "Water over binder",
			format: "number",
			note: "The water of its own pigment included.",
		},
		{ label: "Its water", format: "text" },
	],
	headings: (input) => {
		const grams = unitName("pigment", input.units);
		return {
			...pigmentHeadings(input, WEIGHED_FROM, (name) => `${name}, ${grams}`),
			...pigmentHeadings(input, DRY_FROM, (name) => `${name} dry, ${grams}`),
		};
	},
	values(input) {
		const { tones, regions, units } = input;
		const colors = colorsAnswer(input).tones;
		return besideTyped(
			filledPlaces(toneTable(regions.tones ?? [], units).rows),
			tones.rows.map((tone, i) => {
				const color = colors[i];
				return [
					tone.undosedKg,
					tone.scaleKg,
					...eachPigment(input, tone.weighedKg),
					tone.headroom,
					color?.color,
					color && from(color.nearest, (nearest) => nearest?.name),
					color && from(color.nearest, (nearest) => nearest?.difference),
					color?.toldApart,
					...eachPigment(input, tone.dryKg),
					tone.waterBinder,
					tone.waterSaid,
				];
			}),
		);
	},
};

/** A value for each column of pigments; none where there is no pigment. */
export const eachPigment = (
	{ pigments }: Pick<TabInput, "pigments">,
	values: Known<readonly number[]>,
): (Known<number | undefined> | undefined)[] =>
	perPigment((i) =>
		i < pigments.length ? from(values, (each) => each[i]) : undefined,
	);
