import { MOST_DAYS } from "../../src/job/answers/workdays";
import { JOBS_WORK } from "../../src/job/tabs/jobswork";
import type { Block } from "../../src/template/plan";
import { answerTable, area, moved } from "../blocks";

/** A column of the jobs' rows. */
export const column = (letter: string) => `${letter}5:${letter}124`;

const HEAD = "Z4";
const [DAYS = "", POURS = "", WORK = "", HOURS = "", DUE = ""] =
	JOBS_WORK.shown.map((_, index) => area(moved("Z5", 0, index), MOST_DAYS, 1));

/** The answer while the days can be worked out, else their error. */
const whileKnown = (answer: string) =>
	`=IF(ISERROR(${HEAD});${HEAD};${answer})`;

/** The texts of some days, with commas between. */
const texts = (of: string, ...when: readonly string[]) =>
	whileKnown(`TEXTJOIN(", ";TRUE;IFERROR(FILTER(${of};${when.join(";")});""))`);

const inWeek = (of: string, row: number) =>
	whileKnown(`SUMIFS(${of};${DAYS};">="&T${row};${DAYS};"<"&T${row}+7)`);

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
			],
		],
	},
	{
		at: "T5",
		look: "result",
		slot: "weeks",
		rows: WEEKS.map((row) => [
			row === 5 ? "=TODAY()-WEEKDAY(TODAY();2)+1" : `=T${row - 1}+7`,
			inWeek(POURS, row),
			texts(WORK, `${DAYS}>=T${row}`, `${DAYS}<T${row}+7`),
			inWeek(HOURS, row),
			"={studio:bench_hours}",
			`=IF(W${row}>X${row};"Look: "&ROUND(W${row}-X${row};0)&" over";ROUND(X${row}-W${row};1))`,
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
			["Numbers not known yet"],
			["Late"],
			["Today"],
		],
	},
	{
		at: "W15",
		look: "total",
		rows: [
			[`=COUNTA(${column("A")})-COUNTIF(${column("D")};"delivered")`],
			[`=SUM(IFERROR(FILTER(${column("R")};ISNUMBER(${column("R")}));0))`],
			[
				'=IF(SUMPRODUCT(ISERROR(A5:R124)*1)+COUNTIF(A5:R124;"Look:*")=0;0;"Look: numbers of a job that shows an error are not in these sums")',
			],
			['=COUNTIF(A5:R124;"not known yet*")'],
			[texts(DUE, `${DAYS}<TODAY()`)],
			[texts(WORK, `${DAYS}=TODAY()`)],
		],
		formats: "whole",
		slot: "open",
	},
	{ at: "W16", look: "total", size: [1, 1], formats: "money" },
	{ at: "W19", look: "total", size: [2, 1], formats: "text" },
	{ at: "Z3", look: "total", rows: [["Day by day"]] },
	...answerTable({
		at: HEAD,
		answer: JOBS_WORK,
		rows: MOST_DAYS,
		slot: "days",
	}),
];

/** What is to be done today, in words. */
export const TODAY = `=IF(COUNTA(${column("A")})=0;"No job yet: choose Start a job in the Tonefold menu.";IF(ISERROR(${HEAD});"Look: Day by day, at the right, shows an error: point at it to read why";"Today: "&IF(W20="";"no pour or other work";W20)))`;

/** What is late, and how full the week is. */
export const THIS_WEEK =
	'=IF(W19="";"";"Look: late: "&W19&" · ")&"This week: "&U5&IF(U5=1;" pour, ";" pours, ")&ROUND(W5;0)&" of "&X5&" bench hours booked"';
