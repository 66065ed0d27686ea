import { MOST_DAYS } from "../../src/job/answers/workdays";
import { JOBS_ROW } from "../../src/job/fields/jobline";
import { formatOf } from "../../src/job/tabs/fieldformat";
import { moved } from "../blocks";
import type { Block, Tab } from "../plan";
import { THIS_WEEK, TODAY, weekBlocks } from "./jobsweeks";

const fields = Object.values(JOBS_ROW);

/** Every job in one row, and the weeks to come. */
export const jobs: Tab = {
	name: "Jobs",
	rows: MOST_DAYS + 4,
	widths: [
		60,
		230,
		230,
		...Array<number>(15).fill(90),
		30,
		90,
		60,
		430,
		...Array<number>(4).fill(90),
		30,
		90,
		60,
		330,
		90,
		90,
		230,
	],
	frozenRows: 4,
	names: { jobs: "A4:R124" },
	blocks: [
		{ at: "A1", look: "title", rows: [["Jobs"]] },
		{ at: "A2", look: "result", slot: "today", rows: [[TODAY], [THIS_WEEK]] },
		{
			at: "A4",
			look: "heading",
			wrap: true,
			rows: [fields.map(({ label }) => label)],
		},
		{
			at: "A5",
			look: "result",
			size: [120, fields.length],
			slot: "jobs",
			formats: fields.map(formatOf),
		},
		...Object.entries({ numbers: "job", stages: "stage", to_pay: "toPay" }).map(
			([slot, key]): Block => ({
				at: moved("A5", 0, Object.keys(JOBS_ROW).indexOf(key)),
				look: "result",
				size: [120, 1],
				slot,
			}),
		),
		...weekBlocks,
	],
};
