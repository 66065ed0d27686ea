import type { Block } from "../src/template/plan";
import { whileIntact } from "./intact";

/** All columns of the Job tab. */
const TAB = ["$A$1:$AM$1"];

const FLAT = '((C11:C30="basin")+(C11:C30="tube")>0)';

/** Words for carrying a piece, by what would break it. */
const CARRY = `=ARRAYFORMULA(IF(ISNUMBER(U11:U30);IF(${FLAT};"by its floor and walls, not by the rim";"on edge"&IF(COUNTIF($A$34:$A$45;A11:A30)>0;", openings stiffened by a bar across";IF((C11:C30="L")+(C11:C30="U")>0;", notch stiffened by a bar across";"")))&IF(ISNUMBER(Z11:Z30);IF(Z11:Z30*2>1;"; flat on a board only";"");"")&IF(ISNUMBER(X11:X30);IF(X11:X30>IF($O$6="";{studio:crew};$O$6);"; more than the crew";"");"");""))`;

const columns = (formats: readonly string[]) =>
	formats as NonNullable<Block["formats"]>;

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
	{ at: "B10", look: "heading", size: [1, 1], align: "right" },
	{ at: "L10", look: "heading", size: [1, 1], align: "right" },
	{ at: "P10", look: "heading", size: [1, 11], align: "right" },
	{
		at: "A11",
		look: "input",
		size: [20, 11],
		name: "pieces",
		formats: columns(["text", "whole", ...Array<string>(9).fill("text")]),
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
		at: "X11",
		look: "result",
		size: [20, 1],
		rows: [
			[
				'=IF(ISERROR(AK11);AK11;ARRAYFORMULA(IF(AK11:AK30="lifting equipment";"equipment";IF(AK11:AK30="";"";AK11:AK30))))',
			],
		],
		formats: "text",
		align: "right",
		slot: "people",
	},
	{
		at: "Y11",
		look: "result",
		size: [20, 1],
		rows: [
			[
				'=IF(ISERROR(AJ11);AJ11;IF(OR(COUNT(AJ11:AJ30)=0;{job}density="");"";SELF_WEIGHT_STRESS(AJ11:AJ30;ARRAYFORMULA(IF(ISNUMBER(AJ11:AJ30);H11:H30;""));{job}density;"ends";1;{studio:units})))',
			],
		],
		formats: "number",
	},
	{
		at: "Z11",
		look: "result",
		size: [20, 1],
		rows: [
			[
				'=IF(ISERROR(Y11);Y11;ARRAYFORMULA(IF(ISNUMBER(Y11:Y30);Y11:Y30/{studio:flexural};"")))',
			],
		],
		formats: "share",
		slot: "stress_shares",
	},
	{ at: "AA11", look: "result", size: [20, 1], rows: [[CARRY]] },
	{
		at: "AC11",
		look: "result",
		size: [20, 5],
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
	{
		at: "AK11",
		look: "result",
		size: [20, 1],
		rows: [
			[
				'=IF(ISERROR(U11);U11;IF(COUNT(U11:U30)=0;"";PEOPLE_TO_LIFT(U11:U30;{studio:one_person})))',
			],
		],
	},
	{
		at: "AJ11",
		look: "result",
		size: [20, 1],
		rows: [
			[
				`=IF(ISERROR(AH11);AH11;ARRAYFORMULA(IF(${FLAT}+(C11:C30="area")+(A11:A30="")>0;"";AH11:AH30)))`,
			],
		],
	},
	{
		at: "A31",
		look: "caution",
		rows: [
			[
				"Weights and stress are of a plain, cured slab: fresh from the mold it is weaker. Lift with clear room and one person calling. Local rules and a licensed engineer come first.",
			],
		],
	},
];
