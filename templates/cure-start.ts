import type { Block } from "../src/template/plan";
import { NEVER } from "./cure-calendar";

/** Choice and dates it counts from, and whether the delivery is in time. */
export const startBlocks: readonly Block[] = [
	{
		at: "A3",
		look: "label",
		rows: [
			["Count from the"],
			["Pour date, from the Job"],
			["Due date, from the Job"],
			["In time"],
		],
	},
	{
		at: "B3",
		look: "input",
		rows: [["pour date"]],
		formats: "text",
		slot: "starts_from",
	},
	{
		at: "B4",
		look: "result",
		rows: [["pour_date"], ["due_date"]].map(([slot]) => [
			`=IF({at:Job.${slot}}="";"";IF(ISNUMBER({at:Job.${slot}});{at:Job.${slot}};"Look: not a date"))`,
		]),
		formats: "date",
		align: "left",
	},
	{
		at: "B6",
		look: "result",
		rows: [
			[
				`=IF(ISERROR(B16)+ISERROR(D10)>0;"Look: a day cannot be worked out: see the days on the Studio tab";IF(COUNTIF(B4:B5;"Look*")>0;"Look: a date of the Job is not a date";IF((B3="due date")*(B5="");"Look: there is no due date to count back from";IF((B3<>"due date")*(B4="");"Look: type the pour date on the Job tab";IF(MAX(B10:B16)>=${NEVER};"Look: no day of work within 60 days";IF((B3<>"due date")*(B10<>B4);"Look: the pour date is a day off: the calendar begins on the next day of work";IF(B5="";"fine";IF(B16>B5;"Look: delivery would be "&(B16-B5)&" days after the due date";IF((B3="due date")*ISNUMBER(B4)*(B10<N(B4));"Look: to be in time the pour is "&(N(B4)-B10)&" days before the Job's pour date";"fine")))))))))`,
			],
		],
		slot: "date_met",
	},
];
