/** What the Jobs tab answers of the coming days. */
import { workDays } from "../answers/workdays";
import type { TabAnswer } from "./tab";

export const JOBS_WORK: TabAnswer = {
	name: "JOBS_WORK",
	summary:
		"What is to be done day by day, over all jobs that are not delivered, and the hours that it takes.",
	needs: ["jobs"],
	shape: "table",
	shown: [
		{ label: "Day", format: "date" },
		{ label: "Pours", format: "whole" },
		{ label: "Work", format: "text" },
		{
			label: "Hours",
			format: "number",
			note: "A job's hours are spread evenly over the days from a week before its pour to its delivery.",
		},
		{
			label: "If ordered, hours",
			format: "number",
			note: "Of jobs that nobody ordered yet: sampling or priced.",
		},
		{ label: "Due", format: "text" },
	],
	values: ({ given: { studio } }) =>
		workDays(studio.jobs ?? []).map(
			({ day, pours, work, hours, ifOrdered, due }) => [
				day,
				pours,
				work.join(", "),
				hours,
				ifOrdered,
				due.join(", "),
			],
		),
};
