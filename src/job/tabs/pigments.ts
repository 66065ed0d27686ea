/** What the Tones tab answers of each pigment, and of the mix and the sample that the pigments go into. */

import { inUnit } from "../answers/given";
import { from, isKnown, type Known } from "../answers/known";
import { layUpAnswer } from "../answers/layup";
import { ingredientMasses } from "../answers/mix";
import type { PigmentAnswer } from "../answers/pigments";
import { type PigmentTotal, pigmentTotals } from "../answers/pigmenttotals";
import { sampleAnswer } from "../answers/samplebatch";
import { unitName } from "../reading/units";
import type { Shown, TabAnswer, TabInput, Value } from "./tab";
import { eachPigment, perPigment, pigmentHeadings } from "./tones";

const NEEDS = ["head", "pieces", "tones", "mixes", "pigments"] as const;

/** Rows of JOB_PIGMENTS, with the format of their cells. */
export const PIGMENT_ROWS = {
	basis: { label: "Its doses are of", format: "text" },
	maximum: { label: "Maximum, of cement", format: "share" },
	solids: { label: "Pigment in it", format: "share" },
	wet: { label: "Weighed wet, g per g", format: "number" },
	toBinder: { label: "Times a dose for its share of binder", format: "number" },
	price: { label: "Price per gram", format: "plain" },
	weighed: { label: "All tones, as weighed, g", format: "pigment" },
	dry: { label: "Dry pigment in it, g", format: "pigment" },
	water: { label: "Water in it, g", format: "pigment" },
	bought: { label: "As bought, g", format: "pigment" },
	bucketFold: { label: "Bucket fold, as bought, g", format: "pigment" },
	layUp: { label: "Mold lay-up, as bought, g", format: "pigment" },
	saves: { label: "Lay-up saves, g", format: "pigment" },
} as const satisfies Record<string, Shown>;

type PigmentRow = keyof typeof PIGMENT_ROWS;

const COLUMN: Shown = { label: "", format: "pigment" };

export const JOB_PIGMENTS: TabAnswer = {
	name: "JOB_PIGMENTS",
	summary:
		"Of each pigment: what the studio says of it, how much all tones take, and what a mold lay-up would save of it.",
	needs: NEEDS,
	shape: "table",
	shown: [
		{ label: "Pigments", format: "text" },
		{ label: "Mix toned", format: "share" },
		...perPigment(() => COLUMN),
		{ label: "Together, g", format: "pigment" },
		{ label: "Cost", format: "money" },
	],
	headings: (input) => pigmentHeadings(input, 2, (name) => name),
	values(input) {
		const rows = pigmentRows(input);
		return Object.entries(PIGMENT_ROWS).map(([key, { label }]) => [
			label,
			...rows[key as PigmentRow],
		]);
	},
};

/** Cells to the right of each label. */
function pigmentRows(
	input: TabInput,
): Readonly<Record<PigmentRow, readonly Value[]>> {
	const { pigments } = input;
	const totals = pigmentTotals(input);
	const { bucketFold, layUp, saves } = layUpAnswer(input);
	const grams = (known: Known<number>) =>
		from(known, (kg) => inUnit(input, "pigment", kg));
	const own = (of: (pigment: PigmentAnswer) => Value) => [
		undefined,
		...perPigment((i) => (pigments[i] ? of(pigments[i]) : undefined)),
	];
	const total = (of: keyof PigmentTotal) => [
		undefined,
		...perPigment((i) => (totals[i] ? grams(totals[i][of]) : undefined)),
	];
	const bought = (
		{ pigmentsKg, totalKg, cost }: typeof saves,
		toned?: Known<number>,
	) => [
		toned,
		...eachPigment(
			input,
			from(pigmentsKg, (each) =>
				each.map((kg) => inUnit(input, "pigment", kg)),
			),
		),
		grams(totalKg),
		cost,
	];
	return {
		basis: own(({ basis }) => from(basis, (word) => `of ${word}`)),
		maximum: own(({ maximum }) => maximum),
		solids: own(({ solids }) => solids),
		wet: own(({ wetPerDry }) => wetPerDry),
		toBinder: own(({ toBinder }) => toBinder),
		price: own(({ pricePerGram }) => pricePerGram),
		weighed: total("weighedKg"),
		dry: total("dryKg"),
		water: total("waterKg"),
		bought: total("boughtKg"),
		bucketFold: bought(bucketFold, bucketFold.tonedShare),
		// What is missing of it is said once.
		layUp:
			"missing" in layUp.totalKg
				? [layUp.totalKg]
				: bought(layUp, layUp.tonedShare),
		saves: "missing" in saves.totalKg ? [] : bought(saves),
	};
}

export const JOB_INGREDIENTS: TabAnswer = {
	name: "JOB_INGREDIENTS",
	summary: "The ingredients of a job's mix, for the job and for its sample.",
	needs: NEEDS,
	shape: "table",
	shown: [
		{ label: "Ingredient", format: "text" },
		{ label: "Parts", format: "number" },
		{ label: "Specific gravity", format: "number" },
		{ label: "Binder share", format: "share" },
		{ label: "Cement share", format: "share" },
		{ label: "Water share", format: "share" },
		{ label: "Solid or water", format: "text" },
		{ label: "Moisture", format: "share" },
		{ label: "Absorption", format: "share" },
		{ label: "Pack, {mass}", format: "plain", unit: "mass" },
		{ label: "Pack price", format: "money" },
		{
			label: "For this job, {mass}",
			format: "mass",
			unit: "mass",
			by: "WEIGH_OUT",
		},
		{ label: "For the sample, g", format: "pigment", unit: "pigment" },
	],
	values(input) {
		const { mix, loads } = input;
		if (!isKnown(mix.ingredients)) return [[mix.ingredients]];
		const masses = ingredientMasses(mix, loads.batchKg);
		const sample = sampleAnswer(input).ingredientsKg;
		return mix.ingredients.is.map((row, i) => [
			row.ingredient,
			row.parts,
			row.specificGravity,
			row.binderShare,
			row.cementShare,
			row.waterShare,
			row.group,
			row.moisture,
			row.absorption,
			row.pack,
			row.packPrice,
			from(masses, (each) => each[i]),
			from(sample, (each) => each[i]),
		]);
	},
};

export const JOB_SAMPLE: TabAnswer = {
	name: "JOB_SAMPLE",
	summary:
		"The sample batch of the same tones, weighed as the Pour card would weigh it.",
	needs: NEEDS,
	shape: "table",
	shown: [
		{ label: "Sample of the same tones", format: "text" },
		{ label: "Mix, undosed, {mass}", format: "mass", unit: "mass" },
		...perPigment(
			(): Shown => ({ label: "", format: "pigment", unit: "pigment" }),
		),
		{ label: "Note", format: "text" },
	],
	headings: (input) =>
		pigmentHeadings(
			input,
			2,
			(name) => `${name}, ${unitName("pigment", input.units)}`,
		),
	values(input) {
		const { smallestKg, batchKg, verdict, tones } = sampleAnswer(input);
		const own = isKnown(tones) ? tones.is : [];
		return [
			["Smallest the scales dose within 5% (k = 2)", smallestKg],
			["Sample batch", batchKg, ...perPigment(() => undefined), verdict],
			...own.map(({ name, undosedKg, pigmentsKg }) => [
				name,
				undosedKg,
				...perPigment((i) => pigmentsKg[i]),
			]),
		];
	},
};
