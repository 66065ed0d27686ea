import type { Block } from "../src/template/plan";

/** Formers in the mold, and what keeps each from floating in fluid mix. */
export const knockoutBlocks: readonly Block[] = [
	{ at: "G32", look: "total", rows: [["Knockouts"]] },
	{
		at: "I32",
		look: "note",
		rows: [
			[
				"Forms that keep mix out, by volume or by A × B × depth below the mix. Held with: what screws, weights or bars hold down, for each.",
			],
		],
	},
	{
		at: "G33",
		look: "heading",
		wrap: true,
		rows: [
			[
				"In piece",
				"What",
				"Volume, {volume}",
				"A",
				"B",
				"Depth",
				"Own mass, {mass}",
				"Each",
				"Held with, {mass}",
				"Volume, {volume}",
				"Upward for all, {mass}",
				"Hold each with, {mass}",
				"",
			],
		],
	},
	{
		at: "G34",
		look: "input",
		size: [8, 9],
		slot: "knockouts",
		formats: [
			"text",
			"text",
			"number",
			"text",
			"text",
			"text",
			"number",
			"whole",
			"number",
		],
	},
	{ at: "G34", look: "input", size: [8, 2], wrap: true },
	{
		at: "P34",
		look: "result",
		size: [8, 1],
		rows: [
			[
				'=IF(ISERROR(AK34);AK34;ARRAYFORMULA(IF(ISNUMBER(I34:I41);I34:I41;IF(ISNUMBER(AK34:AK41);AK34:AK41;""))))',
			],
		],
		formats: "volume",
	},
	{
		at: "Q34",
		look: "result",
		size: [8, 1],
		rows: [
			[
				'=IF(ISERROR(R34);R34;ARRAYFORMULA(IF(ISNUMBER(R34:R41);R34:R41*IF(N34:N41="";1;N34:N41);"")))',
			],
		],
		formats: "mass",
	},
	{
		at: "R34",
		look: "result",
		size: [8, 1],
		rows: [
			[
				'=IF(ISERROR(P34);P34;IF(OR(COUNT(P34:P41)=0;{job}density="");"";UPLIFT(P34:P41;{job}density;ARRAYFORMULA(IF(ISNUMBER(P34:P41);IF(ISNUMBER(M34:M41);M34:M41;0);""));{studio:units})))',
			],
		],
		formats: "mass",
		slot: "uplift",
	},
	{
		at: "S34",
		look: "result",
		size: [8, 1],
		rows: [
			[
				'=ARRAYFORMULA(IF((G34:G41&H34:H41&O34:O41="")*NOT(ISNUMBER(P34:P41));"";IF(ISNUMBER(P34:P41);IF(ISNUMBER(R34:R41);IF(R34:R41>IF(ISNUMBER(O34:O41);O34:O41;0);"Look: it would float";"stays down");"");"Look: how large is it?")))',
			],
		],
		slot: "knockout_verdicts",
	},
	{
		at: "AK34",
		look: "result",
		size: [8, 1],
		rows: [
			[
				'=IF(COUNTA(J34:L41)=0;"";SLAB_VOLUME(J34:J41;K34:K41;L34:L41;{studio:units}))',
			],
		],
	},
	{
		at: "G42",
		look: "note",
		rows: [
			[
				"The upward mass is the least that holds it in still mix: hold with more where it is vibrated or poured from a height.",
			],
		],
	},
];
