import { STOCK } from "../../src/job/fields/stock";
import { typedTable } from "../blocks";
import type { Tab } from "../plan";

const table = typedTable({
	at: "A4",
	slot: "stock",
	fields: STOCK,
	rows: 80,
	slots: { materials: "material", remarks: "remark" },
});

/** What is on the shelf, one row per lot. */
export const stock: Tab = {
	name: "Stock",
	rows: 84,
	widths: [190, 90, 90, 90, 90, 90, 90, 190],
	frozenRows: 4,
	names: { stock: "A4:H84" },
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
					'=IF(COUNTA({at:Stock.materials})=0;"Nothing is on the shelf yet: Cost lists what to buy.";IF(COUNTIF({at:Stock.remarks};"invented*")>0;"Invented rows count for invented clients.";""))',
				],
			],
		},
		...table.blocks,
	],
	choices: table.choices,
};
