import { SWATCH_COLUMNS } from "../../src/job/cells/studioslots";
import type { Fields } from "../../src/job/fields/field";
import { SWATCH } from "../../src/job/fields/swatch";
import { DOSE } from "../../src/job/jobfile";
import { PIGMENTS_KNOWN, SWATCHES_NOTED } from "../../src/job/tabs/swatchfit";
import { answerTable, area, choiceOf, moved, typedTable } from "../blocks";
import type { Block, Tab } from "../plan";

const ROWS = 200;
const { before, pigments } = SWATCH_COLUMNS;

const fields: readonly (readonly [string, Fields[string]])[] =
	Object.entries(SWATCH);
const kind = typedTable({
	at: "A5",
	slot: "kinds",
	fields: Object.fromEntries(fields.slice(0, before)),
	rows: ROWS,
});
const measured = typedTable({
	at: moved("A5", 0, before + pigments),
	slot: "measured",
	fields: Object.fromEntries(fields.slice(before)),
	rows: ROWS,
});

/** Answers stand right of what is typed, a blank column between. */
const NOTED_AT = moved("A5", 0, fields.length + pigments + 1);
const KNOWN_AT = moved(NOTED_AT, 0, SWATCHES_NOTED.shown.length + 1);
const KNOWN_ROWS = 60;

/** The first cell of a field. */
const firstCell = (key: keyof typeof SWATCH): string => {
	const place = fields.findIndex(([own]) => own === key);
	return moved("A6", 0, place < before ? place : place + pigments);
};

const doses: readonly Block[] = [
	{
		at: "E4",
		look: "note",
		rows: [["Dry pigment, share of binder: name each pigment below"]],
	},
	{
		at: "E5",
		look: "input",
		size: [1, pigments],
		formats: "text",
		slot: "swatch_pigments",
		align: "right",
	},
	{
		at: "E6",
		look: "input",
		size: [ROWS, pigments],
		formats: "share",
		slot: "doses",
	},
];

/** The studio's own samples: the only colors that are trusted. */
export const swatches: Tab = {
	name: "Swatches",
	rows: 205,
	widths: [
		190,
		...Array<number>(15).fill(90),
		190,
		...Array<number>(4).fill(120),
		240,
		...Array<number>(12).fill(120),
		240,
		240,
	],
	frozenRows: 5,
	names: { swatches: area("A5", ROWS + 1, fields.length + pigments) },
	blocks: [
		{ at: "A1", look: "title", rows: [["Swatches"]] },
		{
			at: "A2",
			look: "note",
			rows: [
				[
					"Measure where it is flat and clean, the mean of three spots: a color code by daylight (D65) such as #b8a591, or L*, a*, b* of a meter such as 52.1, 8.0, 14.2. Per pigment two doses or more, and one undosed, all 28 days old.",
				],
				[
					'=IF(COUNTA({at:Swatches.colors})=0;"No swatch yet: cast 0, 1, 2 and 4% of each pigment.";IF(COUNTIF({at:Swatches.remarks};"invented*")>0;"Invented rows count for invented clients.";""))',
				],
			],
		},
		...kind.blocks,
		...doses,
		...measured.blocks,
		...answerTable({ at: NOTED_AT, answer: SWATCHES_NOTED, rows: ROWS }),
		{
			at: moved(KNOWN_AT, -1),
			look: "total",
			rows: [["How well each pigment is known"]],
		},
		...answerTable({ at: KNOWN_AT, answer: PIGMENTS_KNOWN, rows: KNOWN_ROWS }),
		{
			at: moved(KNOWN_AT, KNOWN_ROWS + 1),
			look: "note",
			rows: [
				[
					"A tone of several pigments is best cast itself, and its recipe corrected: the panel's Color does both.",
				],
			],
		},
		{
			at: "A6",
			look: "input",
			size: [ROWS, fields.length + pigments],
			slot: "swatches",
		},
		{ at: firstCell("color"), look: "input", size: [ROWS, 1], slot: "colors" },
		{
			at: firstCell("remark"),
			look: "input",
			size: [ROWS, 1],
			slot: "remarks",
		},
	],
	choices: [
		{ range: area(firstCell("mix"), ROWS, 1), from: "{at:Mixes.names}" },
		...kind.choices,
		{ range: "E5:L5", from: "{at:Pigments.names}" },
		...choiceOf(DOSE, area("E6", ROWS, pigments)),
		...measured.choices,
	],
};
