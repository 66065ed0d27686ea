import { JOB } from "../../src/job/fields/job";
import { JOB_TOTALS } from "../../src/job/tabs/pieces";
import { answerList, ofTab, typedList } from "../blocks";
import type { Block } from "../plan";
import { NOT_KNOWN, TO_LOOK_AT, worstAt } from "./jobchecks";

/** Who and when. */
export const headTyping = typedList({
	at: "A3",
	fields: JOB,
	right: 2,
	wide: 3,
	starts: { stage: "priced" },
});

const TITLE = `C${3 + Object.keys(JOB).indexOf("title")}`;

/** What the job comes to, what is paid of it, and the worst that is wrong. */
export const headBlocks: readonly Block[] = [
	...headTyping.blocks,
	{ at: TITLE, look: "input", size: [1, 1], name: "title" },
	...answerList({
		at: "G3",
		answer: JOB_TOTALS,
		right: 3,
		slots: { mix_total: 0, face_total: 3, finish_area: 4, volume_total: 5 },
		names: { loads: 1 },
	}),
	{
		at: "L3",
		look: "label",
		rows: [
			['="Price, "&{studio:currency}'],
			["Paid"],
			["Still to be paid"],
			["Checks to look at"],
			["Checks not known yet"],
		],
	},
	{
		at: "O3",
		look: "total",
		rows: ["{at:Cost.price}", "{at:Quote.paid}", "{at:Job.line_to_pay}"].map(
			(cell) => [ofTab(cell)],
		),
		formats: "money",
	},
	{
		at: "O6",
		look: "total",
		rows: [[TO_LOOK_AT], [NOT_KNOWN]],
		formats: "whole",
	},
	{
		at: "L8",
		look: "result",
		rows: [1, 2, 3].map((place) => [worstAt(place)]),
		slot: "worst",
	},
];
