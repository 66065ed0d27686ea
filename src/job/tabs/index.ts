/** Every answer of a tab, tab by tab. */

import { CARD_LOAD, CARD_STEPS, CARD_WEIGH_OUT } from "./card";
import { COST_MATERIALS, COST_SUMMARY, COST_WORK } from "./cost";
import { CURE_CALENDAR, CURE_FACTS } from "./cure";
import { JOBS_WORK } from "./jobswork";
import { JOB_MOLD } from "./mold";
import { JOB_LOADS, JOB_PIECES, JOB_TOTALS } from "./pieces";
import { JOB_INGREDIENTS, JOB_PIGMENTS, JOB_SAMPLE } from "./pigments";
import { COLORS_FOUND, POURS_COUNT, POURS_FOUND } from "./poursfound";
import { QUOTE_LINES } from "./quote";
import { PIGMENTS_KNOWN, SWATCHES_NOTED } from "./swatchfit";
import type { TabAnswer } from "./tab";
import { JOB_MIX, JOB_TONES } from "./tones";
import { JOB_CHECKS, JOB_LINE } from "./wholejob";
export const tabAnswers: readonly TabAnswer[] = [
	JOB_TOTALS,
	JOB_PIECES,
	JOB_LOADS,
	JOB_MOLD,
	CURE_CALENDAR,
	CURE_FACTS,
	COST_SUMMARY,
	COST_WORK,
	COST_MATERIALS,
	QUOTE_LINES,
	JOB_MIX,
	JOB_TONES,
	JOB_PIGMENTS,
	JOB_INGREDIENTS,
	JOB_SAMPLE,
	CARD_LOAD,
	CARD_WEIGH_OUT,
	CARD_STEPS,
	JOB_CHECKS,
	JOB_LINE,
	JOBS_WORK,
	POURS_COUNT,
	POURS_FOUND,
	COLORS_FOUND,
	SWATCHES_NOTED,
	PIGMENTS_KNOWN,
];
