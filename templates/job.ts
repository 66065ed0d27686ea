import type { Tab } from "../src/template/plan";
import { checkBlocks } from "./checks";
import { hintOrMoved } from "./intact";
import { headBlocks } from "./job-head";
import { lineBlocks } from "./job-line";
import { knockoutBlocks } from "./knockouts";
import { liftingBlocks } from "./lifting";
import { loadBlocks } from "./loads";
import { pieceBlocks } from "./pieces";

/** The pieces of a job, what they weigh, how they are lifted and cast, and what is wrong with the job. */
export const job: Tab = {
	name: "Job",
	color: "#8a5a2b",
	rows: 112,
	widths: [
		...[160, ...Array<number>(25).fill(92)],
		...Array<number>(7).fill(300),
		...Array<number>(6).fill(80),
	],
	frozenRows: 1,
	frozenColumns: 1,
	hidden: 6,
	blocks: [
		{
			at: "A1",
			look: "title",
			rows: [['=IF(C3&C4="";"New job";C3&IF((C3="")+(C4="")>0;"";" · ")&C4)']],
			slot: "heading",
		},
		{
			at: "A2",
			look: "note",
			rows: [
				[
					hintOrMoved(
						"$A$1:$AM$1",
						"Type in the tinted cells. Lengths as you say them: 8 ft 1/2 in, 25-1/2 in, 2.4 m, 65 cm. Without a unit: {length}.",
					),
				],
			],
		},
		...headBlocks,
		...pieceBlocks,
		...liftingBlocks,
		{ at: "A32", look: "total", rows: [["Cutouts"]] },
		{
			at: "A33",
			look: "heading",
			rows: [["In piece", "Each", "Shape", "A", "B"]],
		},
		{
			at: "A34",
			look: "input",
			size: [12, 5],
			slot: "cutouts",
			formats: ["text", "whole", "text", "text", "text"],
		},
		...knockoutBlocks,
		...checkBlocks,
		...loadBlocks,
		...lineBlocks,
	],
	choices: [
		{
			range: "C7",
			list: [
				"sampling",
				"priced",
				"ordered",
				"molds built",
				"poured",
				"finished",
				"delivered",
			],
		},
		{
			range: "C11:C30",
			list: ["rectangle", "round", "oval", "L", "U", "basin", "tube", "area"],
			help: "L: A × B less a corner notch C × D. U: notch C wide, D deep in the longer side. Basin: A × B outside, C high. Tube: A outside, C high.",
		},
		{ range: "M11:M30", list: ["face up", "face down"] },
		{
			range: "N11:N30",
			list: [
				"front left",
				"front right",
				"back left",
				"back right",
				"front",
				"back",
				"left",
				"right",
			],
			help: "Of the finished piece, in place, seen from above: the corner of an L's notch, the side of a U's. A goes from left to right, B from front to back.",
		},
		{ range: "C34:C45", list: ["rectangle", "round", "oval"] },
	],
};
