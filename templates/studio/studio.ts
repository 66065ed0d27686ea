import { CLOSED } from "../../src/job/cells/studiocells";
import type { Fields } from "../../src/job/fields/field";
import { SETTING_GROUPS } from "../../src/job/fields/settings";
import { VERSION } from "../../src/job/version";
import {
	area,
	lines,
	moved,
	type Typing,
	typedList,
	typedTable,
	UNDO,
} from "../blocks";
import type { Block, Tab } from "../plan";

const FIRST = "A3";
const CLOSED_DAYS = 30;

/** A heading, and under it labels with the typed cell and what it is for. */
function groupTyping(at: string, heading: string, fields: Fields): Typing {
	const entries = Object.entries(fields);
	// The help stands beside the cell, so that it needs no note.
	const bare = Object.fromEntries(
		entries.map(([key, { help, ...field }]) => [key, field as Fields[string]]),
	);
	const { blocks, choices } = typedList({ at: moved(at, 1), fields: bare });
	return {
		blocks: [
			{ at, look: "total", rows: [[heading]] },
			...blocks.map((block) =>
				block.look === "input" ? { ...block, align: "right" as const } : block,
			),
			{
				at: moved(at, 1, 2),
				look: "note",
				rows: entries.map(([, { help = "" }]) => [help]),
			},
		],
		choices,
	};
}

const groups: Typing[] = [];
let next = FIRST;
for (const [heading, fields] of Object.entries(SETTING_GROUPS)) {
	groups.push(groupTyping(next, heading, fields));
	next = moved(next, Object.keys(fields).length + 1);
}
const LAST_ROW = Number(next.slice(1)) - 1;

/** The units are those of every number in the workbook: they are shown, and not to be typed. */
const unitsAt = groups
	.flatMap(({ blocks }) => blocks)
	.find(({ slot }) => slot === "units")?.at;

const closed = typedTable({
	at: "E2",
	slot: "closed_days",
	fields: CLOSED,
	rows: CLOSED_DAYS,
});

const blocks: Block[] = [
	{ at: "A1", look: "title", rows: [["Studio"]] },
	{ at: "A2", look: "heading", rows: [["What", "Here", "What it is for"]] },
	...groups.flatMap(({ blocks }) =>
		blocks.map((block) =>
			block.slot === "units" ? { ...block, look: "result" as const } : block,
		),
	),
	...closed.blocks.map((block) =>
		block.look === "input"
			? {
					...block,
					note: "Holidays and other days without work, a date in each cell.",
					align: "right" as const,
				}
			: block,
	),
	lines(`A${LAST_ROW + 2}`, "note", "Written by Tonefold, version"),
	{
		at: `B${LAST_ROW + 2}`,
		look: "note",
		rows: [[VERSION]],
		formats: "text",
		align: "right",
	},
	lines(`A${LAST_ROW + 3}`, "note", "In place of answers that were parted"),
	lines(
		`B${LAST_ROW + 3}`,
		"note",
		"Look: a column or row was put in among these answers. Undo that",
	),
];

/** The studio's own numbers, one set a workbook. */
export const studio: Tab = {
	name: "Studio",
	rows: LAST_ROW + 4,
	widths: [250, 150, 470, 30, 130],
	frozenRows: 2,
	names: {
		settings: area("A2", LAST_ROW - 1, 5),
		version: `B${LAST_ROW + 2}`,
		[UNDO]: `B${LAST_ROW + 3}`,
	},
	blocks,
	choices: [
		...groups.flatMap(({ choices }) =>
			choices.filter(({ range }) => range !== unitsAt),
		),
		...closed.choices,
	],
};
