import type { Block } from "../src/template/plan";
import { whileIntact } from "./intact";

/** A column of the mix: 1 ingredient, 2 parts, 6 water share, 7 group, 8 moisture, 9 absorption, 10 pack. */
const mix = (column: number) => `INDEX({at:Tones.mix_table};0;${column})`;

/** All columns of the Pour card. */
export const CARD = "$A$1:$AB$1";

/** Columns of the loads. */
export const LOAD_COLUMNS = ["E", "F", "G", "H", "I", "J", "K", "L"];

/** Column of the chosen load. */
const CHOSEN = "$S$12";

/** What is typed for the chosen load in these rows. */
export const ofLoad = (rows: string) => {
	const [first, last] = rows.split(":");
	return `INDEX(E${first}:L${last ?? first};0;${CHOSEN})`;
};

/** What the scale said beside each step of the chosen load. */
export const WEIGHED = ofLoad("65:100");

const DAMP = `SUM(ARRAYFORMULA(IF(${mix(8)}="";0;IF(${mix(8)}=0;0;1))+IF(${mix(9)}="";0;IF(${mix(9)}=0;0;1))))>0`;

const typedShare = (column: number) =>
	`ARRAYFORMULA(IF(ISNUMBER(${mix(2)});IF(${mix(column)}="";0;${mix(column)});""))`;

/** Water and solids of the load as they go into the mixer, for its temperature. */
const SOLIDS = "$S$14";
const WATER = "$S$15";

/** Water, ice, weights: what goes into the mixer and how warm it comes out. */
export const weighBlocks: readonly Block[] = [
	{ at: "A13", look: "total", rows: [["Water"]] },
	{
		at: "B14",
		look: "label",
		rows: [
			["Dry material is at, {temperature}"],
			["Water is at, {temperature}"],
			["Cool with ice: type yes"],
			['="Water to be at, for "&{studio:warmest_mix}&" {temperature}"'],
			["Mix will be at, {temperature}"],
		],
	},
	{
		at: "E14",
		look: "input",
		size: [3, 8],
		slot: "temperatures",
		once: true,
		align: "right",
	},
	{
		at: "C17",
		look: "result",
		slot: "water_temperature",
		rows: [
			[
				`=IF(OR(C6=0;${ofLoad("14")}="";${ofLoad("16")}="yes");"";IF(ISERROR(${WATER});${WATER};IFERROR(WATER_TEMPERATURE_FOR({studio:warmest_mix};${SOLIDS};${ofLoad("14")};${WATER};{studio:units});IF(ISNUMBER(${ofLoad("14")});IF(${ofLoad("14")}>{studio:warmest_mix};"ice";"too hot");"number?"))))`,
			],
			[
				`=IF(OR(C6=0;${ofLoad("14")}="";${ofLoad("15")}="");"";MIX_TEMPERATURE(${SOLIDS};${ofLoad("14")};${WATER}-N(S32);${ofLoad("15")};N(S32);{studio:units}))`,
			],
		],
		formats: "temperature",
		align: "right",
	},
	{ at: "C18", look: "result", size: [1, 1], slot: "mix_temperature" },
	{
		at: "M17",
		look: "result",
		rows: [
			[
				'=IF(ISERROR(C17);"";IF(C17="ice";"Look: colder than freezing: cool with ice";IF(C17="too hot";"Look: hotter than 60 °C (140 °F): warm the solids";IF(C17="number?";"Look: the temperature is not a number";""))))',
			],
			[
				`=IF(ISNUMBER(C18);IF(C18>{studio:warmest_mix}+1;"Look: warmer than wanted";"");"")`,
			],
		],
	},
	{
		at: "S12",
		look: "result",
		// 1 to 8 whatever is typed, for INDEX gives all columns where the load is blank
		rows: [[whileIntact([CARD], "=MAX(1;MIN(8;{job}load))")]],
	},
	{
		at: "S14",
		look: "result",
		rows: [
			// Water in a damp solid counts fully where its dry mass counts 0.22 (ACI 305R): as 100/22 of its mass.
			[
				`=IF(ISERROR(U20);U20;SUM(ARRAYFORMULA(IF(ISNUMBER(${mix(2)});IF(${mix(7)}="water";0;${mix(2)}+(U20:U31-${mix(2)})*100/22);0)))*S17)`,
			],
			[
				`=IF(ISERROR(U20);U20;SUM(ARRAYFORMULA(IF(ISNUMBER(${mix(2)});IF(${mix(7)}="water";${mix(2)};0);0)))*S17-S18-C7)`,
			],
			[`=SUMIF(${mix(6)};1;${mix(2)})*S17`],
			[`=IF(OR(C6=0;COUNT(${mix(2)})=0);0;C6/SUM(${mix(2)}))`],
			["=IF(ISERROR(U20);U20;SUM(V20:V31)*S17)"],
		],
		formats: "number",
	},
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
		look: "result",
		size: [13, 2],
		rows: [
			[
				'=IF(ISERROR(T20);T20;ARRAYFORMULA(IF(ISNUMBER(T20:T32);IF((T20:T32=0)*(ROW(T20:T32)=32);"";ROUND(T20:T32/{studio:mix_division};0)*{studio:mix_division});"")))',
				'=ARRAYFORMULA(IF(ISNUMBER(C20:C32);"{mass}";""))',
			],
		],
		formats: ["mass", "text"],
	},
	{
		at: "E20",
		look: "input",
		size: [13, 8],
		formats: "mass",
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
	{ at: "A35", look: "total", rows: [["Mixing order"]] },
	{
		at: "A36",
		look: "result",
		rows: [
			[1, "Water, chilled or with ice; most of the water reducer."],
			[2, "Three quarters of the dry material. Blend."],
			[3, "The rest. Blend until even, scrape down."],
			[4, "Very fluid before fibers: else the held-back reducer."],
			[5, "The longer fibers, then the shorter. Blend."],
			[6, "Pull off and dose as below, pigment wetted first."],
			[7, "Fold less for bolder veins. Leave a placed face alone."],
		],
		formats: ["whole", "text"],
	},
	{
		at: "A43",
		look: "note",
		rows: [["Common practice; the data sheet of the material comes first."]],
	},
	{ at: "H35", look: "caution", rows: [["Cautions, before the mixer runs"]] },
	{
		at: "H36",
		look: "note",
		rows: [
			["Wet cement burns skin and eyes: gloves, goggles, rinse at once."],
			["Wash water does not go down a drain."],
			["Silica, pigment and fiber dust: extraction or a fitted respirator."],
			["Mixers catch sleeves: off and unplugged before reaching in."],
			["Powered wet tools on a ground-fault interrupter (GFCI)."],
			[
				"Lift with enough people or a cart: see How to carry it on the Job tab.",
			],
			["Local codes, the material's data sheet and a licensed engineer"],
			["come before any number here."],
		],
	},
];
