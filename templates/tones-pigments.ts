import type { Block } from "../src/template/plan";
import type { PigmentColumn } from "./pigments";

/** What the Pigments tab says of each pigment in row 14, in this column. */
const found = (column: PigmentColumn) =>
	`VLOOKUP(C14:F14;{at:Pigments.pigments};COLUMNS({at:Pigments.${column}});FALSE)`;

const perPigment = (formula: string) =>
	`=ARRAYFORMULA(IF(C14:F14="";"";${formula}))`;

/** What the Pigments tab says of each pigment in use, and how much of it all tones take: dry, with its water, as bought. */
export const pigmentBlocks: readonly Block[] = [
	{
		at: "C15",
		look: "note",
		size: [1, 4],
		align: "right",
		rows: [
			[
				perPigment(
					`IFERROR(IF(${found("to_basis")}="cement";"of cement";IF(${found("to_basis")}="dry mix";"of dry mix";IF((${found("to_basis")}="binder")+(${found("to_basis")}="")+(${found("to_basis")}=0)>0;"of binder";"Look: of what?")));"of binder")`,
				),
			],
		],
	},
	{
		at: "I15",
		look: "note",
		rows: [["as weighed: pigment with its water"]],
	},
	{
		at: "G23",
		look: "label",
		rows: [["dry pigment in it, g"], ["water in it, g"], ["as bought, g"]],
	},
	{
		at: "I23",
		look: "result",
		rows: [
			['=ARRAYFORMULA(IF(C14:F14="";"";I22:L22/C25:F25))'],
			['=ARRAYFORMULA(IF(C14:F14="";"";I22:L22-I23:L23))'],
		],
		formats: "pigment",
	},
	{
		at: "I25",
		look: "total",
		size: [1, 4],
		slot: "pigment_totals",
		rows: [['=ARRAYFORMULA(IF(C14:F14="";"";I23:L23/C24:F24))']],
		formats: "pigment",
	},
	{ at: "I23", look: "result", size: [2, 4], formats: "pigment" },
	{
		at: "A23",
		look: "label",
		rows: [
			["Maximum, of cement"],
			["Pigment in it"],
			["Weighed wet, g per g"],
			["To share of binder, ×"],
			["Price per gram"],
		],
	},
	{
		at: "C23",
		slot: "maxima",
		look: "result",
		size: [1, 4],
		rows: [
			[
				perPigment(
					`IFERROR(IF(ISNUMBER(${found("to_maximum")});IF(${found("to_maximum")}>0;${found("to_maximum")};1/10);IF(${found("to_maximum")}="";1/10;"Look: a number?"));"")`,
				),
			],
		],
		formats: "share",
	},
	{
		at: "C24",
		slot: "solids",
		look: "result",
		size: [1, 4],
		rows: [
			[
				perPigment(
					`IFERROR(IF(ISNUMBER(${found("to_pigment")})*(${found("to_pigment")}>0);IF(${found("to_pigment")}<=1;${found("to_pigment")};"Look: above 100%");IF((${found("to_pigment")}<>"")*(${found("to_pigment")}<>0);"Look: a number?";IF(${found("to_form")}="liquid";"Look: share of pigment?";1)));"Look: not there")`,
				),
			],
		],
		formats: "share",
	},
	{
		at: "C25",
		look: "result",
		size: [1, 4],
		rows: [
			[
				perPigment(
					`1/C24:F24+IF(${found("to_water")}="";0;${found("to_water")})`,
				),
			],
		],
		formats: "number",
	},
	{
		at: "C26",
		look: "result",
		size: [1, 4],
		rows: [
			[
				'=ARRAYFORMULA(IF(C14:F14="";"";IF(C15:F15="of cement";J6;IF(C15:F15="of dry mix";J7;IF(C15:F15="of binder";1;"Look: of what?")))))',
			],
		],
		formats: "number",
	},
	{
		at: "C27",
		slot: "gram_prices",
		look: "result",
		size: [1, 4],
		rows: [
			[perPigment(`IFERROR(${found("to_price")}/${found("to_pack")};"")`)],
		],
		formats: "plain",
	},
];
