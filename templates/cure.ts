import type { Tab } from "../src/template/plan";
import { calendarBlocks } from "./cure-calendar";
import { dryingBlocks } from "./cure-drying";
import { finishBlocks } from "./cure-finish";
import { practiceBlocks } from "./cure-practice";
import { startBlocks } from "./cure-start";
import { strengthBlocks } from "./cure-strength";

/** From the pour to delivery. */
export const cure: Tab = {
	name: "Cure",
	color: "#8a5a2b",
	rows: 112,
	widths: [
		235, 92, 92, 92, 92, 470, 92, 90, 90, 90, 90, 90, 90, 90, 90, 90, 90,
	],
	frozenRows: 1,
	hidden: 10,
	blocks: [
		{ at: "A1", look: "title", rows: [['="Cure · "&{at:Job.heading}']] },
		{
			at: "A2",
			look: "note",
			rows: [
				["A test on the piece comes before any day or number of this tab."],
			],
		},
		...startBlocks,
		...calendarBlocks,
		...strengthBlocks,
		...dryingBlocks,
		...finishBlocks,
		...practiceBlocks,
	],
	choices: [
		{ range: "B3", list: ["pour date", "due date"] },
		{ range: "B49", list: ["no", "yes"] },
		{ range: "B46", between: [0, 1], help: "For example 55%." },
	],
};
