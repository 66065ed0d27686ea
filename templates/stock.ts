import type { Tab } from "../src/template/plan";
import { headingsTo } from "./intact";

/** Each column that formulas look in, by its place. */
const COLUMNS = {
	to_name: 1,
	to_on_hand: 2,
	to_unit: 3,
	to_pack: 6,
	to_price: 7,
} as const;

export type StockColumn = keyof typeof COLUMNS;

/** What is on the shelf, one row per lot. */
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
					"One row per lot; rows of a material add up. Names as on Mixes, Pigments and Cost; {mass} for the mix, g for pigment, {coating} for sealer. Cost says what to buy.",
				],
				[
					'=IF(COUNTA(A5:A84)=0;"Nothing is on the shelf yet: type what is there, and Cost lists the rest to buy.";IF(COUNTIF(H5:H84;"invented*")>0;"Some rows are invented, for the demo: put your own in their place.";""))',
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
		...headingsTo("A4", COLUMNS),
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
