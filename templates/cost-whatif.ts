import type { Block } from "../src/template/plan";
import { chosen, FEE } from "./cost-money";
import { whileIntact } from "./intact";

const COLUMNS = ["B", "C", "D"];
const PLANS = ["$B$1:$D$1"];

/** Three plans side by side, and the one that the price is taken from. */
export const whatIfBlocks: readonly Block[] = [
	{
		at: "A10",
		look: "heading",
		rows: [["What if", "as planned", "tighter", "rush"]],
	},
	{
		at: "A11",
		look: "label",
		rows: [
			["Margin wanted"],
			["Hours, share of those below"],
			["Materials, share of those below"],
			["Change to the price"],
			["Cost without card fee"],
			["Price for the margin"],
			["Price"],
			["Cost"],
			["Left over"],
			["Margin left"],
		],
	},
	{
		at: "B11",
		look: "result",
		rows: [["={studio:margin}"], [1], [1], [0]],
		formats: "share",
	},
	{
		at: "C11",
		look: "input",
		rows: [
			[0.3, 0.35],
			[0.9, 1.15],
			[1, 1.05],
			[0, 0.1],
		],
		formats: "share",
		slot: "what_ifs",
	},
	{
		at: "B15",
		look: "result",
		rows: [
			COLUMNS.map(
				(column) =>
					`=IF($L$5=0;"";($L$7*${column}13+$L$8*${column}12)*(1+{studio:overhead})*(1+{studio:remake})+$L$9)`,
			),
		],
		formats: "money",
	},
	{
		at: "B16",
		look: "result",
		size: [1, 3],
		rows: [
			[
				whileIntact(
					PLANS,
					`=IF(ISERROR(B15);B15;IF(B15="";"";TRANSPOSE(PRICE_FOR_MARGIN(B15:D15;ARRAYFORMULA(B11:D11+${FEE})))))`,
				),
			],
		],
		formats: "money",
	},
	{
		at: "B17",
		look: "total",
		rows: [
			COLUMNS.map(
				(column) =>
					`=IF(ISERROR($B$16);$B$16;IF(${column}16="";"";ROUND(${column}16*(1+${column}14);2)))`,
			),
			COLUMNS.map(
				(column) =>
					`=IF(ISERROR(${column}17);${column}17;IF(${column}17="";"";${column}15+${column}17*${FEE}))`,
			),
			COLUMNS.map(
				(column) =>
					`=IF(ISERROR(${column}17);${column}17;IF(${column}17="";"";${column}17-${column}18))`,
			),
		],
		formats: "money",
	},
	{
		at: "B20",
		look: "total",
		size: [1, 3],
		rows: [
			[
				whileIntact(
					PLANS,
					'=IF(ISERROR(B18);B18;IF(N(B17)=0;"";TRANSPOSE(MARGIN_OF(B17:D17;B18:D18))))',
				),
			],
		],
		formats: "share",
	},
	{
		at: "A21",
		look: "note",
		rows: [
			[
				"The card fee is a share of all that the client pays, tax too; a price covers it and the margin.",
			],
			[
				"Cost: materials and work, overhead on both, the remake allowance on all three; then travel.",
			],
		],
	},
	{
		at: "A23",
		look: "label",
		rows: [
			["Price from"],
			["Or this price, without tax"],
			["Price without change orders"],
			["Paid by card, share"],
		],
	},
	{
		at: "B23",
		look: "input",
		rows: [["as planned"]],
		formats: "text",
		slot: "price_from",
		align: "right",
	},
	{
		at: "B24",
		look: "input",
		size: [1, 1],
		formats: "money",
		slot: "price_typed",
	},
	{
		at: "B25",
		look: "total",
		rows: [[`=IF(L5=0;"";IF(B24="";${chosen(17)};ROUND(B24*1;2)))`]],
		formats: "money",
		slot: "base_price",
	},
	{ at: "B26", look: "input", rows: [[1]], formats: "share", slot: "by_card" },
];
