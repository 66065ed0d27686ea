/** What the Job tab answers of the whole job: its checks, and its row on the Jobs tab. */
import { byWorst, checksOf } from "../answers/checks";
import { wholeFrom } from "../answers/whole";
import { JOB_REGIONS } from "../cells/jobcells";
import { JOB_LINE as FIELDS } from "../fields/jobline";
import { formatOf } from "./fieldformat";
import type { Region, TabAnswer } from "./tab";

/** All that is typed, but which load the card shows. */
const NEEDS: readonly Region[] = [
	...JOB_REGIONS.filter((region) => region !== "load"),
	"mixes",
	"pigments",
	"swatches",
	"stock",
];

export const JOB_CHECKS: TabAnswer = {
	name: "JOB_CHECKS",
	summary:
		"What could be wrong with a job: what is wrong first, then what is not known yet, then what is fine.",
	needs: NEEDS,
	shape: "table",
	shown: [
		{ label: "What is checked", format: "text", wrap: true },
		{ label: "Result", format: "text" },
	],
	values: (input) =>
		byWorst(checksOf(wholeFrom(input))).map(({ what, say }) => [what, say]),
};

export const JOB_LINE: TabAnswer = {
	name: "JOB_LINE",
	summary: "A job in one row, as the Jobs tab shows it.",
	needs: NEEDS,
	shape: "table",
	shown: Object.values(FIELDS).map((field) => ({
		label: field.label,
		format: formatOf(field),
	})),
	values: (input) => {
		const line = wholeFrom(input).line();
		return [Object.keys(FIELDS).map((key) => line[key as keyof typeof line])];
	},
};
