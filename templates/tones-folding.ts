import type { Block } from "../src/template/plan";

/** How fine folding makes the bands, and what is seen of them from afar. */
export const foldingBlocks: readonly Block[] = [
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
