import type { Block } from "../src/template/plan";
import { ofLoad, WEIGHED } from "./pourcard-load";

/** A time of day as a share of it, from `9:40` as typed or as a time. */
const time = (cell: string) =>
	`IF(${cell}="";"";IF(ISNUMBER(${cell});MOD(${cell};1);IFERROR(TIMEVALUE(${cell});"Look: type times like 9:40")))`;

/** `9:40` of a share of a day, past midnight too. */
const clock = (share: string) =>
	`INT(MOD(ROUND((${share})*1440;0);1440)/60)&":"&RIGHT("0"&MOD(ROUND((${share})*1440;0);60);2)`;

const minutesFrom = (from: string, to: string) =>
	`ROUND(MOD(${to}-${from};1)*1440;0)`;

/** Fresh tests, and the times that say how long the mix still works. */
export const timeBlocks: readonly Block[] = [
	{ at: "A44", look: "total", rows: [["Fresh tests and times"]] },
	{
		at: "B45",
		look: "label",
		rows: [
			["Spread, {length}"],
			["Mix temperature, {temperature}"],
			["Air temperature, {temperature}"],
			["Water in, at (like 9:40)"],
			["Last tone placed, at"],
			["Weighed by"],
			["Lots"],
			["Remarks"],
			["Result"],
			["Working time, minutes"],
			["Steps left, minutes"],
			["Place the last tone by"],
			["Minutes since last load"],
		],
	},
	{
		at: "E45",
		look: "input",
		size: [9, 8],
		align: "right",
		slot: "fresh",
		once: true,
		wrap: true,
	},
	{ at: "E48", look: "input", size: [6, 8], formats: "text" },
	{
		at: "C54",
		look: "total",
		slot: "working_time",
		rows: [
			[
				`=IF(ISERROR(S46);S46;IF(S46="";"";WORKING_TIME({studio:working_minutes};{studio:working_temp};S46;{studio:units})))`,
			],
			[
				`=IF(ISERROR(S65);S65;IF(COUNT(S65:S100)=0;"";SUM(ARRAYFORMULA(IF(ISNUMBER(S65:S100);IF(${WEIGHED}="";1;0);0)))*{studio:step_minutes}))`,
			],
			[
				`=IF(ISNUMBER(S48)*ISNUMBER(C54);${clock("S48+C54/1440")};IF(ISNUMBER(S48)+(S48="")=0;S48;""))`,
			],
			[`=IF(ISNUMBER(S48)*ISNUMBER(S47);${minutesFrom("S47", "S48")};"")`],
		],
		formats: "whole",
		align: "right",
	},
	{
		at: "E54",
		look: "note",
		rows: [
			[
				`=IF(ISERROR(S46);"";IF(S46="";"type the mix temperature";IF(${ofLoad("46")}="";"at the temperature the mix should have";"at the mix temperature measured")))`,
			],
		],
	},
	{
		at: "E55",
		look: "result",
		slot: "time_check",
		rows: [
			[
				'=IF(ISNUMBER(C54)*(COUNT(S65:S100)>0);IF(COUNT(S65:S100)*{studio:step_minutes}>C54;"Look: "&COUNT(S65:S100)&" steps take "&ROUND(COUNT(S65:S100)*{studio:step_minutes};0)&" minutes, longer than the mix works";"fine");"")',
			],
		],
	},
	{
		at: "M49",
		look: "result",
		rows: [
			[
				`=IF(ISNUMBER(S48)*ISNUMBER(S49);IF(ISNUMBER(C54)*(${minutesFrom("S48", "S49")}>C54);"Look: ";"")&${minutesFrom("S48", "S49")}&" minutes after water in";IF(ISNUMBER(S49)+(S49="")=0;S49;""))`,
			],
		],
	},
	{
		at: "S46",
		look: "result",
		rows: [
			[`=IF(${ofLoad("46")}="";C18;${ofLoad("46")})`],
			[
				`=IF({job}load<2;"";${time("INDEX(E48:L48;1;MIN(8;{job}load-1)+0*$S$12)")})`,
			],
			[`=${time(ofLoad("48"))}`],
			[`=${time(ofLoad("49"))}`],
		],
		formats: "number",
	},
];
