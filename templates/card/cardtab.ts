import type { Tab } from "../plan";
import { cardAnswered } from "./cardanswered";
import {
	CARD_REGION,
	CORRECTIONS,
	cardChoices,
	cardTyped,
	chosenRule,
	STEPS,
	TONES,
} from "./cardtyping";
import { mixingOrder } from "./mixingorder";

/** What lies beside the mixer on pour day: one load at a time, each with its own weights. */
export const pourCard: Tab = {
	name: "Pour card",
	color: "#8a5a2b",
	rows: 145,
	widths: [
		...[24, 166, 78, 30],
		...Array<number>(9).fill(52),
		...[200, 60, 60, 60, 60],
		...[60, 160, 80, 60, 160, 80, 60, 80, 60],
	],
	frozenRows: 4,
	frozenColumns: 4,
	keys: 5,
	hidden: 9,
	names: { card: CARD_REGION },
	blocks: [
		{ at: "A1", look: "title", rows: [['="Pour card · "&{at:Job.heading}']] },
		{
			at: "F3",
			look: "large",
			rows: [['=IF(ISNUMBER({job}loads);"of "&{job}loads;"")']],
		},
		{
			at: "A4",
			look: "heading",
			wrap: true,
			rows: [["", "Do", "On the scale", "", ""]],
		},
		{
			at: "C4",
			look: "heading",
			size: [1, 1],
			align: "right",
			note: "Of the mix: as RESCALE_BATCH answers it, once a weight is off by more than its tolerance. Of the steps: as PULL_OFF_PLAN answers it, to the scale's divisions.",
		},
		{
			at: "N4",
			look: "heading",
			wrap: true,
			rows: [
				["Note", "Dry, g a {mass} left", "Left, {mass}", "Dose, wet", "Dry, g"],
			],
		},
		{ at: "O4", look: "heading", size: [1, 4], align: "right" },
		{ at: "A13", look: "total", rows: [["Water"]] },
		{ at: "A19", look: "total", rows: [["Weigh out"]] },
		{
			at: "F33",
			look: "note",
			rows: [
				[
					"Too much of one? Take it out and type what is left, or the others rise to match.",
				],
			],
		},
		...mixingOrder,
		{ at: "A44", look: "total", rows: [["Fresh tests and times"]] },
		{ at: `A${STEPS - 2}`, look: "total", rows: [["Pull off and dose"]] },
		{
			at: `F${STEPS - 1}`,
			look: "note",
			rows: [
				[
					"Type what the scale said beside each step: every later amount follows from it.",
				],
			],
		},
		{ at: `A${TONES - 1}`, look: "total", rows: [["What each tone comes to"]] },
		{
			at: `N${TONES - 1}`,
			look: "heading",
			rows: [["Note", "", "Undosed, {mass}", "Share"]],
		},
		{ at: `O${TONES - 1}`, look: "heading", size: [1, 3], align: "right" },
		{ at: `A${CORRECTIONS - 2}`, look: "total", rows: [["Corrections"]] },
		{
			at: `F${CORRECTIONS - 1}`,
			look: "note",
			rows: [
				["What was done to a tone once it was pulled off or kept, in order."],
			],
		},
		...cardTyped,
		...cardAnswered,
	],
	choices: cardChoices,
	rules: [chosenRule],
};
