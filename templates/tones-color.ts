import type { Block } from "../src/template/plan";
import { whileIntact } from "./intact";
import { TONES } from "./tones-table";

/** What the tones look like by the studio's swatches, and whether they can be told apart. */
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
];
