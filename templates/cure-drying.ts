import type { Block } from "../src/template/plan";

/** What a person reads on pour day about water leaving the face. */
export const dryingBlocks: readonly Block[] = [
	{ at: "A44", look: "total", rows: [["Drying while it is fresh"]] },
	{
		at: "A45",
		look: "label",
		rows: [
			["Air temperature, {temperature}"],
			["Humidity"],
			["Mix temperature, {temperature}"],
			["Wind over the face, {wind}"],
			["Mix bleeds water"],
			["Evaporation, {evaporation}"],
			["Could be, at ±40%, from and to"],
			["Drying"],
		],
	},
	{
		at: "B45",
		look: "input",
		size: [4, 1],
		formats: "number",
		slot: "air_now",
		once: true,
		align: "right",
	},
	{ at: "B46", look: "input", size: [1, 1], formats: "share" },
	{ at: "B49", look: "input", rows: [["no"]], formats: "text", align: "right" },
	{
		at: "B50",
		look: "result",
		rows: [
			[
				'=IF(COUNTA(B45:B48)=0;"";EVAPORATION_RATE(B45;B46;B47;B48;{studio:units}))',
			],
			['=IF(ISERROR(B50);B50;IF(B50="";"";MIN(B50*6/10;B50*14/10)))'],
		],
		formats: "number",
	},
	{
		at: "C51",
		look: "result",
		rows: [['=IF(ISERROR(B50);B50;IF(B50="";"";MAX(B50*6/10;B50*14/10)))']],
		formats: "number",
	},
	{
		at: "B52",
		look: "result",
		rows: [
			[
				'=IF(ISERROR(B50);"Look: the evaporation shows an error: point at it to read why";IF(B50="";"not known: type today\'s air";IF(B50>=J12;"Look: too fast: cover at once, keep wind and sun off, mist, cool the mix";IF(C51>=J12;"Look: within its ±40% it may be too fast: cover as soon as it is placed";"fine"))))',
			],
		],
	},
	{
		at: "A53",
		look: "note",
		rows: [
			[
				'="Precautions from "&J12&" {evaporation} on: "&IF(B49="yes";"ACI 305R.";"common practice for mixes with fiber that do not bleed, half of what ACI 305R names.")',
			],
		],
	},
	{
		at: "J12",
		look: "result",
		rows: [
			['=IF({studio:units}="us";IF(B49="yes";2/10;1/10);IF(B49="yes";1;1/2))'],
			['=IF(LEFT(B52;5)="Look:";B52;"fine")'],
		],
	},
	{ at: "J13", look: "result", size: [1, 1], slot: "drying" },
];
