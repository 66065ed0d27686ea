import type { Tab } from "../src/template/plan";
import { hintOrMoved } from "./intact";
import { colorBlocks } from "./tones-color";
import { doseBlocks } from "./tones-doses";
import { foldingBlocks } from "./tones-folding";
import { layUpBlocks } from "./tones-layup";
import { mixBlocks } from "./tones-mix";
import { pigmentBlocks } from "./tones-pigments";
import { sampleBlocks } from "./tones-sample";
import { TONES, toneBlocks } from "./tones-table";

/** The mix, its tones and the pigment they take. */
export const tones: Tab = {
	name: "Tones",
	color: "#8a5a2b",
	rows: 112,
	widths: [
		180,
		180,
		...Array<number>(14).fill(92),
		340,
		...Array<number>(24).fill(100),
	],
	frozenRows: 1,
	frozenColumns: 1,
	hidden: 24,
	blocks: [
		{ at: "A1", look: "title", rows: [['="Tones · "&{job}title']] },
		{
			at: "A2",
			look: "note",
			rows: [
				[
					hintOrMoved(
						TONES,
						"Type in the tinted cells. Shares are of the whole batch; in a mold lay-up, of the toned face.",
					),
				],
			],
		},
		{
			at: "A3",
			look: "label",
			rows: [
				["Mix"],
				["Finish"],
				["Sealing"],
				["Dry or damp"],
				["Bucket or lay-up"],
				["Toned face, {length}"],
				["Backed with"],
				["Sample approved"],
				["Look, your words"],
			],
		},
		{ at: "B3", look: "input", size: [9, 3], formats: "text" },
		{ at: "B3", look: "input", size: [1, 1], formats: "text", slot: "mix" },
		{ at: "B4", look: "input", rows: [["cast"]], slot: "finish" },
		{ at: "B5", look: "input", rows: [["bare"]], slot: "sealing" },
		{ at: "B6", look: "input", rows: [["dry"]], slot: "state" },
		{ at: "B7", look: "input", rows: [["bucket fold"]], slot: "way" },
		{
			at: "B8",
			look: "input",
			size: [1, 1],
			formats: "length",
			slot: "face_depth",
		},
		{ at: "B9", look: "input", size: [1, 1], formats: "text", slot: "backing" },
		{
			at: "B10",
			look: "input",
			size: [1, 1],
			formats: "text",
			slot: "sample_number",
		},
		{
			at: "B11",
			look: "input",
			size: [1, 1],
			formats: "text",
			slot: "look_words",
		},
		{
			at: "F3",
			look: "label",
			rows: [
				["Binder in fresh mix"],
				["Fresh density, {density}"],
				["Water over binder"],
				["Cement in binder"],
				["Dry mix to binder"],
				["Vessels to dose in"],
				["Toned face in the mix"],
				["Water in the pigment, of the mix"],
				["Look, as the quote says it"],
			],
		},
		{
			at: "J8",
			look: "result",
			rows: [["={at:Pour card.vessels}"]],
			formats: "whole",
			slot: "vessels",
		},
		{
			at: "J9",
			look: "result",
			rows: [
				[
					'=IF(OR(B8="";{at:Job.volume_total}=0);"";MIN(1;{at:Job.finish_area}*READ_LENGTH(B8;{studio:units})/IF({studio:units}="us";12;1)/{at:Job.volume_total}))',
				],
			],
			formats: "share",
			slot: "face_share",
		},
		{
			at: "J10",
			look: "result",
			rows: [
				[
					'=IF(LEFT(B12;4)="Look";"Look: see below";IF(OR(J3="";COUNT(AA16:AD21)=0);0;J3*SUM(ARRAYFORMULA(IF(ISNUMBER(AA16:AD21)*ISNUMBER(T16:T21);(AA16:AD21-U16:X21)*T16:T21;0)))/SUM(T16:T21)))',
				],
			],
			formats: "share",
			slot: "pigment_water",
		},
		{
			at: "J11",
			look: "result",
			rows: [
				[
					'=IF(B11<>"";B11;IF(SUM(B16:B21)=0;"";TEXTJOIN(", ";TRUE;ARRAYFORMULA(IF(ISNUMBER(B16:B21);A16:A21&" "&ROUND(B16:B21/SUM(B16:B21)*100;0)&"%";"")))&"; "&IF(COUNT(B16:B21)<2;"";IF(B7="mold lay-up";"laid up in the mold, ";"folded by hand, "))&B4&" finish"&IF(B5="sealed";", sealed";"")))',
				],
			],
			slot: "look",
		},
		...toneBlocks,
		...pigmentBlocks,
		...doseBlocks,
		...colorBlocks,
		...layUpBlocks,
		...foldingBlocks,
		...sampleBlocks,
		...mixBlocks,
		{ at: "A63", look: "caution", rows: [["Cautions"]] },
		{
			at: "A64",
			look: "note",
			rows: [
				[
					"Pigment and cement dust: measure out with extraction or a fitted respirator, and wet down spills. The data sheet of the actual pigment comes before any number here.",
				],
				[
					"A dose above what its maker allows weakens the piece; fiber-rich mixes stiffen early with strong doses: cast a sample first.",
				],
			],
		},
	],
	choices: [
		{ range: "C14:F14", from: "{at:Pigments.names}" },
		{ range: "B3", from: "{at:Mixes.names}" },
		{ range: "B4", list: ["cast", "honed", "polished"] },
		{ range: "B5", list: ["bare", "sealed"] },
		{ range: "B6", list: ["dry", "damp"] },
		{ range: "B7", list: ["bucket fold", "mold lay-up"] },
	],
};
