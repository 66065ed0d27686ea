/** The workbook as data: the studio's tabs, a job's tabs, what they start with, and the demo. */
import { studioSlots } from "../src/job/cells/studioslots";
import type { JobFile } from "../src/job/jobfile";
import type { UnitSystem } from "../src/job/reading/units";
import { pourCard } from "./card/cardtab";
import { cost } from "./cost/costtab";
import { cure } from "./cure/curetab";
import guesthouse from "./demo/guesthouse.json";
import guesthouseUs from "./demo/guesthouse-us.json";
import { job } from "./job/jobtab";
import { mold } from "./mold/moldtab";
import type { Tab } from "./plan";
import { quote } from "./quote/quotetab";
import { starterStudio } from "./starterstudio";
import { jobs } from "./studio/jobs";
import { mixes } from "./studio/mixes";
import { pigments } from "./studio/pigments";
import { pourLog } from "./studio/pourlog";
import { stock } from "./studio/stock";
import { studio } from "./studio/studio";
import { swatches } from "./studio/swatches";
import { tones } from "./tones/tonestab";
import type { Workbook } from "./workbook";

export const studioTabs: readonly Tab[] = [
	studio,
	mixes,
	pigments,
	swatches,
	stock,
	jobs,
	pourLog,
];
export const jobTabs: readonly Tab[] = [
	job,
	mold,
	tones,
	pourCard,
	cure,
	cost,
	quote,
];

export const demo = {
	metric: guesthouse,
	us: guesthouseUs,
} as Record<UnitSystem, JobFile>;

/** All of it. A function, since the add-on has it in a file apart and asks for it only when a call needs it. */
export const workbook = (): Workbook => ({
	studioTabs,
	jobTabs,
	starter: {
		metric: studioSlots(starterStudio("metric")),
		us: studioSlots(starterStudio("us")),
	},
	starterStudios: {
		metric: starterStudio("metric"),
		us: starterStudio("us"),
	},
	demo,
});
