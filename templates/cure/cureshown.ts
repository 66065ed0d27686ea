import {
	CURE_CALENDAR,
	CURE_FACTS,
	CURE_TITLES,
} from "../../src/job/tabs/cure";
import { answerList, answerTable, moved, ofTab } from "../blocks";
import { curve, dayBars } from "../drawn";
import type { Block } from "../plan";

const CALENDAR = "D3";
const FACTS = "D12";
const STEPS = 7;

/** The steps that other tabs show, as rows of the calendar: the last coat is not among them. */
const DATED = [0, 1, 2, 3, 4, 6];

const placeOf = (label: string): number =>
	CURE_FACTS.shown.findIndex((fact) => fact.label === label);

const FACTS_OF_A_PIGMENT = 4;
const FIRST_PIGMENT = placeOf("Pigment");

/** Titles between the facts have nothing beside them. */
const titles = CURE_TITLES.map(
	(label): Block => ({
		at: moved(FACTS, placeOf(label)),
		look: "total",
		size: [1, 1],
	}),
);

/** Labels of a pigment that the job does not have stay away. */
const pigmentLabels = Object.fromEntries(
	CURE_FACTS.shown.slice(FIRST_PIGMENT).map(({ label }, index) => {
		const row = FIRST_PIGMENT + index;
		const name = moved(FACTS, row - (index % FACTS_OF_A_PIGMENT), 1);
		return [row, `=IF(${name}="";"";"${label}")`];
	}),
);

/** The calendar with what to do on each day, and below it what is known of the piece. */
export const cureShownBlocks: readonly Block[] = [
	...answerTable({
		at: CALENDAR,
		answer: CURE_CALENDAR,
		rows: STEPS,
		slots: { days: 1, strengths: 4 },
	}),
	dayBars(
		moved(CALENDAR, 1, -1),
		Array.from({ length: STEPS }, (_, row) => `{at:Cure.step_${row + 1}}`),
	),
	curve(
		moved(FACTS, placeOf(CURE_TITLES[0]), 2),
		"{at:Cure.days}",
		"{at:Cure.strengths}",
		"1",
	),
	...Array.from(
		{ length: STEPS },
		(_, row): Block => ({
			at: moved(CALENDAR, row + 1, 1),
			look: "result",
			size: [1, 1],
			slot: `step_${row + 1}`,
		}),
	),
	...[1, 3].map(
		(column): Block => ({
			at: moved(CALENDAR, 1, column),
			look: "result",
			size: [STEPS, 1],
			align: "left",
		}),
	),
	...answerList({
		at: FACTS,
		answer: CURE_FACTS,
		right: 1,
		labels: pigmentLabels,
		slots: { date_met: placeOf("In time"), drying: placeOf("Drying") },
	}),
	...titles,
	{
		at: "J4",
		look: "result",
		rows: [DATED.map((row) => ofTab(`{at:Cure.step_${row + 1}}`))],
		formats: "date",
		slot: "dates",
	},
];
