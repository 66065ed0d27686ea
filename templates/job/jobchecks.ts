import { JOB_LINE as LINE_FIELDS } from "../../src/job/fields/jobline";
import { JOB_CHECKS, JOB_LINE } from "../../src/job/tabs/wholejob";
import { answerTable } from "../blocks";
import type { Block } from "../plan";

/** Checks that a job has. */
const CHECKS = 27;

const RESULTS = "{at:Job.check_results}";

/** What is checked, with its result, and the job in one row. */
export const checkBlocks: readonly Block[] = [
	{ at: "A61", look: "total", rows: [["Checks"]] },
	...answerTable({
		at: "A62",
		answer: JOB_CHECKS,
		rows: CHECKS,
		slot: "checks",
		slots: { check_results: 1 },
	}),
	{ at: "A100", look: "total", rows: [["Its line on the Jobs tab"]] },
	...answerTable({
		at: "A101",
		answer: JOB_LINE,
		rows: 1,
		slot: "summary",
		slots: {
			line_to_pay: Object.keys(LINE_FIELDS).indexOf("toPay"),
		},
	}),
];

/** How many results begin so; never a number where there are no checks. */
const counted = (start: string) =>
	`=IF(COUNTA(${RESULTS})=0;"Look: see Checks below";COUNTIF(${RESULTS};"${start}*"))`;

export const TO_LOOK_AT = counted("Look:");
export const NOT_KNOWN = counted("not known yet");

/** What stands at this place of the checks, unless it is fine. */
export const worstAt = (place: number) =>
	`=IF(INDEX(${RESULTS};${place})="fine";"";INDEX(${RESULTS};${place})&"")`;
