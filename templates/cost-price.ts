import type { Block } from "../src/template/plan";
import { chosen } from "./cost-money";

/** The answers that a partner looks for first. */
export const priceBlocks: readonly Block[] = [
	{
		at: "A3",
		look: "label",
		rows: [
			["Price without tax, with change orders"],
			["Cost"],
			["Margin"],
			["Hours of work"],
			["Check"],
			["Cost as it came out"],
		],
	},
	{
		at: "B3",
		look: "total",
		rows: [['=IF(L5=0;"";B25+L6)']],
		formats: "money",
		name: "price",
	},
	{
		at: "B4",
		look: "total",
		rows: [['=IF(L5=0;"";B49)']],
		formats: "money",
		slot: "cost",
	},
	{
		at: "B5",
		look: "total",
		rows: [['=IF(ISERROR(B4);B4;IF(N(B3)=0;"";(B3-B4)/B3))']],
		formats: "share",
		slot: "margin",
	},
	{
		at: "B6",
		look: "total",
		rows: [[`=IF(L5=0;"";G68*${chosen(12)})`]],
		formats: "number",
		slot: "hours",
	},
	{
		at: "B7",
		look: "result",
		rows: [
			[
				'=IF(ISERROR(L5)+ISERROR(B3)+ISERROR(B4)+ISERROR(I110)>0;"Look: a cell of this tab shows an error: point at it to read why";IF(L5=0;"Look: there is nothing to price yet";IF(COUNTIF(F85:F109;"Look*")>0;"Look: "&COUNTIF(F85:F109;"Look*")&" materials have no price: the cost leaves them out";IF(MIN(G61:G67;C85:C109;B54:B57;C30:C35)<0;"Look: an amount is below 0";IF(B3<B4;"Look: the price is below cost";"fine")))))',
			],
		],
		slot: "price_met",
	},
	{
		at: "B8",
		look: "result",
		rows: [
			[
				'=IF(L5=0;"";IF((COUNT(I61:I67)=0)*(B50="");"not known yet";(IF(B50="";B42;B50*1)+SUM(ARRAYFORMULA(IF(I61:I67="";G61:G67*' +
					chosen(12) +
					";I61:I67*1)))*{studio:labor_rate})*(1+{studio:overhead})+B46+B47+B48))",
			],
		],
		formats: "money",
		slot: "came_to",
		align: "right",
	},
];
