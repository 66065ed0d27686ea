import type { Block } from "../src/template/plan";

/** Number of the what-if that the price is taken from. */
const CHOSEN = "$L$3";
/** What the card company keeps, as a share of the price without tax. */
export const FEE = "$L$4";
/** The cell of the plan that the price is taken from. */
export const chosen = (row: number) => `INDEX(B${row}:D${row};${CHOSEN})`;

/** What the client asked for afterwards. */
const changeBlocks: readonly Block[] = [
	{
		at: "A28",
		look: "total",
		rows: [["Change orders: agreed ones are on the quote"]],
	},
	{
		at: "A29",
		look: "heading",
		rows: [["What", "Price", "Its cost", "Agreed on"]],
	},
	{
		at: "A30",
		look: "input",
		size: [6, 4],
		formats: ["text", "money", "money", "date"],
		slot: "change_orders",
		once: true,
	},
	{ at: "A30", look: "input", size: [6, 2], slot: "changes_shown" },
	{ at: "D30", look: "input", size: [6, 1], slot: "changes_agreed" },
	{
		at: "E30",
		look: "result",
		size: [6, 1],
		rows: [
			[
				'=ARRAYFORMULA(IF((A30:A35="")*(B30:B35="")*(C30:C35="");"";IF(ISNUMBER(D30:D35);"on the quote";"not agreed: not on the quote")))',
			],
		],
	},
];

/** Every part of the cost, by the plan that the price is taken from. */
const costBlocks: readonly Block[] = [
	{
		at: "A37",
		look: "heading",
		rows: [["Where the cost is", "Amount", "Of cost"]],
	},
	{
		at: "A38",
		look: "label",
		rows: [
			["Mix, its waste and the paste in it"],
			["Pigment"],
			["Sealer"],
			[
				'=IF(COUNT(C73:C80)=0;"Mold and other goods: none typed yet";"Mold and other goods")',
			],
			["Materials together"],
			["Work"],
			["Overhead on both"],
			["Remake allowance"],
			["Travel and outside help"],
			["Card fee, on the quote's total"],
			["Change orders"],
			["Cost"],
			["Spent on materials, when it is done"],
		],
	},
	{
		at: "B38",
		look: "result",
		rows: [
			[`=SUM(F85:F96)*${chosen(13)}`],
			[`=SUM(F97:F100)*${chosen(13)}`],
			[`=SUM(F101)*${chosen(13)}`],
			[`=SUM(F102:F109)*${chosen(13)}`],
			["=SUM(B38:B41)"],
			[`=L8*${chosen(12)}`],
			["=(B42+B43)*{studio:overhead}"],
			["=(B42+B43+B44)*{studio:remake}"],
			["=L9"],
			[`=IF(L5=0;0;(B25+L6)*${FEE})`],
			["=L10"],
			["=SUM(B42:B48)"],
		],
		formats: "money",
	},
	{
		at: "C38",
		look: "result",
		size: [11, 1],
		rows: [['=IF(ISERROR(B49);B49;IF(B49=0;"";ARRAYFORMULA(B38:B48/B49)))']],
		formats: "percent",
	},
	{
		at: "B50",
		look: "input",
		size: [1, 1],
		formats: "money",
		slot: "spent",
		once: true,
	},
	{ at: "A52", look: "total", rows: [["Travel and outside help"]] },
	{ at: "A53", look: "heading", rows: [["What", "Amount"]] },
	{
		at: "A54",
		look: "input",
		size: [4, 2],
		formats: ["text", "money"],
		slot: "travel",
	},
	{
		at: "L3",
		look: "result",
		rows: [
			['=IF(B23="";1;MATCH(B23;B10:D10;0))'],
			["={studio:card_fee}*B26*(1+{studio:tax})"],
			["={job}mix_total"],
			["=SUM(ARRAYFORMULA(IF(ISNUMBER(D30:D35);ROUND(B30:B35*1;2);0)))"],
			["=SUM(F85:F109)"],
			["=SUM(H61:H67)"],
			['=SUM(ARRAYFORMULA(IF(B54:B57="";0;B54:B57*1)))'],
			[
				'=SUM(ARRAYFORMULA(IF(ISNUMBER(D30:D35);IF(C30:C35="";0;C30:C35*1);0)))',
			],
		],
	},
];

/** Change orders, and where the cost is. */
export const moneyBlocks: readonly Block[] = [...changeBlocks, ...costBlocks];
