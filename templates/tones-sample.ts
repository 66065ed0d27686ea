import type { Block } from "../src/template/plan";
import { GRAMS } from "./tones-table";

/**
 * The mix of which the scales can still dose a tone to 5% (one standard uncertainty, two readings of each scale, d/√12
 * a reading: JCGM 100, F.2.2.1), counted up to the whole batch.
 */
const SMALLEST = `MAX(ARRAYFORMULA(IF(ISNUMBER(AA16:AD21)*ISNUMBER(T16:T21);IF((AA16:AD21>0)*(T16:T21>0);20*(1/6)^(1/2)*(({studio:gram_division}/({job}binder*AA16:AD21*${GRAMS}))^2+{studio:mix_division}^2)^(1/2)/(T16:T21/SUM(T16:T21));0);0)))`;

/** The sample batch of the same tones, with what each takes. */
export const sampleBlocks: readonly Block[] = [
	{ at: "G35", look: "total", rows: [["Sample of the same tones"]] },
	{
		at: "G36",
		look: "heading",
		wrap: true,
		rows: [
			[
				"Tone",
				"Undosed mix, {mass}",
				...["C", "D", "E", "F"].map(
					(letter) => `=IF(${letter}14="";"";${letter}14&", g")`,
				),
			],
		],
	},
	{
		at: "G37",
		look: "result",
		size: [6, 6],
		slot: "sample_weights",
		rows: [
			[
				'=ARRAYFORMULA(IF(A16:A21="";"";A16:A21))',
				'=IF(ISNUMBER(K44);ARRAYFORMULA(IF(ISNUMBER(T16:T21);ROUND(T16:T21/SUM(T16:T21)*K44*(1-J10)/{studio:mix_division};0)*{studio:mix_division};""));"")',
				`=IF(ISNUMBER(K44);ARRAYFORMULA(IF(ISNUMBER(AA16:AD21)*ISNUMBER(T16:T21);ROUND(T16:T21/SUM(T16:T21)*K44*{job}binder*AA16:AD21*${GRAMS}/{studio:gram_division};0)*{studio:gram_division};""));"")`,
			],
		],
		formats: ["text", "mass", "pigment", "pigment", "pigment", "pigment"],
	},
	{
		at: "G43",
		look: "label",
		rows: [
			["Smallest the scales dose within 5%, {mass}"],
			["Sample batch, {mass}"],
			["Make another size, {mass}"],
		],
	},
	{
		at: "K43",
		look: "total",
		slot: "sample_smallest",
		rows: [
			[
				`=IF(ISERROR(G16);G16;IF(OR(COUNT(AA16:AD21)=0;SUM(T16:T21)=0;J3="");"";ROUNDUP(${SMALLEST}/{studio:mix_division};0)*{studio:mix_division}))`,
			],
			["=IF(ISNUMBER(K45);K45;K43)"],
		],
		formats: "mass",
	},
	{
		at: "K45",
		look: "input",
		size: [1, 1],
		formats: "mass",
		slot: "sample_mass",
	},
	{
		at: "L45",
		look: "result",
		rows: [
			[
				'=IF(ISNUMBER(K45)*ISNUMBER(K43);IF(K45<K43;"Look: too small: a dose is off by more than 5%";"");"")',
			],
		],
	},
	{
		at: "M49",
		look: "result",
		size: [12, 1],
		slot: "sample_mix",
		rows: [
			[
				`=IF(ISNUMBER(K44);ARRAYFORMULA(IF(ISNUMBER(B49:B60);ROUND((B49:B60/SUM(B49:B60)-IF(F49:F60=1;B49:B60/SUMIF(F49:F60;1;B49:B60)*J10;0))*K44*${GRAMS}/{studio:gram_division};0)*{studio:gram_division};""));"")`,
			],
		],
		formats: "pigment",
	},
];
