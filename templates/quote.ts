import type { Tab } from "../src/template/plan";

/** The page for the client. */
export const quote: Tab = {
	name: "Quote",
	color: "#8a5a2b",
	rows: 60,
	widths: [190, 90, 90, 90, 90, 90],
	frozenRows: 1,
	blocks: [
		{ at: "A1", look: "title", rows: [['="Quote · "&{job}title']] },
		{ at: "B3", look: "total", size: [1, 1], formats: "money", name: "total" },
		{
			at: "B4",
			look: "result",
			size: [1, 1],
			formats: "money",
			slot: "deposit",
		},
		{
			at: "B5",
			look: "result",
			size: [1, 1],
			formats: "money",
			slot: "balance",
		},
		{ at: "A20", look: "result", size: [14, 6], slot: "picture" },
	],
};
