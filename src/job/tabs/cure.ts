/** What the Cure tab answers: the calendar, and what is known of strength, drying, sealing and the paste for voids. */
import { weekdayOf } from "../../calc/calendar";
import { CURE_STEPS } from "../../calc/curedays";
import { type CureAnswer, cureAnswer } from "../answers/cure/cure";
import { STEP_NAMES, stepWords, weekdayWord } from "../answers/cure/curewords";
import type { PastePigment } from "../answers/cure/finishing";
import { from, isKnown } from "../answers/known";
import { MOST } from "../jobfile";
import { measured, type ShownOf, type TabAnswer, valuesOf } from "./tab";

export const CURE_CALENDAR: TabAnswer = {
	name: "CURE_CALENDAR",
	summary: "The days from the pour to delivery, and what is done on each.",
	needs: ["head", "tones", "cure", "mixes"],
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

type CureFact = ShownOf<CureAnswer>;

const title = (label: (typeof CURE_TITLES)[number]): CureFact => ({
	label,
	format: "text",
	of: () => "",
});

/** What the paste takes of a pigment; blank where the job has no such pigment. */
const PIGMENT_FACTS: readonly ShownOf<PastePigment>[] = [
	{ label: "Pigment", format: "text", of: ({ name }) => name },
	{ label: "Mean dose of binder", format: "share", of: ({ dose }) => dose },
	{ ...measured("Dry", "pigment", "PIGMENT_GRAMS"), of: ({ dryKg }) => dryKg },
	{ ...measured("As bought", "pigment"), of: ({ boughtKg }) => boughtKg },
];

const pigmentFacts = (index: number): CureFact[] =>
	PIGMENT_FACTS.map(({ of, ...shown }) => ({
		...shown,
		of({ finishing }) {
			const pigment = finishing.pastePigments[index];
			return pigment ? of(pigment) : "";
		},
	}));

const FACTS: readonly CureFact[] = [
	{ label: "In time", format: "text", of: ({ calendar }) => calendar.inTime },
	title("Strength against age"),
	{
		label: "Days at 20 °C (68 °F) to that strength",
		format: "number",
		by: "AGE_FOR_STRENGTH",
		of: ({ strength }) => strength.wantedAfterDays,
	},
	{
		label: "By the log, share of 28 days",
		format: "percent",
		by: "STRENGTH_AT_AGE",
		of: ({ strength }) => strength.byLog,
	},
	{
		label: "Hours since the pour, by the log",
		format: "number",
		of: ({ strength }) => strength.loggedHours,
	},
	{
		label: "Hours at 20 °C (68 °F) worth the same",
		format: "number",
		by: "EQUIVALENT_AGE",
		of: ({ strength }) => strength.equivalentHours,
	},
	{
		label: "Old enough to demold",
		format: "text",
		of: ({ oldEnough }) => oldEnough,
	},
	{
		label: "Out of the mold in time",
		format: "text",
		of: ({ moldTime }) => moldTime,
	},
	{
		label: "Warm and old enough",
		format: "text",
		of: ({ strength }) => strength.warm,
	},
	title("Drying while it is fresh"),
	{
		label: "Evaporation, {evaporation}",
		format: "number",
		by: "EVAPORATION_RATE",
		of: ({ drying }) => drying.evaporation,
	},
	{
		label: "Could be as little as, at ±40%",
		format: "number",
		of: ({ drying }) => drying.atLeast,
	},
	{
		label: "Could be as much as, at ±40%",
		format: "number",
		of: ({ drying }) => drying.atMost,
	},
	{
		label: "Precautions from, {evaporation}",
		format: "number",
		note: "ACI 305R for mixes that bleed; half of it for mixes with fiber that do not is common practice.",
		of: ({ drying }) => drying.limit,
	},
	{ label: "Drying", format: "text", of: ({ drying }) => drying.drying },
	title("Seal on a reading, not on a date"),
	{
		label: "Dry enough",
		format: "text",
		of: ({ finishing }) => finishing.dryEnough,
	},
	{
		...measured("To seal", "area"),
		of: ({ finishing }) => finishing.finishM2,
	},
	{
		...measured("Sealer for all coats", "coating", "COATING_AMOUNT"),
		of: ({ finishing }) => finishing.sealerM3,
	},
	title("Paste for voids"),
	{
		...measured("Paste", "volume", "VOID_FILL"),
		of: ({ finishing }) => finishing.pasteM3,
	},
	{ ...measured("Paste", "mass"), of: ({ finishing }) => finishing.pasteKg },
	title("Pigment in it, for the color of all tones"),
	...Array.from({ length: MOST.pigments }, (_, i) => pigmentFacts(i)).flat(),
];

export const CURE_FACTS: TabAnswer = {
	name: "CURE_FACTS",
	summary:
		"Whether the job is in time, how strong and how dry it is, and what it takes to fill and to seal it.",
	needs: ["head", "pieces", "tones", "cure", "mixes", "pigments"],
	shape: "list",
	shown: FACTS,
	values: (input) => [valuesOf(FACTS, cureAnswer(input))],
};
