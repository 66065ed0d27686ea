import type { Block } from "../src/template/plan";
import { whileIntact } from "./intact";
import { CARD, ofLoad } from "./pourcard-weigh";
import { POUR_FORMATS } from "./pourlog";

const LOAD_COLUMNS = ["E", "F", "G", "H", "I", "J", "K", "L"];

/** A time of day as a share of it, from `9:40` as typed or as a time. */
const time = (cell: string) =>
	`IF(${cell}="";"";IF(ISNUMBER(${cell});MOD(${cell};1);IFERROR(TIMEVALUE(${cell});"Look: type times like 9:40")))`;

/** `9:40` of a share of a day, past midnight too. */
const clock = (share: string) =>
	`INT(MOD(ROUND((${share})*1440;0);1440)/60)&":"&RIGHT("0"&MOD(ROUND((${share})*1440;0);60);2)`;

const minutesFrom = (from: string, to: string) =>
	`ROUND(MOD(${to}-${from};1)*1440;0)`;

const typed = ofLoad("65:100");

/** Fresh tests, time, and the steps that dose the tones. */
export const stepBlocks: readonly Block[] = [
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
				`=IF(ISERROR(S65);S65;IF(COUNT(S65:S100)=0;"";SUM(ARRAYFORMULA(IF(ISNUMBER(S65:S100);IF(${typed}="";1;0);0)))*{studio:step_minutes}))`,
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
	{ at: "A62", look: "total", rows: [["Pull off and dose"]] },
	{
		at: "B63",
		look: "label",
		rows: [["Vessels to dose in"]],
	},
	{
		at: "C63",
		look: "result",
		slot: "vessels",
		rows: [['=IF(ISERROR(S65);S65;COUNTIF(U65:U100;"keep"))']],
		formats: "whole",
	},
	{
		at: "E63",
		look: "note",
		rows: [
			[
				"Type what the scale said beside each step: every later amount follows from it.",
			],
		],
	},
	{
		at: "A64",
		look: "result",
		rows: [
			[
				'=IF(N(C8)>0;0;"")',
				'=IF(N(C8)>0;"Pull off a reserve, cover it";"")',
				'=IF(ISERROR(C8);C8;IF(C8>0;C8;""))',
				'=IF(N(C8)>0;"{mass}";"")',
			],
		],
		formats: ["whole", "text", "mass", "text"],
	},
	{
		at: "E64",
		look: "input",
		size: [1, 8],
		formats: "mass",
		slot: "reserve_weights",
		once: true,
	},
	{
		at: "M64",
		look: "result",
		rows: [
			[
				`=IF(OR(ISNUMBER(${ofLoad("64")});${ofLoad("64")}="");IF(N(C8)>0;"undosed, to lighten a tone too dark";"");"Look: the weight is not a number")`,
			],
		],
	},
	{
		at: "A65",
		look: "result",
		wrap: true,
		size: [36, 4],
		rows: [
			[
				'=IF(ISERROR(S65);S65;ARRAYFORMULA(IF(S65:S100="";"";S65:S100)))',
				'=ARRAYFORMULA(IF(S65:S100="";"";IF(U65:U100="add";"Add "&V65:V100&" to "&SUBSTITUTE(T65:T100;"mixer";"the mixer");IF(U65:U100="keep";"Keep "&V65:V100&" in "&SUBSTITUTE(T65:T100;"mixer";"the mixer");IF(LEFT(V65:V100;7)="bucket ";"Fill "&V65:V100&" from the mixer";"Pull off "&V65:V100&" from "&SUBSTITUTE(T65:T100;"mixer";"the mixer"))))))',
				'=ARRAYFORMULA(IF(S65:S100="";"";IF(X65:X100="g";ROUND(W65:W100/{studio:gram_division};0)*{studio:gram_division};IF((U65:U100="keep")*(W65:W100<{studio:sticks});0;ROUND((W65:W100-IF(U65:U100="keep";{studio:sticks};0))/{studio:mix_division};0)*{studio:mix_division}))))',
				'=ARRAYFORMULA(IF(S65:S100="";"";X65:X100))',
			],
		],
		formats: ["whole", "text", "mass", "text"],
	},
	{
		at: "E65",
		look: "input",
		size: [36, 8],
		formats: "mass",
		slot: "weights",
		once: true,
	},
	{
		at: "M65",
		look: "result",
		wrap: true,
		size: [36, 4],
		rows: [
			[
				'=ARRAYFORMULA(IF(S65:S100="";"";IF(AA65:AA100<>"";"Look: "&AA65:AA100;IF(U65:U100="keep";"to place; "&{studio:sticks}&" {mass} more sticks";IF(AB65:AB100="";"";IF(AB65:AB100>1/20;"Look: too little for the gram scale";""))))))',
				'=ARRAYFORMULA(IF(U65:U100="add";IF(Z65:Z100>0;W65:W100/Z65:Z100;"");""))',
				'=ARRAYFORMULA(IF(S65:S100="";"";Z65:Z100))',
				'=ARRAYFORMULA(IF(S65:S100="";"";Y65:Y100))',
			],
		],
		formats: ["text", "number", "mass", "share"],
	},
	{
		at: "S65",
		slot: "plan",
		look: "result",
		size: [36, 9],
		rows: [
			[
				whileIntact(
					[CARD],
					`=IF(ISERROR(C9);C9;IF(AND(C9>0;COUNTA({at:Tones.typed_tones})>0;SUM(INDEX({at:Tones.dosed};0;2))>0);PULL_OFF_PLAN({at:Tones.dosed};{job}pigments;C9;{job}binder*C6/SUM(S20:S32);${typed};{studio:units});""))`,
				),
			],
		],
	},
	{
		at: "AB65",
		slot: "dose_errors",
		look: "result",
		size: [36, 1],
		rows: [
			[
				'=IF(COUNTIF(U65:U100;"add")=0;"";DOSE_UNCERTAINTY(ARRAYFORMULA(IF(U65:U100="add";IF(W65:W100>0;W65:W100;"");""));{studio:gram_division};ARRAYFORMULA(IF(U65:U100="add";IF(W65:W100>0;Z65:Z100;"");""));{studio:mix_division};1;{studio:units}))',
			],
		],
	},
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
				`=IF(ISERROR(S65);S65;IF(COUNT(${ofLoad("20:32")})+COUNT(${typed})=0;"";MAX(ARRAYFORMULA(IF(ISNUMBER(${typed})*ISNUMBER(W65:W100)*(U65:U100<>"keep");IF(W65:W100>0;ABS(${typed}/W65:W100-1);0);0));ARRAYFORMULA(IF(ISNUMBER(${ofLoad("20:32")})*ISNUMBER(T20:T32);IF(T20:T32>0;ABS(${ofLoad("20:32")}/T20:T32-1);0);0)))))`,
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

export { LOAD_COLUMNS };
