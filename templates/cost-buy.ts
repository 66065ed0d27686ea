import type { Block } from "../src/template/plan";
import type { PigmentColumn } from "./pigments";
import type { StockColumn } from "./stock";

const stocked = (name: string, column: StockColumn) =>
	`VLOOKUP(${name};{at:Stock.stock};COLUMNS({at:Stock.${column}});0)`;
const stockColumn = (column: StockColumn) =>
	`INDEX({at:Stock.stock};0;COLUMNS({at:Stock.${column}}))`;
const bought = (column: PigmentColumn) =>
	`=ARRAYFORMULA(IF(A97:A100="";"";IFERROR(VLOOKUP(A97:A100;{at:Pigments.pigments};COLUMNS({at:Pigments.${column}});0);"")))`;
const mixColumn = (column: number) => `INDEX({at:Tones.mix_table};0;${column})`;

/** Rows that have an amount and a pack to count it in. */
const COUNTED =
	"ISNUMBER(C85:C109)*ISNUMBER(D85:D109)*(IF(ISNUMBER(D85:D109);D85:D109;0)>0)";
const counted = (column: string) =>
	`ARRAYFORMULA(IF(${COUNTED};${column}85:${column}109;""))`;

/** Of each material here, the Stock rows with its name. */
const lots = (unit: string) =>
	`(A85:A109=TRANSPOSE(${stockColumn("to_name")}))*(${unit})`;
/** What one of Stock's unit is in the unit here; a blank unit is the same one, pigment may lie there in kg or lb. */
const FACTOR = `(TRANSPOSE(${stockColumn("to_unit")})=B85:B109)+(TRANSPOSE(${stockColumn("to_unit")})="")+(B85:B109="g")*((TRANSPOSE(${stockColumn("to_unit")})="kg")*1000+(TRANSPOSE(${stockColumn("to_unit")})="lb")*45359237/100000)`;

/** Ingredients, pigments, sealer and goods, under each other: name, unit, amount, pack, its price. */
const neededBlocks: readonly Block[] = [
	{
		at: "A85",
		look: "result",
		size: [12, 5],
		rows: [
			[
				`=ARRAYFORMULA(IF(${mixColumn(1)}="";"";${mixColumn(1)}))`,
				`=ARRAYFORMULA(IF(${mixColumn(1)}="";"";"{mass}"))`,
				'=IF(ISERROR({job}mix_total);{job}mix_total;IF({job}mix_total=0;"";ARRAYFORMULA(IF({at:Tones.mix_weights}="";"";{at:Tones.mix_weights}*(1+N({at:Cure.paste})/{job}mix_total)))))',
				`=ARRAYFORMULA(IF(ISNUMBER(${mixColumn(10)});${mixColumn(10)};""))`,
				`=ARRAYFORMULA(IF(ISNUMBER(${mixColumn(11)});${mixColumn(11)};""))`,
			],
		],
	},
	{
		at: "A97",
		look: "result",
		size: [4, 5],
		rows: [
			[
				'=TRANSPOSE(ARRAYFORMULA(IF({job}pigments="";"";{job}pigments)))',
				'=ARRAYFORMULA(IF(A97:A100="";"";"g"))',
				'=IF(ISERROR(SUM({at:Tones.pigment_totals})+SUM({at:Cure.paste_pigment}));SUM({at:Tones.pigment_totals})+SUM({at:Cure.paste_pigment});TRANSPOSE(ARRAYFORMULA(IF(ISNUMBER({at:Tones.pigment_totals});{at:Tones.pigment_totals}+IF(ISNUMBER({at:Cure.paste_pigment});{at:Cure.paste_pigment};0);""))))',
				bought("to_pack"),
				bought("to_price"),
			],
		],
	},
	{
		at: "A101",
		look: "result",
		rows: [
			[
				"Sealer",
				"{coating}",
				"={at:Cure.sealer}",
				`=IF(N(IFERROR(${stocked("A101", "to_pack")}*${stocked("A101", "to_price")};0))>0;${stocked("A101", "to_pack")};1)`,
				`=IF(N(IFERROR(${stocked("A101", "to_pack")}*${stocked("A101", "to_price")};0))>0;${stocked("A101", "to_price")};{studio:sealer_price})`,
			],
		],
	},
	{
		at: "A102",
		look: "result",
		size: [8, 5],
		rows: [
			[
				'=ARRAYFORMULA(IF(A73:A80="";"";A73:A80))',
				'=ARRAYFORMULA(IF(A73:A80="";"";B73:B80))',
				'=ARRAYFORMULA(IF(C73:C80="";"";C73:C80*1))',
				`=ARRAYFORMULA(IF(D73:D80<>"";D73:D80;IF(A73:A80="";"";IFERROR(${stocked("A73:A80", "to_pack")};IF(E73:E80="";"";1)))))`,
				`=ARRAYFORMULA(IF(E73:E80<>"";E73:E80;IF(A73:A80="";"";IFERROR(${stocked("A73:A80", "to_price")};""))))`,
			],
		],
	},
];

