/** What the Cure tab answers: the calendar, and what is known of strength, drying, sealing and the paste for voids. */
import { weekdayOf } from "../../calc/calendar";
import { CURE_STEPS } from "../../calc/curedays";
import { cureAnswer } from "../answers/cure/cure";
import { STEP_NAMES, stepWords, weekdayWord } from "../answers/cure/curewords";
import type { PastePigment } from "../answers/cure/finishing";
import { from, isKnown } from "../answers/known";
import { MOST } from "../jobfile";
import type { Shown, TabAnswer, Value } from "./tab";

export const CURE_CALENDAR: TabAnswer = {
	name: "CURE_CALENDAR",
	summary: "The days from the pour to delivery, and what is done on each.",
	needs: ["head", "cure"],
	shape: "table",
	shown: [
		{ label: "Step", format: "text" },
		{ label: "Day", format: "date" },
		{ label: "", format: "text" },
		{ label: "At the latest", format: "date" },
		{
			label: "Strength at 20 °C (68 °F)",
			format: "percent",
			by: "STRENGTH_AT_AGE",
			note: "Share of the strength at 28 days.",
		},
		{ label: "What to do", format: "text", wrap: true },
	],
	values(input) {
		const { calendar, strength } = cureAnswer(input);
		const words = stepWords(input.given);
		return CURE_STEPS.map((step) => {
			const day = from(calendar.days, (days) => days[step]);
			const latest = from(calendar.atTheLatest, (days) => days[step]);
			// What is not known of the days is said once, on the first.
			const isFirst = step === "pour";
			return [
				STEP_NAMES[step],
				isKnown(day) || isFirst ? day : "",
				isKnown(day) ? weekdayWord(weekdayOf(day.is)) : "",
				isKnown(latest) || isFirst ? latest : "",
				isKnown(day) && !isFirst ? strength.atSteps[step] : "",
				words[step],
			];
		});
	},
};

/** Rows between the facts, with nothing beside them. */
export const CURE_TITLES = [
	"Strength against age",
	"Drying while it is fresh",
	"Seal on a reading, not on a date",
	"Paste for voids",
	"Pigment in it, for the color of all tones",
] as const;

const title = (label: (typeof CURE_TITLES)[number]): Shown => ({
	label,
	format: "text",
});

const PIGMENT_FACTS: readonly Shown[] = [
	{ label: "Pigment", format: "text" },
	{ label: "Mean dose of binder", format: "share" },
	{
		label: "Dry, {pigment}",
		format: "pigment",
		unit: "pigment",
		by: "PIGMENT_GRAMS",
	},
	{ label: "As bought, {pigment}", format: "pigment", unit: "pigment" },
];

const pigmentFacts = (pigment: PastePigment | undefined): Value[] =>
	pigment
		? [pigment.name, pigment.dose, pigment.dryKg, pigment.boughtKg]
		: PIGMENT_FACTS.map(() => "");

export const CURE_FACTS: TabAnswer = {
	name: "CURE_FACTS",
	summary:
		"Whether the job is in time, how strong and how dry it is, and what it takes to fill and to seal it.",
	needs: ["head", "pieces", "tones", "cure", "mixes", "pigments"],
	shape: "list",
	shown: [
		{ label: "In time", format: "text" },
		title("Strength against age"),
		{
			label: "Days at 20 °C (68 °F) for the strength wanted",
			format: "number",
			by: "AGE_FOR_STRENGTH",
		},
		{
			label: "By the log, share of 28 days",
			format: "percent",
			by: "STRENGTH_AT_AGE",
		},
		{ label: "Hours since the pour, by the log", format: "number" },
		{
			label: "Hours at 20 °C (68 °F) worth the same",
			format: "number",
			by: "EQUIVALENT_AGE",
		},
		{ label: "Warm and old enough", format: "text" },
		title("Drying while it is fresh"),
		{
			label: "Evaporation, {evaporation}",
			format: "number",
			by: "EVAPORATION_RATE",
		},
		{ label: "Could be as little as, at ±40%", format: "number" },
		{ label: "Could be as much as, at ±40%", format: "number" },
		{
			label: "Precautions from, {evaporation}",
			format: "number",
			note: "ACI 305R for mixes that bleed; half of it for mixes with fiber that do not is common practice.",
		},
		{ label: "Drying", format: "text" },
		title("Seal on a reading, not on a date"),
		{ label: "Dry enough", format: "text" },
		{ label: "To seal, {area}", format: "area", unit: "area" },
		{
			label: "Sealer for all coats, {coating}",
			format: "coating",
			unit: "coating",
			by: "COATING_AMOUNT",
		},
		title("Paste for voids"),
		{
			label: "Paste, {volume}",
			format: "volume",
			unit: "volume",
			by: "VOID_FILL",
		},
		{ label: "Paste, {mass}", format: "mass", unit: "mass" },
		title("Pigment in it, for the color of all tones"),
		...Array.from({ length: MOST.pigments }, () => PIGMENT_FACTS).flat(),
	],
	values(input) {
		const { calendar, strength, drying, finishing } = cureAnswer(input);
		return [
			[
				calendar.inTime,
				"",
				strength.wantedAfterDays,
				strength.byLog,
				strength.loggedHours,
				strength.equivalentHours,
				strength.warm,
				"",
				drying.evaporation,
				drying.atLeast,
				drying.atMost,
				drying.limit,
				drying.drying,
				"",
				finishing.dryEnough,
				finishing.finishM2,
				finishing.sealerM3,
				"",
				finishing.pasteM3,
				finishing.pasteKg,
				"",
				...Array.from({ length: MOST.pigments }, (_, index) =>
					pigmentFacts(finishing.pastePigments[index]),
				).flat(),
			],
		];
	},
};
