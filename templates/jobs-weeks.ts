import type { Block } from "../src/template/plan";
import { whileIntact } from "./intact";

/** All columns of the tab. */
const TAB = "$A$1:$AC$1";

/** Work of a job by the column of its day. */
const WORK = [
	["E", "pour"],
	["M", "demold"],
	["N", "fill"],
	["O", "polish"],
	["P", "seal"],
	["Q", "deliver"],
] as const;

/** A column of the jobs. */
export const column = (letter: string) => `${letter}5:${letter}124`;

/** Whether a job is not delivered yet. */
export const LIVE = `(${column("D")}<>"delivered")`;

/** What is to be done from one day on for so many days, in words. */
export const workFrom = (day: string, days: number) =>
	`TEXTJOIN(", ";TRUE;${WORK.map(
		([letter, work]) =>
			`ARRAYFORMULA(IF(ISNUMBER(${column(letter)})*${LIVE};IF((${column(letter)}>=${day})*(${column(letter)}<${day}+${days});"${work} "&${column("C")};"");""))`,
	).join(";")})`;

/** Hours of one week: a job's hours a day on those of its days that fall in it. */
const hoursIn = (week: string) =>
	`=0*$T$5+SUM(ARRAYFORMULA(IF(ISNUMBER(${column("AC")});IF((${column("AB")}>=${week})*(${column("AA")}<${week}+7);${column("AC")}*(IF(${column("AB")}+1<${week}+7;${column("AB")}+1;${week}+7)-IF(${column("AA")}>${week};${column("AA")};${week}));0);0)))`;

const WEEKS = [5, 6, 7, 8, 9, 10, 11, 12];

/** The coming weeks, beside the jobs. */
export const weekBlocks: readonly Block[] = [
	{ at: "T3", look: "total", rows: [["The coming weeks"]] },
	{
		at: "T4",
		look: "heading",
		wrap: true,
		rows: [
			[
				"Week from",
				"Pours",
				"Work",
				"Booked hours",
				"Bench hours",
				"Free hours",
			],
		],
	},
	{
		at: "T5",
		look: "result",
		size: [8, 6],
		slot: "weeks",
		rows: WEEKS.map((row) => [
			row === 5
				? whileIntact(
						[TAB],
						"=ARRAYFORMULA(TODAY()-WEEKDAY(TODAY();2)+1+7*(ROW(T5:T12)-ROW(T5)))",
					)
				: "",
			`=0*$T$5+COUNTIFS(${column("E")};">="&T${row};${column("E")};"<"&T${row}+7)`,
			`=${workFrom(`T${row}`, 7)}`,
			hoursIn(`T${row}`),
			row === 5 ? "=ARRAYFORMULA(T5:T12*0+{studio:bench_hours})" : "",
			row === 5
				? '=ARRAYFORMULA(IF(W5:W12>X5:X12;"Look: "&ROUND(W5:W12-X5:X12;0)&" over";ROUND(X5:X12-W5:W12;1)))'
				: "",
		]),
		formats: ["date", "whole", "text", "number", "number", "number"],
	},
	{
		at: "T13",
		look: "note",
		rows: [
			[
				"A job's hours are spread evenly over the days from a week before its pour to its delivery.",
			],
		],
	},
	{
		at: "T15",
		look: "label",
		rows: [
			["Jobs not delivered"],
			['="Still to be paid, "&{studio:currency}'],
			["Jobs with an error"],
		],
	},
	{
		at: "W15",
		look: "total",
		rows: [
			[
				`=IF(ISERROR(T5);T5;COUNTA(${column("A")})-COUNTIF(${column("D")};"delivered"))`,
			],
			[
				`=IF(ISERROR(T5);T5;SUM(ARRAYFORMULA(IF(ISNUMBER(${column("R")});${column("R")};0))))`,
			],
			[
				`=IF(SUMPRODUCT(ISERROR(A5:R124)*1)=0;0;"Look: numbers of a job that shows an error are not in these sums")`,
			],
		],
		formats: "whole",
		slot: "open",
	},
	{
		at: "W16",
		look: "total",
		size: [1, 1],
		formats: "money",
	},
	{
		at: "AA5",
		look: "result",
		size: [120, 3],
		rows: [
			[
				`=ARRAYFORMULA(IF(ISNUMBER(${column("E")})*ISNUMBER(${column("L")})*${LIVE};${column("E")}-7;""))`,
				`=ARRAYFORMULA(IF(ISNUMBER(${column("AA")});IF(ISNUMBER(${column("Q")});IF(${column("Q")}>${column("E")};${column("Q")};${column("E")});${column("E")});""))`,
				`=ARRAYFORMULA(IF(ISNUMBER(${column("AA")});${column("L")}/(${column("AB")}-${column("AA")}+1);""))`,
			],
		],
	},
];
