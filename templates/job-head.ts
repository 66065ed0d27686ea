import { JOB } from "../src/job/fields/job";
import { JOB_TOTALS } from "../src/job/tabs/pieces";
import type { Block } from "../src/template/plan";
import { answerList, typedList } from "./blocks";
import { TO_LOOK_AT, WORST } from "./checks";
import { ofTab } from "./job-line";

/** Who and when. */
export const headTyping = typedList({
	at: "A3",
	fields: JOB,
	right: 2,
	wide: 3,
	starts: { stage: "priced" },
});

/** What the job comes to, what is paid of it, and the worst that is wrong. */
export const headBlocks: readonly Block[] = [
	...headTyping.blocks,
	...answerList({
		at: "G3",
		answer: JOB_TOTALS,
		right: 3,
		slots: { face_total: 3, finish_area: 4, volume_total: 5 },
		names: { mix_total: 0, loads: 1 },
	}),
	{
		at: "L3",
		look: "label",
		rows: [
			['="Price, "&{studio:currency}'],
			["Deposit received"],
			["Balance received"],
			["Checks to look at"],
		],
	},
	{
		at: "O3",
		look: "total",
		rows: [[ofTab("{at:Cost.price}")]],
		formats: "money",
	},
	{
		at: "O4",
		look: "input",
		size: [1, 1],
		formats: "money",
		slot: "deposit_received",
		once: true,
	},
	{
		at: "O5",
		look: "input",
		size: [1, 1],
		formats: "money",
		slot: "balance_received",
		once: true,
	},
	{ at: "O6", look: "total", rows: [[TO_LOOK_AT]], formats: "whole" },
	{ at: "L7", look: "result", rows: [[WORST]], slot: "worst" },
];
