import type { Block } from "../src/template/plan";
import { whileIntact } from "./intact";
import { CARD, mix, ofLoad, SOLIDS, WATER } from "./pourcard-load";

const DAMP = `SUM(ARRAYFORMULA(IF(${mix(8)}="";0;IF(${mix(8)}=0;0;1))+IF(${mix(9)}="";0;IF(${mix(9)}=0;0;1))))>0`;

const typedShare = (column: number) =>
	`ARRAYFORMULA(IF(ISNUMBER(${mix(2)});IF(${mix(column)}="";0;${mix(column)});""))`;

/** What to weigh of each ingredient, and what was weighed. */
export const weighBlocks: readonly Block[] = [
	{ at: "A19", look: "total", rows: [["Weigh out"]] },
	{
		at: "B20",
		look: "result",
		size: [12, 1],
		rows: [[`=ARRAYFORMULA(IF(${mix(1)}="";"";${mix(1)}))`]],
	},
	{ at: "B32", look: "result", rows: [["Ice, crushed"]] },
	{
		at: "C20",
		look: "large",
		size: [13, 2],
		rows: [
			[
				'=IF(ISERROR(T20);T20;ARRAYFORMULA(IF(ISNUMBER(T20:T32);IF((T20:T32=0)*(ROW(T20:T32)=32);"";ROUND(T20:T32/{studio:mix_division};0)*{studio:mix_division});"")))',
				'=ARRAYFORMULA(IF(ISNUMBER(C20:C32);"{mass}";""))',
			],
		],
		formats: ["weighed", "text"],
	},
	{
		at: "E20",
		look: "input",
		size: [13, 8],
		formats: "weighed",
		slot: "mixed",
		once: true,
	},
	{
		at: "M20",
		look: "result",
		size: [13, 1],
		rows: [
			[
				`=ARRAYFORMULA(IF(ISNUMBER(C20:C31);IF(ISNUMBER(${ofLoad("20:31")});IF(T20:T31-${ofLoad("20:31")}>{studio:mix_division};"Look: "&ROUND(T20:T31-${ofLoad("20:31")};2)&" {mass} more";"");IF(ISNUMBER(${mix(10)});IF((${mix(10)}>0)*(C20:C31>=${mix(10)});INT(C20:C31/${mix(10)}+1/10^9)&" of "&${mix(10)}&" {mass}"&IF(C20:C31-INT(C20:C31/${mix(10)}+1/10^9)*${mix(10)}>{studio:mix_division}/2;" + "&ROUND(C20:C31-INT(C20:C31/${mix(10)}+1/10^9)*${mix(10)};3)&" {mass}";"");"");""));""))`,
			],
		],
	},
	{
		at: "M33",
		look: "result",
		slot: "water_check",
		rows: [
			[
				'=IF(ISERROR(S20);"";IF(C6=0;"";IF(S16=0;IF(S18+N(C7)+N(S32)>0;"Look: no ingredient is all water: take it off by hand";"");IF(S18+N(C7)+N(S32)>S16;"Look: pigment, damp material and ice bring more water than the mix has";""))))',
			],
		],
	},
	{
		at: "S20",
		look: "result",
		size: [12, 1],
		slot: "weigh_out",
		rows: [
			[
				`=IF(C6=0;"";IF(ISERROR(S15+C7+S32);S15+C7+S32;ARRAYFORMULA(IF(ISNUMBER(${mix(2)});IF(${mix(6)}=1;${mix(2)}*S17*(1-(S18+C7+S32)/S16);U20:U31*S17);""))))`,
			],
		],
		formats: "number",
	},
	{
		at: "S32",
		look: "result",
		slot: "ice",
		rows: [
			[
				`=IF(OR(C6=0;${ofLoad("16")}<>"yes");0;ICE_FOR({studio:warmest_mix};${SOLIDS};${ofLoad("14")};${WATER};${ofLoad("15")};{studio:units}))`,
			],
		],
		formats: "number",
	},
	{
		at: "T20",
		look: "result",
		size: [13, 1],
		rows: [
			[
				`=IF(C6=0;"";IF(ISERROR(S20);S20;RESCALE_BATCH(S20:S32;${ofLoad("20:32")})))`,
			],
		],
		formats: "number",
	},
	{
		at: "U20",
		look: "result",
		size: [12, 2],
		rows: [
			[
				whileIntact(
					[CARD],
					`=IF(${DAMP};MOISTURE_CORRECTION(${mix(2)};${typedShare(8)};${typedShare(9)});ARRAYFORMULA(IF(ISNUMBER(${mix(2)});${mix(2)};"")))`,
				),
			],
		],
		formats: "number",
	},
	{
		at: "B33",
		look: "total",
		rows: [["Total", "=IF(ISERROR(C20);C20;SUM(C20:C32))", "{mass}"]],
		formats: ["text", "mass", "text"],
	},
	{
		at: "E33",
		look: "note",
		rows: [["Too much of one? The others rise to match."]],
	},
];
