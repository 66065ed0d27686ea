import type { Block } from "../src/template/plan";
import { ofLoad, WEIGHED } from "./pourcard-load";
import { POUR_FORMATS } from "./pourlog";

/** The pour of the chosen load in one row, as the Pour log keeps it. */
export const recordBlocks: readonly Block[] = [
	{
		at: "A58",
		look: "total",
		rows: [
			["For the Pour log: copy the row below and paste it there as values"],
		],
	},
	{
		at: "B59",
		look: "heading",
		wrap: true,
		rows: [
			[
				"Date",
				"Job",
				"",
				"Load",
				"Mix",
				"Tones",
				"Spread",
				"Mix, {temperature}",
				"Air, {temperature}",
				"Off target",
				"Min.",
				"By",
				"Lots",
				"Notes",
				"Result",
				"Cost",
				"Cost est.",
			],
		],
	},
	{
		at: "B60",
		look: "result",
		size: [1, 17],
		slot: "record",
		align: "left",
		rows: [
			[
				'=IF({at:Job.pour_date}="";"";{at:Job.pour_date})',
				'=VALUE(SUBSTITUTE(SUBSTITUTE("{job}";"job";"");"_";""))',
				"={at:Job.heading}",
				"={job}load",
				'=IF({at:Tones.mix}="";"";{at:Tones.mix})',
				'=IF(ISERROR(S65);S65;TEXTJOIN("; ";TRUE;ARRAYFORMULA(IF((U65:U100="keep")+(U65:U100="pull off")>0;IFERROR(V65:V100&": "&TRIM(VLOOKUP(V65:V100;{at:Tones.dose_words};2;FALSE))&IF(AA65:AA100="";"";" ("&AA65:AA100&")");"");""))))',
				...["45", "46", "47"].map(
					(row) => `=IF(${ofLoad(row)}="";"";${ofLoad(row)})`,
				),
				`=IF(ISERROR(S65);S65;IF(COUNT(${ofLoad("20:32")})+COUNT(${WEIGHED})=0;"";MAX(ARRAYFORMULA(IF(ISNUMBER(${WEIGHED})*ISNUMBER(W65:W100)*(U65:U100<>"keep");IF(W65:W100>0;ABS(${WEIGHED}/W65:W100-1);0);0));ARRAYFORMULA(IF(ISNUMBER(${ofLoad("20:32")})*ISNUMBER(T20:T32);IF(T20:T32>0;ABS(${ofLoad("20:32")}/T20:T32-1);0);0)))))`,
				"=C57",
				...["50", "51", "52", "53"].map(
					(row) => `=IF(${ofLoad(row)}="";"";${ofLoad(row)})`,
				),
				"",
				'=IF(ISNUMBER({at:Cost.cost})*({job}mix_total>0);{at:Cost.cost}*C6/{job}mix_total;"")',
			],
		],
		formats: POUR_FORMATS,
	},
	{ at: "Q60", look: "result", size: [1, 2], formats: "whole" },
];
