import type { Format, Tab } from "../src/template/plan";
import { MOVED } from "./intact";
import { column, LIVE, weekBlocks, workFrom } from "./jobs-weeks";

const LATE = `TEXTJOIN(", ";TRUE;ARRAYFORMULA(IF(ISNUMBER(${column("F")})*${LIVE};IF(${column("F")}<TODAY();${column("C")};"");"")))`;

/** Of a job's row, without its number: what `Job.summary` says. */
export const SUMMARY_HEADINGS: readonly string[] = [
	"Client",
	"Title",
	"Stage",
	"Pour",
	"Due",
	"Price",
	"Cost",
	"Margin",
	"Deposit received",
	"Balance received",
	"Hours",
	"Demold",
	"Fill",
	"Polish",
	"Seal",
	"Deliver",
	"Still to be paid",
];

export const SUMMARY_FORMATS: readonly Format[] = [
	"text",
	"text",
	"text",
	"date",
	"date",
	"money",
	"money",
	"share",
	"money",
	"money",
	"number",
	"date",
	"date",
	"date",
	"date",
	"date",
	"money",
];

/** Every job in one row, and the weeks to come. */
export const jobs: Tab = {
	name: "Jobs",
	rows: 124,
	widths: [
		60,
		230,
		230,
		...Array<number>(15).fill(90),
		30,
		90,
		60,
		430,
		...Array<number>(7).fill(90),
	],
	frozenRows: 4,
	hidden: 4,
	blocks: [
		{ at: "A1", look: "title", rows: [["Jobs"]] },
		{
			at: "A2",
			look: "result",
			slot: "today",
			rows: [
				[
					`=IF(ISERROR(T5);"${MOVED}";IF(COUNTA(${column("A")})=0;"No job yet: choose Start a job in the Tonefold menu.";"Today: "&IF(${workFrom("TODAY()", 1)}="";"no pour, demolding, filling, polishing, sealing or delivery";${workFrom("TODAY()", 1)})))`,
				],
				[
					`=IF(${LATE}="";"";"Look: late: "&${LATE}&" · ")&"This week: "&U5&IF(U5=1;" pour, ";" pours, ")&ROUND(W5;0)&" of "&X5&" bench hours booked"`,
				],
			],
		},
		{
			at: "A4",
			look: "heading",
			wrap: true,
			rows: [["Job", ...SUMMARY_HEADINGS]],
		},
		{
			at: "A5",
			look: "result",
			size: [120, 18],
			name: "jobs",
			formats: ["whole", ...SUMMARY_FORMATS],
		},
		...weekBlocks,
	],
};
