/** What the Tones tab answers, and where each answer stands. */
import {
	JOB_INGREDIENTS,
	JOB_PIGMENTS,
	JOB_SAMPLE,
	PIGMENT_ROWS,
} from "../../src/job/tabs/pigments";
import {
	JOB_MIX,
	JOB_TONES,
	MIX_FACTS,
	type MixFact,
} from "../../src/job/tabs/tones";
import { answerList, answerTable, lines, moved } from "../blocks";
import { painted } from "../drawn";
import type { Block } from "../plan";

const fact = (key: MixFact): number => MIX_FACTS.indexOf(key);

/** The facts of the mix, their labels to the left of them. */
const FACTS_AT = "G3";

/** Rows of an answer for each tone. */
const TONES = 6;
const PIGMENTS_AT = "A27";
const PIGMENT_COLUMNS = 6;

const toneAnswers: readonly Block[] = [
	{ at: "G18", look: "heading", rows: [["Looks"]] },
	painted("G19", "{at:Tones.expected}", TONES),
	...answerTable({
		at: "H18",
		answer: JOB_TONES,
		rows: TONES,
		slot: "tone_answers",
		slots: {
			undosed: 0,
			on_scale: 1,
			headroom: 6,
			expected: 7,
			differences: 9,
			told_apart: 10,
		},
	}),
	{ at: "J19", look: "result", size: [TONES, 4], slot: "pigments_weighed" },
	{
		at: "H25",
		look: "total",
		rows: [
			[..."HIJKLM"].map(
				(column) =>
					`=IF(COUNT(${column}19:${column}24)=0;"";SUM(${column}19:${column}24))`,
			),
		],
		formats: ["mass", "mass", "pigment", "pigment", "pigment", "pigment"],
	},
];

/** Each row of what is said of pigments has a format of its own. */
const pigmentFormats: readonly Block[] = Object.values(PIGMENT_ROWS).map(
	({ format }, row) => ({
		at: moved(PIGMENTS_AT, row + 1, 2),
		look: "result",
		size: [1, PIGMENT_COLUMNS - 2],
		formats: format,
		align: "right",
	}),
);

export const tonesAnswers: readonly Block[] = [
	...answerList({
		at: FACTS_AT,
		answer: JOB_MIX,
		right: 1,
		slots: {
			cement_share: fact("cement"),
			face_share: fact("face"),
			far_color: fact("farColor"),
			swatches_used: fact("swatches"),
			look_words: fact("look"),
			tones_check: fact("check"),
			binder: fact("binder"),
			density: fact("density"),
		},
	}),
	// a long label runs to the left, so that each is beside its answer
	{
		at: FACTS_AT,
		look: "label",
		size: [MIX_FACTS.length, 1],
		align: "right",
	},
	painted(moved(FACTS_AT, fact("farColor"), 2), "{at:Tones.far_color}", 1),
	...toneAnswers,
	...answerTable({
		at: PIGMENTS_AT,
		answer: JOB_PIGMENTS,
		rows: Object.keys(PIGMENT_ROWS).length,
	}),
	...pigmentFormats,
	lines(
		"J38",
		"note",
		"All of the mix is toned in buckets and folded.",
		"Faces, edges and drops are toned to the depth typed above; one tone backs the rest.",
	),
	...answerTable({
		at: "A43",
		answer: JOB_SAMPLE,
		rows: TONES + 2,
		slot: "sample",
	}),
	{ at: "A54", look: "total", rows: [["Mix"]] },
	...answerTable({ at: "A55", answer: JOB_INGREDIENTS, rows: 20 }),
];
