/** The workbook as data: the studio's tabs, a job's tabs, what they start with, and the demo. */
import type { JobInput, UnitSystem } from "../src/template/job";
import type { Tab } from "../src/template/plan";
import guesthouse from "./demo/guesthouse.json";
import guesthouseUs from "./demo/guesthouse-us.json";
import { job } from "./job";
import { mixes } from "./mixes";
import { pigments } from "./pigments";
import { pourCard } from "./pourcard";
import { studio } from "./studio";
import { tones } from "./tones";

export { starter } from "./starter";

export const studioTabs: readonly Tab[] = [studio, mixes, pigments];
export const jobTabs: readonly Tab[] = [job, tones, pourCard];

export const demo = {
	metric: guesthouse,
	us: guesthouseUs,
} as Record<UnitSystem, JobInput>;
