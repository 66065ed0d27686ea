import type { Block } from "../src/template/plan";
import { whileIntact } from "./intact";

/** All columns of the Job tab. */
const TAB = ["$A$1:$AM$1"];

/** The pieces: what is typed of them, and everything that follows for one of each. */
export const pieceBlocks: readonly Block[] = [
	{ at: "A9", look: "total", rows: [["Pieces"]] },
	{
		at: "C9",
		look: "note",
		rows: [
			[
				"Seen from above, in place: A from left to right, B from front to back. Notch and drop edge as they are finished, not as in the mold.",
			],
		],
	},
	{
		at: "A10",
		look: "heading",
		wrap: true,
		rows: [
			[
				"Piece",
				"Qty",
				"Shape",
				"A",
				"B",
				"C",
				"D",
				"Thickness",
				"Drop height",
				"Drop run",
				"Drop thickness",
				"Drop as seen, {length}",
				"Cast",
				"Notch at",
				"Drop edge on",
				"Face, {area}",
				"Edge, {length}",
				"Volume, {volume}",
				"To finish, {area}",
				"Volume for all, {volume}",
				"Weight of one, {mass}",
				"Mix for all, {mass}",
				"Longest side, {length}",
				"People, or equipment",
				"Carried flat, {stress}",
				"Share of its strength",
				"How to carry it (wet or green: more care still)",
				"",
				"In the mold, seen from above",
				"Notch in the mold, {length}",
				"Sides in the mold, {length}",
				"Drop edge in the mold",
				"Cutouts in the mold",
			],
		],
	},
	{
		at: "A11",
		look: "input",
		size: [20, 11],
		name: "pieces",
		formats: ["text", "whole", ...Array<"text">(9).fill("text")],
	},
	{ at: "A11", look: "input", size: [20, 1], slot: "piece_names" },
	{ at: "B11", look: "input", size: [20, 1], slot: "quantities" },
	{
		at: "L11",
		look: "result",
		size: [20, 1],
		rows: [
			[
				'=IF(ISERROR(AH11);AH11;ARRAYFORMULA(IF(ISNUMBER(AI11:AI30)*(I11:I30<>"");AI11:AI30;"")))',
			],
		],
		formats: "length",
	},
	{ at: "M11", look: "input", size: [20, 3], formats: "text" },
	{ at: "M11", look: "input", size: [20, 1], slot: "faces" },
	{ at: "N11", look: "input", size: [20, 1], slot: "notches" },
	{ at: "O11", look: "input", size: [20, 1], slot: "drop_sides" },
	{
		at: "P11",
		look: "result",
		size: [20, 5],
		rows: [
			[
				whileIntact(
					TAB,
					'=IF(COUNTA(A11:A30)=0;"";PIECE_TAKEOFF({job}pieces;IF(COUNTA(A34:E45)=0;"";A34:E45);{studio:units}))',
				),
			],
		],
		formats: ["area", "length", "volume", "area", "volume"],
	},
	{ at: "S11", look: "result", size: [20, 1], slot: "finish_areas" },
	{
		at: "U11",
		look: "result",
		size: [20, 1],
		rows: [
			[
				'=IF(ISERROR(P11);P11;IF(ISERROR({job}density);{job}density;IF(OR(COUNT(R11:R30)=0;{job}density="");"";ARRAYFORMULA(IF(ISNUMBER(R11:R30);R11:R30*{job}density/IF({studio:units}="metric";1000;1);"")))))',
			],
		],
		formats: "mass",
		slot: "weights",
	},
	{
		at: "V11",
		look: "result",
		size: [20, 1],
		rows: [
			[
				'=IF(ISERROR(U11);U11;ARRAYFORMULA(IF(ISNUMBER(U11:U30);U11:U30*B11:B30*(1+$C$8);"")))',
			],
		],
		formats: "mass",
	},
	{
		at: "W11",
		look: "result",
		size: [20, 1],
		rows: [
			[
				'=IF(ISERROR(AH11);AH11;ARRAYFORMULA(IF(ISNUMBER(AH11:AH30)*(A11:A30<>"");AH11:AH30;"")))',
			],
		],
		formats: "length",
		slot: "longest_sides",
	},
	{
		at: "AC11",
		look: "result",
		size: [20, 5],
		// a width of 58 1/4 cut off after 58 builds the wrong mold
		wrap: true,
		rows: [
			[
				whileIntact(
					TAB,
					'=IF(COUNTA(A11:A30)=0;"";MOLD_PLAN({job}pieces;M11:O30;IF(COUNTA(A34:A45)=0;"";A34:A45);{studio:units}))',
				),
			],
		],
		slot: "mold_plan",
	},
	{
		at: "AH11",
		look: "result",
		size: [20, 2],
		rows: [
			[
				whileIntact(
					TAB,
					'=IF(COUNTA(A11:A30)=0;"";PIECE_SIZE({job}pieces;{studio:units}))',
				),
			],
		],
	},
];
