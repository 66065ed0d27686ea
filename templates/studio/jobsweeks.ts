import { MOST_DAYS } from "../../src/job/answers/workdays";
import { JOBS_WORK } from "../../src/job/tabs/jobswork";
import { answerTable, lines } from "../blocks";
import type { Block } from "../plan";

const at = (slot: string) => `{at:Jobs.${slot}}`;

const DAYS = at("days");

/** Where the answer begins: an error of it stands there, or what to do. */
const HEAD = at("heading");

/** Columns of the answer, by the keys of their cells. */
const COLUMNS = {
	days: 0,
	pours: 1,
	work: 2,
	hours: 3,
	if_ordered: 4,
	due: 5,
} as const;

/** The answer while the days can be worked out, else their error. */
const whileKnown = (answer: string) =>
	`=IF(LEFT(${HEAD};5)="Look:";${HEAD};${answer})`;

/** The texts of some days, with commas between. */
const texts = (of: keyof typeof COLUMNS, when: string) =>
	whileKnown(`TEXTJOIN(", ";TRUE;ARRAYFORMULA(IF(${when};${at(of)};"")))`);

const inWeek = (of: keyof typeof COLUMNS, row: number) =>
	whileKnown(`SUMIFS(${at(of)};${DAYS};">="&T${row};${DAYS};"<"&T${row}+7)`);

const JOBS = at("jobs");
const TO_PAY = at("to_pay");

const WEEKS = [5, 6, 7, 8, 9, 10, 11, 12];

/** The coming weeks, and the days that they are summed from. */
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
				"If ordered, hours",
			],
		],
	},
	{
		at: "T5",
		look: "result",
		slot: "weeks",
		rows: WEEKS.map((row) => [
			row === 5 ? "=TODAY()-WEEKDAY(TODAY();2)+1" : `=T${row - 1}+7`,
			inWeek("pours", row),
			texts("work", `(${DAYS}>=T${row})*(${DAYS}<T${row}+7)`),
			inWeek("hours", row),
			"={studio:bench_hours}",
			`=IF(W${row}>X${row};"Look: "&ROUND(W${row}-X${row};0)&" over";ROUND(X${row}-W${row};1))`,
			inWeek("if_ordered", row),
		]),
		formats: [
			...(["date", "whole", "text"] as const),
			...Array<"number">(4).fill("number"),
		],
	},
	lines(
		"T13",
		"note",
		"A job's hours are spread evenly over the days from a week before its pour to its delivery. Jobs that nobody ordered yet stand apart.",
	),
	lines(
		"T15",
		"label",
		"Jobs not delivered",
		'="Still to be paid, "&{studio:currency}',
		"Jobs with an error",
		"Numbers not known yet",
		"Late",
		"Today",
	),
	{
		at: "W15",
		look: "total",
		rows: [
			[`=COUNTA(${at("numbers")})-COUNTIF(${at("stages")};"delivered")`],
			[
				`=SUM(ARRAYFORMULA(IF(ISNUMBER(${TO_PAY});IF(${TO_PAY}>0;${TO_PAY};0);0)))`,
			],
			[
				`=IF(SUMPRODUCT(ISERROR(${JOBS})*1)+COUNTIF(${JOBS};"Look:*")=0;0;"Look: numbers of a job that shows an error are not in these sums")`,
			],
			[`=COUNTIF(${JOBS};"not known yet*")`],
		],
		formats: "whole",
		slot: "open",
	},
	{ at: "W16", look: "total", size: [1, 1], formats: "money" },
	{
		at: "U19",
		look: "total",
		rows: [[texts("due", `${DAYS}<TODAY()`)]],
		slot: "late",
	},
	{
		at: "U20",
		look: "total",
		rows: [[texts("work", `${DAYS}=TODAY()`)]],
		slot: "doing",
	},
	{ at: "AB3", look: "total", rows: [["Day by day"]] },
	...answerTable({
		at: "AB4",
		answer: JOBS_WORK,
		rows: MOST_DAYS,
		slots: COLUMNS,
	}),
	{ at: "AB4", look: "heading", size: [1, 1], slot: "heading" },
	...Object.entries({ week_pours: "U5", week_hours: "W5", bench: "X5" }).map(
		([slot, at]): Block => ({ at, look: "result", size: [1, 1], slot }),
	),
];

/** What is to be done today, in words. */
export const TODAY = `=IF(COUNTA(${at("numbers")})=0;"No job yet: choose Start a job in the Tonefold menu.";IFERROR("Today: "&IF(${at("doing")}="";"no work";${at("doing")});"Look: see Day by day"))`;

/** What is late, and how full the week is. */
export const THIS_WEEK = `=IF(${at("late")}="";"";"Look: late: "&${at("late")}&" · ")&"This week: "&${at("week_pours")}&" to pour, "&ROUND(${at("week_hours")};0)&" of "&${at("bench")}&" bench hours booked"`;
