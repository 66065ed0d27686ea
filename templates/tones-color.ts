import type { Block } from "../src/template/plan";
import { whileIntact } from "./intact";
import { GRAMS, TONES } from "./tones-table";

const LETTERS = ["C", "D", "E", "F"];
const DRY = ["U", "V", "W", "X"];

/** Grams as bought of a pigment for the whole job, all of the mix toned. */
const bucketGrams = (letter: string, dry: string) =>
	`=IF(OR(${letter}14="";{job}mix_total=0;SUM(B16:B21)=0);"";{job}mix_total*{job}binder*${GRAMS}*SUM(ARRAYFORMULA(IF(ISNUMBER(${dry}16:${dry}21)*ISNUMBER(B16:B21);${dry}16:${dry}21*B16:B21;0)))/SUM(B16:B21)/${letter}24)`;

/** The same when the face alone is toned and one tone backs it. */
const layUpGrams = (letter: string, dry: string) =>
	`=IF(OR(${letter}31="";J9="";COUNTIF(A16:A21;B9)=0);"";J9*${letter}31+(1-J9)*SUMIF(A16:A21;B9;${dry}16:${dry}21)*{job}mix_total*{job}binder*${GRAMS}/${letter}24)`;

const costOf = (row: number) =>
	`=IF(COUNT(C${row}:F${row})=0;"";IF(SUM(ARRAYFORMULA(IF(ISNUMBER(C${row}:F${row});IF(C${row}:F${row}>0;IF(ISNUMBER(C27:F27);0;1);0);0)))>0;"";SUM(ARRAYFORMULA(IF(ISNUMBER(C${row}:F${row})*ISNUMBER(C27:F27);C${row}:F${row}*C27:F27;0)))))`;

