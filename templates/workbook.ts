import type { JobFile } from "../src/job/jobfile";
import type { UnitSystem } from "../src/job/reading/units";
import type { StudioFile } from "../src/job/studiofile";
import type { Slots, Tab } from "./plan";

/** Everything that a workbook is made from. */
export interface Workbook {
	/** One set a workbook. */
	studioTabs: readonly Tab[];
	/** One set a job. */
	jobTabs: readonly Tab[];
	/** What the studio's tabs start with. */
	starter: Readonly<Record<UnitSystem, Slots>>;
	/** The same as a studio file. */
	starterStudios: Readonly<Record<UnitSystem, StudioFile>>;
	/** An invented job. */
	demo: Readonly<Record<UnitSystem, JobFile>>;
}
