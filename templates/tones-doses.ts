import type { Block } from "../src/template/plan";
import { whileIntact } from "./intact";
import { LETTERS, TONES } from "./tones-table";

/** The tones' doses of binder, as weighed and in words: out of sight, for the other blocks and tabs. */
export const doseBlocks: readonly Block[] = [
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
