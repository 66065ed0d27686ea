/** What the Pour card answers of the load that is chosen. */

import type { CardTone } from "../answers/card/cardsteps";
import {
	type ChosenCard,
	chosenCard,
	weighOutRows,
} from "../answers/card/chosencard";
import { doseWords } from "../answers/card/tonewords";
import {
	flat,
	from,
	is,
	isKnown,
	type Known,
	look,
	type Said,
	saidOf,
} from "../answers/known";
import { CARD_ROWS } from "../cells/jobcells";
import { unitName } from "../reading/units";
import type { Shown, TabAnswer, TabInput, Value } from "./tab";

const NEEDS = [
	"head",
	"pieces",
	"tones",
	"card",
	"load",
	"mixes",
	"pigments",
] as const;

interface Fact extends Shown {
	of(card: ChosenCard, input: TabInput): Value;
}

/** Whether the plan's number that was typed beside the weights is the plan's. */
const FIT = {
	unweighed: "nothing weighed yet",
	same: "the same",
	none: "Look: no number typed",
	other: "Look: another plan",
} as const;

/** A note beside a number, which says itself what is missing for it. */
const besideNumber = (said: Said): Value =>
	said.state === "unknown" ? undefined : said;

/** Facts of the chosen load by their keys. */
const FACTS = {
	castings: {
		label: "In this load",
		format: "text",
		by: "MIXER_LOADS",
		of: ({ castings }) => castings.join(", "),
	},
	mass: {
		label: "Mix in this load, {mass}",
		format: "mass",
		by: "MIXER_LOADS",
		of: ({ mass }) => mass,
	},
	tonedShare: {
		label: "Toned, share of this load",
		format: "share",
		of: ({ tonedShare }) => tonedShare,
	},
	waterHeld: {
		label: "Water held for pigment, {mass}",
		format: "mass",
		of: ({ waterHeld }) => waterHeld,
	},
	reserve: {
		label: "Reserve, undosed, {mass}",
		format: "mass",
		of: ({ reserve }) => reserve,
	},
	toTone: {
		label: "Mix to tone, undosed, {mass}",
		format: "mass",
		of: ({ toToneMass }) => toToneMass,
	},
	plan: {
		label: "Plan number",
		format: "whole",
		by: "PLAN_NUMBER",
		of: ({ plan }) => plan,
	},
	fit: {
		label: "Weighed by this plan",
		format: "text",
		of: ({ plan, fit }) => from(plan, () => FIT[fit ?? "unweighed"]),
	},
	allFit: {
		label: "Weights of all loads",
		format: "text",
		of: ({ allFit }) => allFit,
	},
	waterC: {
		label: "Water to be at, {temperature}",
		format: "temperature",
		unit: "temperature",
		by: "WATER_TEMPERATURE_FOR",
		of: ({ water }) => water.waterC,
	},
	mixC: {
		label: "Mix will be at, {temperature}",
		format: "temperature",
		unit: "temperature",
		by: "MIX_TEMPERATURE",
		of: ({ water }) => water.mixC,
	},
	warmth: {
		label: "Whether it is too warm",
		format: "text",
		of: ({ water }) => besideNumber(water.warmth),
	},
	total: {
		label: "To weigh out together, {mass}",
		format: "mass",
		of: ({ total }) => total,
	},
	waterCheck: {
		label: "Whether its water is enough",
		format: "text",
		of: ({ water }) => water.waterCheck,
	},
	vessels: {
		label: "Vessels to dose in",
		format: "whole",
		of: ({ steps }) =>
			from(
				steps,
				(all) => all.filter(({ do: does }) => does === "keep").length,
			),
	},
	workingMinutes: {
		label: "Working time, minutes",
		format: "whole",
		by: "WORKING_TIME",
		of: ({ times }) => times.workingMinutes,
	},
	workingAt: {
		label: "Working time is",
		format: "text",
		of: ({ times }) => besideNumber(times.workingAt),
	},
	minutesLeft: {
		label: "Still to do, minutes",
		format: "whole",
		of: ({ times }) => times.minutesLeft,
	},
	timeCheck: {
		label: "Whether the mix works as long",
		format: "text",
		of: ({ times }) => besideNumber(times.timeCheck),
	},
	placeBy: {
		label: "Place the last tone by",
		format: "text",
		of: ({ times }) => times.placeBy,
	},
	placed: {
		label: "Last tone was placed",
		format: "text",
		of: ({ times }) => besideNumber(times.placedSay),
	},
	sinceLoadBefore: {
		label: "Minutes since last load",
		format: "whole",
		of: ({ times }) => times.sinceLoadBefore,
	},
	freshDensity: {
		label: "Fresh density, {density}",
		format: "density",
		unit: "density",
		of: ({ fresh }) => fresh.density,
	},
	yieldSay: {
		label: "What this load yields",
		format: "text",
		of: ({ fresh }) => fresh.say,
	},
	reserveLeft: {
		label: "Reserve left, {mass}",
		format: "mass",
		of: ({ reserveLeft }) => reserveLeft,
	},
	sharesSay: {
		label: "Shares of the tones",
		format: "text",
		of: ({ reserveLeft, sharesSay }) =>
			isKnown(reserveLeft) ? sharesSay : undefined,
	},
	check: {
		label: "Check",
		format: "text",
		of: ({ check }) => check,
	},
} satisfies Record<string, Fact>;

