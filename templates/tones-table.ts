import type { Block } from "../src/template/plan";

/** All columns of the tab. */
export const TONES = "$A$1:$AO$1";

/** Grams in the unit that mix is weighed in, without a decimal; 1 lb is 0.45359237 kg exactly. */
export const GRAMS = 'IF({studio:units}="us";45359237/100000;1000)';

/** Columns of the pigments. */
export const LETTERS = ["C", "D", "E", "F"];

/** Weights are there that follow the plan as it is. */
const FROZEN =
	'IF(COUNT({at:Pour card.mixed};{at:Pour card.reserve_weights};{at:Pour card.weights})>0;"Weights are typed on the Pour card: a change here makes another plan, and the card will say so.";"fine")';

/** Whether a typed dose or share cannot be; such a cell goes on as it is, for the function that names it. */
const BAD_DOSES =
	'COUNTA(C16:F21)-COUNT(C16:F21)+COUNTIF(C16:F21;">1")+COUNTIF(C16:F21;"<0")>0';

/** The tones as typed, and what they come to. */
export const toneBlocks: readonly Block[] = [
	{
		at: "B12",
		look: "result",
		slot: "tones_check",
		rows: [
			[
				`=IF(ISERROR(A49);"Look: a column was put in or taken out here or on the Mixes tab: undo that";IF(B3="";"Choose the mix.";IF(COUNT(B49:B60)=0;"Look: there is no mix of this name on the Mixes tab";IF(COUNTA(A16:A21)=0;"Name the tones, and give each its share and doses.";IF(${BAD_DOSES};"Look: a dose is not between 0% and 100%: type 4% or 4/100";IF(COUNTA(B16:B21)-COUNT(B16:B21)+COUNTIF(B16:B21;"<0")>0;"Look: a share is not a number of 0 or more: type 40% or 4/10";IF(SUM(ARRAYFORMULA(IF((C16:F21<>"")*(C14:F14="");1;0)))>0;"Look: a dose stands under no pigment: name it above";IF(COUNTA(C14:F14)>COUNT(C23:F23);"Look: a pigment is not on the Pigments tab: add it there";IF(COUNTIF(C24:F26;"Look*")>0;"Look: what the Pigments tab says of a pigment cannot be: see the rows under the tones";IF((B7<>"bucket fold")*(B7<>"mold lay-up")*(B7<>"");"Look: choose bucket fold or mold lay-up";IF(B7<>"mold lay-up";${FROZEN};IF(B8="";"Look: type how deep the toned face is";IF(COUNTIF(A16:A21;B9)=0;"Look: choose the tone that backs it";${FROZEN})))))))))))))`,
			],
		],
	},
	{ at: "A12", look: "label", rows: [["Check"]] },
	{ at: "A13", look: "total", rows: [["Tones"]] },
	{
		at: "B13",
		look: "note",
		rows: [
			[
				"Name each pigment in the tinted cells; type doses as its maker states them: of what is said under its name.",
			],
		],
	},
	{ at: "A14", look: "heading", rows: [["Tone", "Share"]] },
	{
		at: "C14",
		look: "input",
		size: [1, 4],
		formats: "text",
		name: "pigments",
		align: "right",
	},
	{
		at: "G14",
		look: "heading",
		wrap: true,
		rows: [
			[
				"Undosed mix, {mass}",
				"On the scale, {mass}",
				...LETTERS.map((letter) => `=IF(${letter}14="";"";${letter}14&", g")`),
				"Below the limit by",
				"Expected color",
				"Most like",
				"Differs by",
				"Told apart",
			],
		],
	},
	{
		at: "A16",
		look: "input",
		size: [6, 6],
		slot: "typed_tones",
		formats: ["text", "share", "share", "share", "share", "share"],
	},
	{
		at: "G16",
		look: "result",
		size: [6, 6],
		slot: "tone_weights",
		rows: [
			[
				'=IF(OR({job}mix_total=0;COUNTA(B16:B21)=0;J3="");"";IF(ISERROR(J10);J10;TONE_WEIGHTS({at:Tones.dosed};{job}pigments;{job}mix_total*(1-N(J10));{job}binder/(1-N(J10));{studio:units})))',
			],
		],
		formats: ["mass", "mass", "pigment", "pigment", "pigment", "pigment"],
	},
	{
		at: "M16",
		look: "result",
		size: [6, 1],
		slot: "headroom",
		rows: [
			[
				'=IF(OR(COUNT(C16:F21)=0;J6="");"";PIGMENT_HEADROOM(U16:X21;C23:F23;J6))',
			],
		],
		formats: "share",
	},
	{ at: "A22", look: "total", rows: [["Total"]] },
	{
		at: "B22",
		look: "total",
		rows: [["=SUM(B16:B21)"]],
		formats: "share",
		slot: "share_total",
	},
	{
		at: "G22",
		look: "total",
		rows: [
			[
				'=IF(ISERROR(G16);G16;IF(COUNT(G16:G21)=0;"";SUM(G16:G21)))',
				'=IF(ISERROR(G16);G16;IF(COUNT(G16:G21)=0;"";SUM(H16:H21)))',
				...["I", "J", "K", "L"].map(
					(letter, i) =>
						`=IF(ISERROR(G16);G16;IF(${LETTERS[i]}14="";"";SUM(${letter}16:${letter}21)))`,
				),
			],
		],
		formats: ["mass", "mass", "pigment", "pigment", "pigment", "pigment"],
	},
];
