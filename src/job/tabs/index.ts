/** Every answer of a tab, tab by tab. */
import { COST_MATERIALS, COST_SUMMARY, COST_WORK } from "./cost";
import { CURE_CALENDAR, CURE_FACTS } from "./cure";
import { JOB_KNOCKOUTS, JOB_LOADS, JOB_PIECES, JOB_TOTALS } from "./pieces";
import { QUOTE_LINES } from "./quote";
import type { TabAnswer } from "./tab";

export const tabAnswers: readonly TabAnswer[] = [
	JOB_TOTALS,
	JOB_PIECES,
	JOB_KNOCKOUTS,
	JOB_LOADS,
	CURE_CALENDAR,
	CURE_FACTS,
	COST_SUMMARY,
	COST_WORK,
	COST_MATERIALS,
	QUOTE_LINES,
];
