import type { Block } from "../src/template/plan";

/** What is bought by the piece or the sheet; quantities are a person's. */
export const goodsBlocks: readonly Block[] = [
	{ at: "A71", look: "total", rows: [["Mold and other goods"]] },
	{
		at: "A72",
		look: "heading",
		wrap: true,
		rows: [
			[
				"What, as Stock calls it",
				"Unit",
				"Quantity",
				"Pack, unless in Stock",
				"Pack price",
			],
		],
	},
	{
		at: "A73",
		look: "input",
		rows: [
			["Mold sheet", "sheet"],
			["Strips", "strip"],
			["Sealant", "tube"],
			["Release", "can"],
			["Knockouts", "piece"],
			["Cover sheet", "roll"],
		],
		size: [8, 5],
		formats: ["text", "text", "number", "number", "money"],
		slot: "goods",
	},
	{
		at: "A81",
		look: "note",
		rows: [
			[
				'=IF(COUNT(C73:C80)=0;"No quantity is typed yet: the cost has no mold in it. Type how many of each.";"")',
			],
		],
	},
];