export const buyBlocks: readonly Block[] = [
	{ at: "A83", look: "total", rows: [["Materials and what to buy"]] },
	{
		at: "A84",
		look: "heading",
		wrap: true,
		rows: [
			[
				"Material",
				"Unit",
				"Needed",
				"Pack",
				"Pack price",
				"Part of the cost",
				"On hand, from Stock",
				"Packs to buy",
				"To pay",
				"Note",
			],
		],
	},
	...neededBlocks,
	{
		at: "C85",
		look: "result",
		size: [25, 3],
		formats: ["number", "plain", "money"],
	},
	{
		at: "F85",
		look: "result",
		size: [25, 1],
		rows: [
			[
				`=ARRAYFORMULA(IF(ISERROR(C85:C109);C85:C109;IF(C85:C109="";"";IF(C85:C109=0;0;IF(${COUNTED}*ISNUMBER(E85:E109);C85:C109/D85:D109*E85:E109;IF(L85:L109=1;"";"Look: no price"))))))`,
			],
		],
		formats: "money",
	},
	{
		at: "G85",
		look: "result",
		size: [25, 1],
		rows: [
			[
				`=ARRAYFORMULA(IF(A85:A109="";"";MMULT(${lots(FACTOR)};IF(ISNUMBER(${stockColumn("to_on_hand")});${stockColumn("to_on_hand")};0))))`,
			],
		],
		formats: "plain",
	},
	{
		at: "H85",
		look: "result",
		size: [25, 1],
		rows: [
			[
				`=IF(ISERROR(SUM(C85:C109));SUM(C85:C109);IF(SUM(C85:C109)=0;"";PACKS_TO_BUY(${counted("C")};${counted("G")};${counted("D")})))`,
			],
		],
		formats: "whole",
	},
	{
		at: "I85",
		look: "result",
		size: [25, 2],
		rows: [
			[
				'=ARRAYFORMULA(IF(ISNUMBER(H85:H109)*ISNUMBER(E85:E109);H85:H109*E85:E109;""))',
				`=ARRAYFORMULA(IF(A85:A109="";"";IF(MMULT(${lots(`(${FACTOR})=0`)};IF(ISNUMBER(${stockColumn("to_on_hand")});1;0))>0;"Look: Stock has some in another unit, left out";"")))`,
			],
		],
		formats: ["money", "text"],
	},
	{
		at: "L85",
		look: "result",
		size: [12, 1],
		rows: [[`=ARRAYFORMULA(IF(${mixColumn(6)}=1;1;""))`]],
	},
	{ at: "A110", look: "total", rows: [["Total"]] },
	{ at: "F110", look: "total", rows: [["=SUM(F85:F109)"]], formats: "money" },
	{
		at: "I110",
		look: "total",
		rows: [["=IF(ISERROR(F110);F110;SUM(I85:I109))"]],
		formats: "money",
	},
	{
		at: "A111",
		look: "note",
		rows: [
			[
				"Waste of the mix is in these amounts already. A job pays for what it uses; whole packs to buy leave the rest on the shelf. Water is free.",
			],
		],
	},
];
