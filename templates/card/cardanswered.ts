/** What the Pour card answers for the load that it shows: out of sight as it is answered, and in sight where it is needed. */
import { CARD_ROWS } from "../../src/job/cells/jobcells";
import { MOST } from "../../src/job/jobfile";
import {
	CARD_FACTS,
	CARD_LOAD,
	CARD_STEPS,
	CARD_WEIGH_OUT,
	type CardFact,
	factLabel,
} from "../../src/job/tabs/card";
import type { Shown } from "../../src/job/tabs/tab";
import { answerList, answerTable, lines, noteOf, ofTab } from "../blocks";
import type { Block, Format } from "../plan";
import { CORRECTIONS, STEPS, TONES, WEIGHED } from "./cardtyping";

/** A fact of the load, where people look for it. */
function fact(key: CardFact, at: string, look: Block["look"] = "total"): Block {
	const shown = CARD_LOAD.shown[CARD_FACTS.indexOf(key)];
	const note = shown && noteOf(shown);
	return {
		at,
		look,
		rows: [[ofTab(`{at:Pour card.${key}_of_load}`)]],
		formats: shown?.format,
		align: "right",
		...(note && { note }),
	};
}

const note = (key: CardFact, at: string): Block => ({
	...fact(key, at, "result"),
	align: "left",
});

const labels = (at: string, keys: readonly CardFact[]): Block => ({
	at,
	look: "label",
	rows: keys.map((key) => [factLabel(key)]),
});

/** Columns of an answer again, in sight; blank where it is. */
const shown = (slot: string): string =>
	`=ARRAYFORMULA(IF({at:Pour card.${slot}}="";"";{at:Pour card.${slot}}))`;

const columns = ({
	at,
	slot,
	rows,
	formats,
}: {
	at: string;
	slot: string;
	rows: number;
	formats: readonly Format[];
}): Block => ({
	at,
	look: "result",
	size: [rows, formats.length],
	rows: [[shown(slot)]],
	formats,
	wrap: true,
});

const large = (row: number, rows: number): Block => ({
	at: `C${row}`,
	look: "large",
	size: [rows, 2],
	formats: ["weighed", "text"],
});

const outOfSight: readonly Block[] = [
	...answerList({
		at: "S19",
		answer: CARD_LOAD,
		right: 1,
		slots: Object.fromEntries(
			CARD_FACTS.map((key, row) => [`${key}_of_load`, row]),
		),
	}),
	...answerTable({
		at: `W${WEIGHED - 1}`,
		answer: CARD_WEIGH_OUT,
		rows: CARD_ROWS.weighed,
		slot: "weigh_out",
		slots: { weigh_notes: 3 },
	}),
	{
		at: `W${WEIGHED}`,
		look: "result",
		size: [CARD_ROWS.weighed, 3],
		slot: "weigh_lines",
	},
	...answerTable({
		at: `S${STEPS - 1}`,
		answer: CARD_STEPS,
		rows: TONES - STEPS + MOST.tones,
		slot: "plan",
	}),
	{
		at: `T${TONES}`,
		look: "result",
		size: [MOST.tones, 3],
		slot: "tone_lines",
	},
	{
		at: `W${TONES}`,
		look: "result",
		size: [MOST.tones, 4],
		slot: "tone_figures",
	},
	{
		at: `S${STEPS}`,
		look: "result",
		size: [CARD_ROWS.steps, 4],
		slot: "step_lines",
	},
	{
		at: `W${STEPS}`,
		look: "result",
		size: [CARD_ROWS.steps, 5],
		slot: "step_figures",
	},
];

/** A number that is shown once it is known; what is wrong or missing stands in the note. */
const known = (key: CardFact, at: string, noteAt?: string): Block[] => {
	const cell = `{at:Pour card.${key}_of_load}`;
	const { format } = CARD_LOAD.shown[CARD_FACTS.indexOf(key)] as Shown;
	return [
		{
			at,
			look: "result",
			formats: format,
			rows: [[`=IF(ISNUMBER(${cell});${cell};"")`]],
		},
		...(noteAt
			? [lines(noteAt, "result", `=IF(ISNUMBER(${cell});"";${cell})`) as Block]
			: []),
	];
};

export const cardAnswered: readonly Block[] = [
	{
		at: "A2",
		look: "result",
		rows: [
			[
				'=IF({at:Pour card.check_of_load}="fine";"Type weights in the load\'s own column, marked below.";{at:Pour card.check_of_load})',
			],
		],
		slot: "card_check",
	},
	labels("B5", ["castings", "mass", "waterHeld", "reserve", "toTone"]),
	{ ...fact("castings", "C5", "result"), align: "left" },
	fact("mass", "C6"),
	fact("waterHeld", "C7"),
	fact("reserve", "C8"),
	fact("toTone", "C9"),
	fact("plan", "C10"),
	labels("B11", ["fit", "tonedShare"]),
	fact("tonedShare", "C12", "result"),
	note("fit", "C11"),
	lines(
		"N10",
		"result",
		'=IF({at:Pour card.allFit_of_load}="fine";"";{at:Pour card.allFit_of_load})',
	),
	lines(
		"B17",
		"label",
		'="Water to be at, for "&{studio:warmest_mix}&" {temperature}"',
	),
	labels("B18", ["mixC"]),
	...known("waterC", "C17", "N17"),
	...known("mixC", "C18"),
	note("warmth", "N18"),
	columns({
		at: `B${WEIGHED}`,
		slot: "weigh_lines",
		rows: CARD_ROWS.weighed,
		formats: ["text", "weighed", "text"],
	}),
	large(WEIGHED, CARD_ROWS.weighed),
	columns({
		at: `N${WEIGHED}`,
		slot: "weigh_notes",
		rows: CARD_ROWS.weighed,
		formats: ["text"],
	}),
	{ at: "B33", look: "total", rows: [["Total"]] },
	fact("total", "C33"),
	{ at: "D33", look: "total", rows: [["{mass}"]] },
	note("waterCheck", "N33"),
	labels("B58", [
		"workingMinutes",
		"minutesLeft",
		"placeBy",
		"sinceLoadBefore",
		"freshDensity",
	]),
	fact("workingMinutes", "C58"),
	note("workingAt", "N58"),
	fact("minutesLeft", "C59"),
	note("timeCheck", "N59"),
	fact("placeBy", "C60"),
	note("placed", "N50"),
	fact("sinceLoadBefore", "C61"),
	...known("freshDensity", "C62"),
	note("yieldSay", "N62"),
	labels(`B${STEPS - 1}`, ["vessels"]),
	fact("vessels", `C${STEPS - 1}`, "result"),
	note("sharesSay", `N${TONES + MOST.tones}`),
	labels(`B${CORRECTIONS - 1}`, ["reserveLeft"]),
	...known("reserveLeft", `C${CORRECTIONS - 1}`),
	columns({
		at: `B${TONES}`,
		slot: "tone_lines",
		rows: MOST.tones,
		formats: ["text", "weighed", "text"],
	}),
	large(TONES, MOST.tones),
	columns({
		at: `N${TONES}`,
		slot: "tone_figures",
		rows: MOST.tones,
		formats: ["text", "number", "mass", "share"],
	}),
	columns({
		at: `A${STEPS}`,
		slot: "step_lines",
		rows: CARD_ROWS.steps,
		formats: ["whole", "text", "weighed", "text"],
	}),
	large(STEPS, CARD_ROWS.steps),
	columns({
		at: `N${STEPS}`,
		slot: "step_figures",
		rows: CARD_ROWS.steps,
		formats: ["text", "number", "mass", "share", "pigment"],
	}),
	...outOfSight,
];
