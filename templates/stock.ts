import type { Tab } from "../src/template/plan";

/** What is on the shelf, a row a lot. */
export const stock: Tab = {
	name: "Stock",
	rows: 84,
	widths: [190, 90, 90, 90, 90, 90, 90, 190],
	frozenRows: 4,
	blocks: [
		{ at: "A1", look: "title", rows: [["Stock"]] },
		{
			at: "A4",
			look: "heading",
			rows: [
				[
					"Material",
					"On hand",
					"Unit",
					"Lot",
					"Opened",
					"Pack",
					"Pack price",
					"Remark",
				],
			],
		},
		{
			at: "A5",
			look: "input",
			size: [80, 8],
			name: "stock",
			formats: [
				"text",
				"number",
				"text",
				"text",
				"date",
				"number",
				"money",
				"text",
			],
		},
	],
};
