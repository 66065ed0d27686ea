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
			at: "A2",
			look: "note",
			rows: [
				[
					"A row a lot: several rows of one material add up. Names as on Mixes, Pigments and Cost; unit {mass} for what goes into the mix, g for pigment, {coating} for sealer. What a job needs beyond this, Cost lists to buy.",
				],
				[
					'=IF(COUNTA(A5:A84)=0;"Nothing is on the shelf yet: type what is there, and Cost buys the rest.";IF(COUNTIF(H5:H84;"invented*")>0;"Some rows are invented, for the demo: put your own in their place.";""))',
				],
			],
		},
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