/** What the tones look like, and what the two ways of using them take. */
export const colorBlocks: readonly Block[] = [
	{
		at: "N16",
		look: "result",
		size: [6, 1],
		slot: "expected",
		rows: [
			['=IF(ISERROR(AE16);AE16;ARRAYFORMULA(IF(AE16:AE21="";"";AE16:AE21)))'],
		],
	},
	{
		at: "O16",
		look: "result",
		size: [6, 1],
		rows: [['=ARRAYFORMULA(IF(AG16:AG21="";"";AG16:AG21))']],
	},
	{
		at: "P16",
		look: "result",
		size: [6, 1],
		slot: "differences",
		rows: [['=ARRAYFORMULA(IF(AH16:AH21="";"";AH16:AH21))']],
		formats: "temperature",
	},
	{
		at: "Q16",
		look: "result",
		size: [6, 1],
		slot: "told_apart",
		rows: [
			[
				'=ARRAYFORMULA(IF(A16:A21="";"";IF(ISNUMBER(M16:M21)*(M16:M21<0);"Look: over the pigment limit";IF(AF16:AF21<>"";"no color: "&AF16:AF21;IF(ISNUMBER(AH16:AH21);IF(AH16:AH21<2;"Look: hard to tell from "&AG16:AG21;IF(AH16:AH21<5;"seen close by, lost across the room";"stands apart across the room"));"")))))',
			],
		],
	},
	{
		at: "AE16",
		look: "result",
		size: [6, 5],
		rows: [
			[
				whileIntact(
					[TONES],
					'=IF(COUNTA(B16:B21)=0;"";EXPECTED_COLORS(S16:X21;{job}pigments;B3:B6;{at:Swatches.kinds};{at:Swatches.doses};{at:Swatches.swatch_pigments};{at:Swatches.colors}))',
				),
			],
		],
	},
	{
		at: "N22",
		look: "result",
		slot: "swatches_used",
		rows: [
			[
				'=IF(ISERROR(AE16);AE16;IF(AI16="";"";IF(COUNTA({at:Swatches.colors})=0;"No swatch has a color yet: cast samples and note them on the Swatches tab";AI16)))',
			],
		],
	},
	{
		at: "N23",
		look: "note",
		rows: [
			[
				"By CIEDE2000: half of people see 0.8 and accept 1.8 (Paravina and others, 2015).",
			],
			["The words change at 2 and at 5: common practice, no source."],
		],
	},
	{ at: "A29", look: "total", rows: [["Bucket fold or mold lay-up"]] },
	{
		at: "A30",
		look: "heading",
		rows: [
			[
				"As bought, g",
				"Mix toned",
				...LETTERS.map((letter) => `=IF(${letter}14="";"";${letter}14)`),
				"Total, g",
				"Cost",
			],
		],
	},
	{ at: "B30", look: "heading", size: [1, 7], align: "right" },
	{
		at: "A31",
		look: "label",
		rows: [["Bucket fold"], ["Mold lay-up"], ["Lay-up saves"]],
	},
	{
		at: "B31",
		look: "result",
		rows: [
			[
				'=IF(COUNTA(B16:B21)=0;"";1)',
				...LETTERS.map((letter, i) => bucketGrams(letter, DRY[i] ?? "")),
				'=IF(COUNT(C31:F31)=0;"";SUM(C31:F31))',
				costOf(31),
			],
			[
				"=J9",
				...LETTERS.map((letter, i) => layUpGrams(letter, DRY[i] ?? "")),
				'=IF(COUNT(C32:F32)=0;"";SUM(C32:F32))',
				costOf(32),
			],
			[
				"",
				...[...LETTERS, "G", "H"].map(
					(letter) =>
						`=IF(ISNUMBER(${letter}31)*ISNUMBER(${letter}32);${letter}31-${letter}32;"")`,
				),
			],
		],
		formats: [
			"share",
			"pigment",
			"pigment",
			"pigment",
			"pigment",
			"pigment",
			"money",
		],
	},
	{
		at: "I31",
		look: "note",
		rows: [
			["All of the mix is toned in buckets and folded."],
			[
				"Faces, edges and drops are toned to the depth typed above; one tone backs the rest.",
			],
		],
	},
	{ at: "A35", look: "total", rows: [["Folds"]] },
	{
		at: "A36",
		look: "label",
		rows: [
			["Bands at first, {length}"],
			["Folds"],
			["Bands after, {length}"],
			["Seen from, {length}"],
			["Folds until they blur"],
			["Color across the room"],
		],
	},
	{
		at: "B36",
		look: "input",
		size: [1, 1],
		formats: "length",
		slot: "band_start",
		align: "right",
	},
	{
		at: "B37",
		look: "input",
		size: [1, 1],
		formats: "whole",
		slot: "folds",
	},
	{
		at: "B38",
		look: "result",
		rows: [['=IF(OR(B36="";B37="");"";BAND_WIDTH(B36;B37;{studio:units}))']],
		formats: "number",
		slot: "band_width",
	},
	{
		at: "B39",
		look: "input",
		size: [1, 1],
		formats: "length",
		slot: "seen_from",
		align: "right",
	},
	{
		at: "B40",
		look: "result",
		rows: [
			['=IF(OR(B36="";B39="");"";FOLDS_UNTIL_BLURRED(B36;B39;{studio:units}))'],
		],
		formats: "whole",
		slot: "folds_until_blurred",
	},
	{
		at: "B41",
		look: "result",
		rows: [
			[
				'=IF(ISERROR(AE16);AE16;IF(COUNTIF(N16:N21;"#*")=0;"";IF(SUM(ARRAYFORMULA(IF(ISNUMBER(B16:B21);IF((B16:B21>0)*(N16:N21="");1;0);0)))>0;"needs every tone";FAR_COLOR(N16:N21;ARRAYFORMULA(IF(N16:N21="";"";IF(ISNUMBER(B16:B21);B16:B21;0)))))))',
			],
		],
		align: "right",
		slot: "far_color",
	},
	{
		at: "C37",
		look: "note",
		rows: [
			["Each fold halves the bands."],
			["At the finest: hands and fibers leave them wider."],
			[""],
			["Hue alone blurs a fold sooner."],
		],
	},
];
