import { QUOTE } from "../../src/job/fields/cost";
import { MOST } from "../../src/job/jobfile";
import { QUOTE_LINES, SUM_KEYS } from "../../src/job/tabs/quote";
import { answerTable, lines, moved, typedList } from "../blocks";
import type { Block } from "../plan";

const LINES = "A8";

export const quoteTyping = typedList({ at: "C3", fields: QUOTE });

/** The date of the quote, and what was agreed. */
export const QUOTE_REGION = "C3:D5";

/** For whom and of what the quote is, when it was written and until when it holds. */
const headBlocks: readonly Block[] = [
	lines("A2", "result", '={studio:studio_name}&""'),
	{
		at: "A3",
		look: "result",
		rows: [
			['=IF({at:Job.client}="";"";"For "&{at:Job.client})'],
			['={at:Job.title}&""'],
			[
				'=IF((LEFT({at:Tones.look_words};5)="Look:")+(LEFT({at:Tones.look_words};9)="not known")>0;"";"Tones: "&{at:Tones.look_words})',
			],
			[
				'=IF({at:Tones.sampleNumber}="";"";"As the sample you approved: "&{at:Tones.sampleNumber})',
			],
		],
		wrap: true,
	},
	lines(
		"A7",
		"note",
		'=IF(LEFT({at:Quote.open};4)="Look";{at:Quote.open};IF({studio:studio_name}="";"First type the studio\'s name on the Studio tab. ";"")&IF({at:Quote.quotedOn}="";"First type its date.";""))',
	),
	...quoteTyping.blocks,
	{ at: "C6", look: "label", rows: [["Holds until"]] },
	{
		at: "D6",
		look: "result",
		rows: [['=IF({at:Quote.quotedOn}="";"";{at:Quote.holds_until})']],
		formats: "date",
		align: "left",
	},
];

/** The lines with their sums; those that other tabs show have a column out of sight, where each keeps its row. */
export const quoteLineBlocks: readonly Block[] = [
	...headBlocks,
	...answerTable({
		at: LINES,
		answer: QUOTE_LINES,
		rows: MOST.pieces,
	}),
	...SUM_KEYS.map((key, row): Block => {
		const at = moved(LINES, row + 1, QUOTE_LINES.shown.length - 1);
		return {
			at,
			look: "result",
			size: [1, 1],
			slot: key,
			...(key === "holds_until" && { formats: "date" }),
		};
	}),
];
