import type { Tab } from "../src/template/plan";

/** From the pour to delivery. */
export const cure: Tab = {
	name: "Cure",
	color: "#8a5a2b",
	rows: 60,
	widths: [190, 90, 90, 90, 90, 90, 90, 90],
	frozenRows: 1,
	blocks: [
		{ at: "A1", look: "title", rows: [['="Cure · "&{job}title']] },
		{ at: "B3", look: "input", size: [1, 1], slot: "starts_from" },
		{ at: "B4", look: "result", size: [1, 6], formats: "date", name: "dates" },
		{ at: "B5", look: "result", size: [1, 1], slot: "date_met" },
		{ at: "B6", look: "result", size: [1, 1], slot: "drying" },
	],
};
