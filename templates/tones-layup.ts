import type { Block } from "../src/template/plan";
import { GRAMS, LETTERS } from "./tones-table";

const DRY = ["U", "V", "W", "X"];

/** Grams as bought of a pigment for the whole job, all of the mix toned. */
const bucketGrams = (letter: string, dry: string) =>
	`=IF(OR(${letter}14="";{job}mix_total=0;SUM(B16:B21)=0);"";{job}mix_total*{job}binder*${GRAMS}*SUM(ARRAYFORMULA(IF(ISNUMBER(${dry}16:${dry}21)*ISNUMBER(B16:B21);${dry}16:${dry}21*B16:B21;0)))/SUM(B16:B21)/${letter}24)`;

/** The same when the face alone is toned and one tone backs it. */
const layUpGrams = (letter: string, dry: string) =>
	`=IF(OR(${letter}31="";J9="";COUNTIF(A16:A21;B9)=0);"";J9*${letter}31+(1-J9)*SUMIF(A16:A21;B9;${dry}16:${dry}21)*{job}mix_total*{job}binder*${GRAMS}/${letter}24)`;

const costOf = (row: number) =>
	`=IF(COUNT(C${row}:F${row})=0;"";IF(SUM(ARRAYFORMULA(IF(ISNUMBER(C${row}:F${row});IF(C${row}:F${row}>0;IF(ISNUMBER(C27:F27);0;1);0);0)))>0;"";SUM(ARRAYFORMULA(IF(ISNUMBER(C${row}:F${row})*ISNUMBER(C27:F27);C${row}:F${row}*C27:F27;0)))))`;

/** What pigment the two ways of using the tones take: all of the mix toned, or a face of some depth. */
export const layUpBlocks: readonly Block[] = [
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
];
