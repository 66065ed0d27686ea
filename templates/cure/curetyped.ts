import { CURE } from "../../src/job/fields/cure";
import { CURE_LOG } from "../../src/job/fields/pour";
import { MOST } from "../../src/job/jobfile";
import { lines, startsOf, type Typing, typedList, typedTable } from "../blocks";
import type { Block } from "../plan";

const {
	startsFrom,
	strengthWanted,
	dryingAir,
	dryingHumidity,
	dryingMix,
	dryingWind,
	bleeds,
	...finishing
} = CURE;
const { pasteWaste, ...sealing } = finishing;

/** Parts of the list from their first cells, each under its title. */
const PARTS = [
	["A5", "", { startsFrom, strengthWanted }],
	[
		"A9",
		"Drying while it is fresh",
		{ dryingAir, dryingHumidity, dryingMix, dryingWind, bleeds },
	],
	["A16", "Seal on a reading, not on a date", sealing],
	["A21", "Paste for voids", { pasteWaste }],
] as const;

const lists: readonly Typing[] = PARTS.map(([at, , fields]) =>
	typedList({ at, fields, starts: startsOf(fields) }),
);

const log = typedTable({
	at: "A24",
	slot: "cureLog",
	fields: CURE_LOG,
	rows: MOST.cureLog,
});

export const cureTyping = [...lists, log];

/** What is typed from the pour to delivery: a list in parts, and the log of temperatures. */
export const CURE_REGION = "A5:B36";

const title = (at: string, words: string): Block => lines(at, "total", words);

export const cureTypedBlocks: readonly Block[] = [
	lines("A3", "label", "Pour date, from the Job", "Due date, from the Job"),
	{
		at: "B3",
		look: "result",
		rows: ["{at:Job.pourDate}", "{at:Job.dueDate}"].map((day) => [
			`=IF(${day}="";"";${day})`,
		]),
		formats: "date",
		align: "left",
	},
	title("A8", PARTS[1][1]),
	title("A15", PARTS[2][1]),
	title("A20", PARTS[3][1]),
	title("A23", "What it went through, an interval a row"),
	...cureTyping.flatMap(({ blocks }) => blocks),
];
