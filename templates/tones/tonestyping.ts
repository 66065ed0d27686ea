/** What is typed on the Tones tab: the look of the job, and its tones with a dose of each pigment. */
import { LOOK, TONE } from "../../src/job/fields/tone";
import { DOSE, MOST } from "../../src/job/jobfile";
import { area, choiceOf, moved, typedList, typedTable } from "../blocks";
import type { Block, Choice } from "../plan";

const LOOK_AT = "A3";
const HEADINGS_AT = "A18";
const FIRST_TONE = moved(HEADINGS_AT, 1);
const PIGMENTS_AT = moved(HEADINGS_AT, 0, 2);
const DOSES_AT = moved(FIRST_TONE, 0, 2);

/** Cells of all of it. */
export const TONES_REGION = "A3:F24";

const look = typedList({
	at: LOOK_AT,
	fields: LOOK,
	starts: {
		finish: "cast",
		sealing: "bare",
		state: "dry",
		placing: "bucket fold",
		folds: 3,
	},
});

const tones = typedTable({
	at: HEADINGS_AT,
	slot: "tone_list",
	fields: TONE,
	rows: MOST.tones,
});

/** The words that are typed for this field are chosen from a list. */
const lookCell = (key: keyof typeof LOOK): string =>
	moved(LOOK_AT, Object.keys(LOOK).indexOf(key), 1);

export const tonesTyped: readonly Block[] = [
	...look.blocks,
	{ at: moved(HEADINGS_AT, -1), look: "total", rows: [["Tones"]] },
	...tones.blocks,
	{
		at: PIGMENTS_AT,
		look: "input",
		size: [1, MOST.pigments],
		formats: "text",
		slot: "pigments",
		align: "right",
		note: "The name of a pigment; under it its doses, as 4% or 0.04.",
	},
	{
		at: FIRST_TONE,
		look: "input",
		size: [MOST.tones, 2 + MOST.pigments],
		slot: "tones",
		formats: ["text", ...Array<"share">(1 + MOST.pigments).fill("share")],
	},
	{
		at: FIRST_TONE,
		look: "input",
		size: [MOST.tones, 1],
		slot: "tone_names",
	},
	{ at: moved(FIRST_TONE, MOST.tones), look: "total", rows: [["Total"]] },
	{
		at: moved(FIRST_TONE, MOST.tones, 1),
		look: "total",
		rows: [["=SUM({at:Tones.shares})"]],
		formats: "share",
		slot: "share_total",
	},
	{
		at: moved(FIRST_TONE, 0, 1),
		look: "input",
		size: [MOST.tones, 1],
		slot: "shares",
	},
];

export const tonesChoices: readonly Choice[] = [
	...look.choices,
	{ range: lookCell("mix"), from: "{at:Mixes.names}" },
	{ range: lookCell("backedWith"), from: "{at:Tones.tone_names}" },
	{
		range: area(PIGMENTS_AT, 1, MOST.pigments),
		from: "{at:Pigments.names}",
	},
	...tones.choices,
	...choiceOf(DOSE, area(DOSES_AT, MOST.tones, MOST.pigments)),
];
