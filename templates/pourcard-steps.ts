import type { Block } from "../src/template/plan";
import { whileIntact } from "./intact";
import { CARD, ofLoad, WEIGHED } from "./pourcard-load";

/** The steps that pull tones off and dose them, and what was weighed at each. */
export const stepBlocks: readonly Block[] = [
	{ at: "A62", look: "total", rows: [["Pull off and dose"]] },
	{
		at: "B63",
		look: "label",
		rows: [["Vessels to dose in"]],
	},
	{
		at: "C63",
		look: "result",
		slot: "vessels",
		rows: [['=IF(ISERROR(S65);S65;COUNTIF(U65:U100;"keep"))']],
		formats: "whole",
	},
	{
		at: "E63",
		look: "note",
		rows: [
			[
				"Type what the scale said beside each step: every later amount follows from it.",
			],
		],
	},
	{
		at: "A64",
		look: "result",
		rows: [
			[
				'=IF(N(C8)>0;0;"")',
				'=IF(N(C8)>0;"Pull off a reserve, cover it";"")',
				'=IF(ISERROR(C8);C8;IF(C8>0;C8;""))',
				'=IF(N(C8)>0;"{mass}";"")',
			],
		],
		formats: ["whole", "text"],
	},
	{ at: "C64", look: "large", size: [1, 2], formats: ["weighed", "text"] },
	{
		at: "E64",
		look: "input",
		size: [1, 8],
		formats: "weighed",
		slot: "reserve_weights",
		once: true,
	},
	{
		at: "M64",
		look: "result",
		rows: [
			[
				`=IF(OR(ISNUMBER(${ofLoad("64")});${ofLoad("64")}="");IF(N(C8)>0;"undosed, to lighten a tone too dark";"");"Look: the weight is not a number")`,
			],
		],
	},
	{
		at: "A65",
		look: "result",
		wrap: true,
		size: [36, 4],
		rows: [
			[
				'=IF(ISERROR(S65);S65;ARRAYFORMULA(IF(S65:S100="";"";S65:S100)))',
				'=ARRAYFORMULA(IF(S65:S100="";"";IF(U65:U100="add";"Add "&V65:V100&" to "&SUBSTITUTE(T65:T100;"mixer";"the mixer");IF(U65:U100="keep";"Keep "&V65:V100&" in "&SUBSTITUTE(T65:T100;"mixer";"the mixer");IF(LEFT(V65:V100;7)="bucket ";"Fill "&V65:V100&" from the mixer";"Pull off "&V65:V100&" from "&SUBSTITUTE(T65:T100;"mixer";"the mixer"))))))',
				'=ARRAYFORMULA(IF(S65:S100="";"";IF(X65:X100="g";ROUND(W65:W100/{studio:gram_division};0)*{studio:gram_division};IF((U65:U100="keep")*(W65:W100<{studio:sticks});0;ROUND((W65:W100-IF(U65:U100="keep";{studio:sticks};0))/{studio:mix_division};0)*{studio:mix_division}))))',
				'=ARRAYFORMULA(IF(S65:S100="";"";X65:X100))',
			],
		],
		formats: ["whole", "text"],
	},
	{ at: "C65", look: "large", size: [36, 2], formats: ["weighed", "text"] },
	{
		at: "E65",
		look: "input",
		size: [36, 8],
		formats: "weighed",
		slot: "weights",
		once: true,
	},
	{
		at: "M65",
		look: "result",
		wrap: true,
		size: [36, 4],
		rows: [
			[
				'=ARRAYFORMULA(IF(S65:S100="";"";IF(AA65:AA100<>"";"Look: "&AA65:AA100;IF(U65:U100="keep";"to place; "&{studio:sticks}&" {mass} more sticks";IF(AB65:AB100="";"";IF(AB65:AB100>1/20;"Look: too little for the gram scale";""))))))',
				'=ARRAYFORMULA(IF(U65:U100="add";IF(Z65:Z100>0;W65:W100/Z65:Z100;"");""))',
				'=ARRAYFORMULA(IF(S65:S100="";"";Z65:Z100))',
				'=ARRAYFORMULA(IF(S65:S100="";"";Y65:Y100))',
			],
		],
		formats: ["text", "number", "mass", "share"],
	},
	{
		at: "S65",
		slot: "plan",
		look: "result",
		size: [36, 9],
		rows: [
			[
				whileIntact(
					[CARD],
					`=IF(ISERROR(C9);C9;IF(AND(C9>0;COUNTA({at:Tones.typed_tones})>0;SUM(INDEX({at:Tones.dosed};0;2))>0);PULL_OFF_PLAN({at:Tones.dosed};{job}pigments;C9;{job}binder*C6/SUM(S20:S32);${WEIGHED};{studio:units});""))`,
				),
			],
		],
	},
	{
		at: "AB65",
		slot: "dose_errors",
		look: "result",
		size: [36, 1],
		rows: [
			[
				'=IF(COUNTIF(U65:U100;"add")=0;"";DOSE_UNCERTAINTY(ARRAYFORMULA(IF(U65:U100="add";IF(W65:W100>0;W65:W100;"");""));{studio:gram_division};ARRAYFORMULA(IF(U65:U100="add";IF(W65:W100>0;Z65:Z100;"");""));{studio:mix_division};1;{studio:units}))',
			],
		],
	},
];
