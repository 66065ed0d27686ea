import { JOB_MOLD, MOLD_ROWS } from "../../src/job/tabs/mold";
import { answerTable, lines } from "../blocks";
import type { Tab } from "../plan";

const DRAWING_ROWS = 23;
const ANSWERS = `A${DRAWING_ROWS + 8}`;

/** What the molds are built of, drawn, counted and cut. */
export const mold: Tab = {
	name: "Mold",
	color: "#8a5a2b",
	rows: 130,
	widths: [
		...[120, 240, 80, 90, 70, 360, 16],
		...[280, 70, 70, 70, 70, 60, 60],
	],
	frozenRows: 1,
	blocks: [
		{ at: "A1", look: "title", rows: [['="Mold · "&{at:Job.heading}']] },
		lines(
			"A2",
			"caution",
			"Saws: guard and riving knife on, push sticks, eyes and ears; narrow strips and small plugs are cut with a sled or by hand.",
			"Board and fiber dust is breathed in: extraction and a mask. Molds full of mix are heavy: support the base all over, lift with enough people or a hoist.",
			"Numbers for building and carrying are for judging, not a design: local codes, the board's data sheet and a licensed engineer come first.",
			"A mold for each casting. What is counted here is in the Cost; type another amount beside its name there. Seams at least 40 mm (1-1/2 in) from any hole.",
		),
		{
			at: "A7",
			look: "result",
			size: [DRAWING_ROWS, 6],
			name: "drawing",
		},
		...answerTable({
			at: ANSWERS,
			answer: JOB_MOLD,
			rows: MOLD_ROWS,
			slot: "mold",
		}),
	],
};
