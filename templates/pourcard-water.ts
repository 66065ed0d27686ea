import type { Block } from "../src/template/plan";
import { mix, ofLoad, SOLIDS, WATER } from "./pourcard-load";

/** How warm the mix comes out, and the water or ice that it takes. */
export const waterBlocks: readonly Block[] = [
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
];
