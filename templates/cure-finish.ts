import type { Block } from "../src/template/plan";
import { whileIntact } from "./intact";

/** Columns of the pigments in the paste. */
const PIGMENTS = ["$B$1:$E$1"];

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

/** Sealer, when to put it on, and paste in the color of the tones together. */
export const finishBlocks: readonly Block[] = [
	{ at: "A55", look: "total", rows: [["Seal on a reading, not on a date"]] },
	{
		at: "A56",
		look: "label",
		rows: [
			["Limit, from the sealer's data sheet"],
			["Moisture reading, same scale"],
			["Dry enough"],
			["To seal, {area}"],
			["Left in pots and rollers"],
			["Sealer for all coats, {coating}"],
		],
	},
	{
		at: "B56",
		look: "input",
		size: [2, 1],
		formats: "number",
		slot: "moisture",
		once: true,
		align: "right",
	},
	{
		at: "B58",
		look: "result",
		rows: [
			[
				'=IF(COUNTA(B56:B57)=0;"not known: type limit and reading";IF(COUNT(B56:B57)<2;"Look: type both numbers, limit and reading";IF(B57>B56;"Look: too damp to seal: air on both faces, read again";"by this reading, yes")))',
			],
			["={at:Job.finish_area}"],
		],
		formats: "area",
	},
	{
		at: "B60",
		look: "input",
		rows: [[0.1]],
		formats: "share",
		slot: "sealer_waste",
	},
	{
		at: "B61",
		look: "total",
		rows: [
			[
				'=IF(ISERROR(B59);B59;IF(N(B59)=0;"";COATING_AMOUNT(B59;{studio:sealer_coverage};{studio:sealer_coats};B60;{studio:units})))',
			],
		],
		formats: "coating",
		slot: "sealer",
	},
	{ at: "A63", look: "total", rows: [["Paste for voids"]] },
	{
		at: "A64",
		look: "label",
		rows: [["Wiped off and left over"], ["Paste, {volume}"], ["Paste, {mass}"]],
	},
	{
		at: "B64",
		look: "input",
		rows: [[0.3]],
		formats: "share",
		slot: "paste_waste",
	},
	{
		at: "B65",
		look: "result",
		rows: [
			[
				'=IF(ISERROR(B59);B59;IF(N(B59)=0;"";VOID_FILL(B59;{studio:void_share};{studio:void_depth};{studio:skim};B64;{studio:units})))',
			],
		],
		formats: "volume",
	},
	{
		at: "B66",
		look: "total",
		rows: [
			[
				'=IF(ISERROR(B65);B65;IF(ISERROR({job}density);{job}density;IF((B65="")+({job}density="")>0;"";B65*{job}density/IF({studio:units}="us";1;1000))))',
			],
		],
		formats: "mass",
		slot: "paste",
	},
	{
		at: "A67",
		look: "label",
		rows: [
			["Pigment in it, for the color of all tones"],
			["Mean dose of binder"],
			["Dry, g"],
			["As bought, g"],
		],
	},
	{
		at: "B67",
		look: "result",
		size: [1, 4],
		rows: [
			[
				whileIntact(
					PIGMENTS,
					'=ARRAYFORMULA(IF({job}pigments="";"";{job}pigments))',
				),
			],
		],
		align: "right",
	},
	{
		at: "B68",
		look: "result",
		size: [1, 4],
		rows: [
			[
				whileIntact(
					PIGMENTS,
					'=IF(ISERROR({job}binder);{job}binder;IF(SUM(INDEX({at:Tones.typed_tones};0;2))=0;"";ARRAYFORMULA(IF({job}pigments="";"";MMULT(TRANSPOSE(IF(ISNUMBER(INDEX({at:Tones.typed_tones};0;2));INDEX({at:Tones.typed_tones};0;2);0));IF(ISNUMBER({at:Tones.dry_doses});{at:Tones.dry_doses};0))/SUM(INDEX({at:Tones.typed_tones};0;2))))))',
				),
			],
		],
		formats: "share",
	},
	{
		at: "B69",
		look: "result",
		size: [1, 4],
		rows: [
			[
				whileIntact(
					PIGMENTS,
					'=IF(ISERROR(B66);B66;IF((N(B66)=0)+(COUNT(B68:E68)=0)>0;"";TRANSPOSE(PIGMENT_GRAMS(B66;{job}binder;B68:E68;{studio:units}))))',
				),
			],
		],
		formats: "pigment",
	},
	{
		at: "B70",
		look: "total",
		size: [1, 4],
		rows: [
			[
				whileIntact(
					PIGMENTS,
					'=IF(ISERROR(B69);B69;ARRAYFORMULA(IF(ISNUMBER(B69:E69);B69:E69/{at:Tones.solids};"")))',
				),
			],
		],
		formats: "pigment",
		slot: "paste_pigment",
	},
	{
		at: "A71",
		look: "note",
		rows: [
			[
				"The paste is this mix without fiber, weighed as if with it. Try its color on the sample first: a filled void cures darker or lighter than the face.",
			],
		],
	},
];

/** How the pieces lie while they harden, and what harms hands, lungs and drains. */
export const practiceBlocks: readonly Block[] = [
	{ at: "A73", look: "total", rows: [["While it cures"]] },
	{
		at: "A74",
		look: "note",
		rows: [
			[
				"Common practice: raised on strips that do not absorb, covered until it may dry, then air on both faces, so that it neither curls nor marks.",
			],
			["Not in sun, draft or frost; do not stack; turn thin slabs on edge."],
		],
	},
	{ at: "A77", look: "caution", rows: [["Cautions"]] },
	{
		at: "A78",
		look: "note",
		rows: [
			[
				"Silica dust: grind and polish wet; exposure limits of 29 CFR 1926.1153 (construction) and 1910.1053 (shops). Dry sweeping brings it back.",
			],
			[
				"Wash and polishing water is caustic: it burns skin and eyes and does not go down a drain.",
			],
			[
				"Sealer vapor: air through, the respirator of its data sheet, no flame or spark.",
			],
			["Powered wet tools on a ground-fault interrupter (GFCI)."],
			[
				"Local codes, the data sheet of the actual material and a licensed engineer come before any number here.",
			],
		],
	},
];
