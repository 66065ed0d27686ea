/** Every answer of a tab, tab by tab. */
import { JOB_KNOCKOUTS, JOB_LOADS, JOB_PIECES, JOB_TOTALS } from "./pieces";
import type { TabAnswer } from "./tab";

export const tabAnswers: readonly TabAnswer[] = [
	JOB_TOTALS,
	JOB_PIECES,
	JOB_KNOCKOUTS,
	JOB_LOADS,
];
