import type { Tab } from "../src/template/plan";

/** What the job costs and what it sells for. */
export const cost: Tab = {
	name: "Cost",
	color: "#8a5a2b",
	rows: 80,
	widths: [190, 90, 90, 90, 90, 90, 90, 90],
	frozenRows: 1,
	blocks: [
		{ at: "A1", look: "title", rows: [['="Cost · "&{job}title']] },
		{ at: "B3", look: "total", size: [1, 1], formats: "money", name: "price" },
		{ at: "B4", look: "total", size: [1, 1], formats: "money", slot: "cost" },
		{ at: "B5", look: "total", size: [1, 1], formats: "share", slot: "margin" },
		{ at: "B6", look: "total", size: [1, 1], formats: "number", slot: "hours" },
		{
			at: "B7",
			look: "total",
			size: [1, 1],
			formats: "money",
			slot: "came_to",
		},
		{ at: "B8", look: "result", size: [1, 1], slot: "price_met" },
		{
			at: "B12",
			look: "input",
			size: [8, 1],
			formats: "number",
			slot: "labor_hours",
		},
	],
};
