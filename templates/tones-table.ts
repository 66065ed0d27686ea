import type { Block } from "../src/template/plan";
import { whileIntact } from "./intact";
import type { PigmentColumn } from "./pigments";

/** All columns of the tab. */
export const TONES = "$A$1:$AO$1";

/** Grams in the unit that mix is weighed in, without a decimal; 1 lb is 0.45359237 kg exactly. */
export const GRAMS = 'IF({studio:units}="us";45359237/100000;1000)';

const LETTERS = ["C", "D", "E", "F"];

/** What the Pigments tab says of each pigment in row 14, in this column. */
const found = (column: PigmentColumn) =>
	`VLOOKUP(C14:F14;{at:Pigments.pigments};COLUMNS({at:Pigments.${column}});FALSE)`;

const perPigment = (formula: string) =>
	`=ARRAYFORMULA(IF(C14:F14="";"";${formula}))`;

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
				`=IF(ISERROR(A49);"Look: a column was put in or taken out here or on the Mixes tab: undo that";IF(B3="";"Choose the mix.";IF(COUNT(B49:B60)=0;"Look: there is no mix of this name on the Mixes tab";IF(COUNTA(A16:A21)=0;"Name the tones, and give each its share and doses.";IF(${BAD_DOSES};"Look: a dose is not between 0% and 100%: type 4% or 4/100";IF(COUNTA(B16:B21)>COUNT(B16:B21);"Look: a share is not a number: type 40% or 4/10";IF(SUM(ARRAYFORMULA(IF((C16:F21<>"")*(C14:F14="");1;0)))>0;"Look: a dose stands under no pigment: name it above";IF(COUNTA(C14:F14)>COUNT(C23:F23);"Look: a pigment is not on the Pigments tab: add it there";IF(COUNTIF(C24:F26;"Look*")>0;"Look: what the Pigments tab says of a pigment cannot be: see the rows under the tones";IF((B7<>"bucket fold")*(B7<>"mold lay-up")*(B7<>"");"Look: choose bucket fold or mold lay-up";IF(B7<>"mold lay-up";${FROZEN};IF(B8="";"Look: type how deep the toned face is";IF(COUNTIF(A16:A21;B9)=0;"Look: choose the tone that backs it";${FROZEN})))))))))))))`,
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
	{ at: "B14", look: "heading", size: [1, 1], align: "right" },
	{ at: "G14", look: "heading", size: [1, 7], align: "right" },
	{ at: "P14", look: "heading", size: [1, 1], align: "right" },
	{
		at: "C15",
		look: "note",
		size: [1, 4],
		align: "right",
		rows: [
			[
				perPigment(
					`IFERROR(IF(${found("to_basis")}="cement";"of cement";IF(${found("to_basis")}="dry mix";"of dry mix";IF((${found("to_basis")}="binder")+(${found("to_basis")}="")+(${found("to_basis")}=0)>0;"of binder";"Look: of what?")));"of binder")`,
				),
			],
		],
	},
	{
		at: "I15",
		look: "note",
		rows: [["as weighed: pigment with its water"]],
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
	{
		at: "G23",
		look: "label",
		rows: [["dry pigment in it, g"], ["water in it, g"], ["as bought, g"]],
	},
	{
		at: "I23",
		look: "result",
		rows: [
			['=ARRAYFORMULA(IF(C14:F14="";"";I22:L22/C25:F25))'],
			['=ARRAYFORMULA(IF(C14:F14="";"";I22:L22-I23:L23))'],
		],
		formats: "pigment",
	},
	{
		at: "I25",
		look: "total",
		size: [1, 4],
		slot: "pigment_totals",
		rows: [['=ARRAYFORMULA(IF(C14:F14="";"";I23:L23/C24:F24))']],
		formats: "pigment",
	},
	{ at: "I23", look: "result", size: [2, 4], formats: "pigment" },
	{
		at: "A23",
		look: "label",
		rows: [
			["Maximum, of cement"],
			["Pigment in it"],
			["Weighed wet, g per g"],
			["To share of binder, ×"],
			["Price per gram"],
		],
	},
	{
		at: "C23",
		slot: "maxima",
		look: "result",
		size: [1, 4],
		rows: [
			[
				perPigment(
					`IFERROR(IF(ISNUMBER(${found("to_maximum")});IF(${found("to_maximum")}>0;${found("to_maximum")};1/10);IF(${found("to_maximum")}="";1/10;"Look: a number?"));"")`,
				),
			],
		],
		formats: "share",
	},
	{
		at: "C24",
		slot: "solids",
		look: "result",
		size: [1, 4],
		rows: [
			[
				perPigment(
					`IFERROR(IF(ISNUMBER(${found("to_pigment")})*(${found("to_pigment")}>0);IF(${found("to_pigment")}<=1;${found("to_pigment")};"Look: above 100%");IF((${found("to_pigment")}<>"")*(${found("to_pigment")}<>0);"Look: a number?";IF(${found("to_form")}="liquid";"Look: share of pigment?";1)));"Look: not there")`,
				),
			],
		],
		formats: "share",
	},
	{
		at: "C25",
		look: "result",
		size: [1, 4],
		rows: [
			[
				perPigment(
					`1/C24:F24+IF(${found("to_water")}="";0;${found("to_water")})`,
				),
			],
		],
		formats: "number",
	},
	{
		at: "C26",
		look: "result",
		size: [1, 4],
		rows: [
			[
				'=ARRAYFORMULA(IF(C14:F14="";"";IF(C15:F15="of cement";J6;IF(C15:F15="of dry mix";J7;IF(C15:F15="of binder";1;"Look: of what?")))))',
			],
		],
		formats: "number",
	},
	{
		at: "C27",
		slot: "gram_prices",
		look: "result",
		size: [1, 4],
		rows: [
			[perPigment(`IFERROR(${found("to_price")}/${found("to_pack")};"")`)],
		],
		formats: "number",
	},
	{
		at: "S16",
		look: "result",
		size: [6, 6],
		slot: "tones",
		rows: [
			[
				'=ARRAYFORMULA(IF(A16:A21="";"";A16:A21))',
				'=ARRAYFORMULA(IF($B$7<>"mold lay-up";IF(B16:B21="";"";B16:B21);IF(ISNUMBER(B16:B21);B16:B21/SUM(B16:B21)*$J$9+IF(A16:A21=$B$9;1-$J$9;0);IF(B16:B21="";IF((A16:A21<>"")*(A16:A21=$B$9);1-$J$9;"");B16:B21))))',
				whileIntact(
					[TONES],
					'=ARRAYFORMULA(IF(C16:F21="";"";IF(ISNUMBER(C16:F21);IF((C16:F21>=0)*(C16:F21<=1);C16:F21*IF(C26:F26="";1;C26:F26);C16:F21);C16:F21)))',
				),
			],
		],
		formats: ["text", "share", "share", "share", "share", "share"],
	},
	{ at: "U16", look: "result", size: [6, 4], slot: "dry_doses" },
	{
		at: "Y16",
		look: "result",
		size: [6, 6],
		slot: "dosed",
		rows: [
			[
				'=ARRAYFORMULA(IF(A16:A21="";"";A16:A21))',
				'=ARRAYFORMULA(IF(T16:T21="";"";T16:T21))',
				whileIntact(
					[TONES],
					'=ARRAYFORMULA(IF(C16:F21="";"";IF(ISNUMBER(C16:F21);IF((C16:F21>=0)*(C16:F21<=1);U16:X21*IF(C25:F25="";1;C25:F25);C16:F21);C16:F21)))',
				),
			],
		],
		formats: ["text", "share", "share", "share", "share", "share"],
	},
	{
		at: "AN16",
		look: "result",
		size: [6, 2],
		slot: "dose_words",
		rows: [
			[
				'=ARRAYFORMULA(IF(A16:A21="";"";A16:A21))',
				`=IF(ISERROR(U16);U16;ARRAYFORMULA(IF(A16:A21="";"";IF(ISNUMBER(C16:C21)+ISNUMBER(D16:D21)+ISNUMBER(E16:E21)+ISNUMBER(F16:F21)=0;"undosed";${LETTERS.map(
					(letter, i) =>
						`IF(ISNUMBER(${letter}16:${letter}21);${letter}$14&" "&ROUND(${"UVWX"[i]}16:${"UVWX"[i]}21*100;2)&"% ";"")`,
				).join("&")}))))`,
			],
		],
	},
];
