import type { Tab } from "../src/template/plan";

/** The studio's own samples: the only colors that are trusted. */
export const swatches: Tab = {
	name: "Swatches",
	rows: 205,
	widths: [
		190, 90, 90, 90, 90, 90, 90, 90, 90, 90, 90, 90, 90, 90, 90, 90, 190,
	],
	frozenRows: 5,
	blocks: [
		{ at: "A1", look: "title", rows: [["Swatches"]] },
		{ at: "A5", look: "heading", rows: [["Mix", "Finish", "Sealed", "State"]] },
		{
			at: "E5",
			look: "input",
			size: [1, 8],
			formats: "text",
			slot: "swatch_pigments",
		},
		{
			at: "M5",
			look: "heading",
			rows: [["Color", "Age, days", "Lot", "Date", "Remark"]],
		},
		{
			at: "A6",
			look: "input",
			size: [200, 17],
			name: "swatches",
			formats: [
				"text",
				"text",
				"text",
				"text",
				"share",
				"share",
				"share",
				"share",
				"share",
				"share",
				"share",
				"share",
				"text",
				"whole",
				"text",
				"date",
				"text",
			],
		},
		{ at: "A6", look: "input", size: [200, 4], slot: "kinds" },
		{ at: "E6", look: "input", size: [200, 8], slot: "doses" },
		{ at: "M6", look: "input", size: [200, 1], slot: "colors" },
	],
};