export type CardFact = keyof typeof FACTS;
export const CARD_FACTS = Object.keys(FACTS) as CardFact[];

export const factLabel = (key: CardFact): string => FACTS[key].label;

export const CARD_LOAD: TabAnswer = {
	name: "CARD_LOAD",
	summary:
		"Of the load that the Pour card shows: its mix, its water and temperature, its times, and what is wrong with it.",
	needs: NEEDS,
	shape: "list",
	shown: Object.values(FACTS),
	values(input) {
		const card = chosenCard(input);
		return [
			Object.values(FACTS).map(
				({ of }: Fact): Value => (isKnown(card) ? of(card.is, input) : card),
			),
		];
	},
};

export const CARD_WEIGH_OUT: TabAnswer = {
	name: "CARD_WEIGH_OUT",
	summary:
		"What to weigh of each ingredient of the load that the Pour card shows, after what was weighed; ice in the last row.",
	needs: NEEDS,
	shape: "table",
	shown: [
		{ label: "Weigh out", format: "text" },
		{ label: "On the scale", format: "weighed", by: "RESCALE_BATCH" },
		{ label: "Unit", format: "text" },
		{ label: "Note", format: "text", wrap: true },
	],
	values(input) {
		const { mix, units } = input;
		const lines = from(chosenCard(input), ({ weighOut }) => weighOut);
		const known = isKnown(lines) ? lines.is : lines;
		if (!isKnown(known)) return [[known]];
		const rows = CARD_ROWS.weighed;
		if (isKnown(mix.ingredients) && mix.ingredients.is.length >= rows)
			return [
				[
					`Look: the card has room for ${rows - 1} ingredients: the mix has more`,
				],
			];
		return weighOutRows(known.is, rows).map((line) =>
			line ? [line.name, line.shown, unitName("mass", units), line.say] : [],
		);
	},
};

export const CARD_STEPS: TabAnswer = {
	name: "CARD_STEPS",
	summary:
		"The steps that pull the tones of a load off and dose them, each after what was weighed before it; the reserve is step 0. Under them what each tone came to, corrections included.",
	needs: NEEDS,
	shape: "table",
	shown: [
		{ label: "Step", format: "whole", by: "PULL_OFF_PLAN" },
		{ label: "Do", format: "text", wrap: true, by: "PULL_OFF_PLAN" },
		{ label: "On the scale", format: "weighed", by: "PULL_OFF_PLAN" },
		{ label: "Unit", format: "text", by: "PULL_OFF_PLAN" },
		{ label: "Note", format: "text", wrap: true, by: "PULL_OFF_PLAN" },
		{ label: "Dry, g a {mass} left", format: "number" },
		{ label: "Left, {mass}", format: "mass", by: "PULL_OFF_PLAN" },
		{ label: "Dose, wet", format: "share", by: "PULL_OFF_PLAN" },
		{ label: "Dry, g", format: "pigment" },
	],
	values(input) {
		const card = chosenCard(input);
		const steps = isKnown(card) ? card.is.steps : card;
		if (!isKnown(steps)) return [["", steps]];
		const rows = Array.from({ length: CARD_ROWS.steps }, (_, number) => {
			const step = steps.is.find((one) => one.number === number);
			return step
				? [
						step.number,
						step.words,
						step.shown,
						step.unit,
						step.say,
						step.gramsPerLeft ?? undefined,
						step.left ?? undefined,
						step.dose ?? undefined,
						step.dry ?? undefined,
					]
				: [];
		});
		const tones = from(card, (own) => own.tones);
		return [
			...rows,
			[],
			[],
			...toneRows(flat(tones), unitName("mass", input.units)),
		];
	},
};

/** What the tones came to: under the steps, in the same columns. */
const toneRows = (
	tones: Known<readonly CardTone[]>,
	unit: string,
): Value[][] =>
	isKnown(tones)
		? tones.is.map(({ name, onScale, undosed, share, reached, said }) => [
				"",
				name,
				Number(onScale.toFixed(2)),
				unit,
				saidOf(
					"look" in said
						? look(`${doseWords(reached)}, ${said.look}`)
						: is(doseWords(reached)),
				),
				undefined,
				undosed,
				share,
			])
		: [["", "", "", "", tones]];
