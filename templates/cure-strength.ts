import type { Block } from "../src/template/plan";

/** Strength against age from what the piece went through. */
export const strengthBlocks: readonly Block[] = [
	{ at: "A20", look: "total", rows: [["Strength against age"]] },
	{
		at: "A21",
		look: "note",
		rows: [
			[
				"EN 1992-1-1, eq. 3.2, kept moist; below 3 days the code asks for tests. Demolding and loading follow a test on this mix, not a formula.",
			],
		],
	},
	{
		at: "A22",
		look: "label",
		rows: [
			["Wanted, share of 28 days"],
			["Days at 20 °C (68 °F) for it"],
			["By the log, share of 28 days"],
			["Hours since the pour, by the log"],
			["Hours at 20 °C (68 °F) worth the same"],
			["Warm and old enough"],
		],
	},
	{
		at: "B22",
		look: "input",
		rows: [[0.7]],
		formats: "share",
		slot: "strength_wanted",
	},
	{
		at: "B23",
		look: "result",
		rows: [
			['=IF(B22="";"";AGE_FOR_STRENGTH(B22;{studio:cement}))'],
			['=IF(E17="";"";E17)'],
			['=IF(COUNT(A30:A41)=0;"";SUM(A30:A41))'],
			[
				'=IF(COUNTA(A30:B41)=0;"";EQUIVALENT_AGE(A30:A41;B30:B41;;;{studio:units}))',
			],
		],
		formats: "number",
	},
	{ at: "B24", look: "result", size: [1, 1], formats: "percent" },
	{
		at: "B27",
		look: "result",
		rows: [
			[
				'=IF(COUNTA(A30:B41)=0;"no hours in the log yet";IF(ISERROR(B26);"Look: a row of the log is not whole: point at the error to read why";IF(COUNTIF(B30:B41;"<"&IF({studio:units}="us";41;5))>0;"Look: colder than 5 °C (41 °F): keep it warm; what freezes young stays weak";IF(B26<72;"younger than 3 days: a test, not this formula";"fine"))))',
			],
		],
		slot: "cold",
	},
	{
		at: "A29",
		look: "heading",
		rows: [["Log: hours", "Mean, {temperature}"]],
	},
	{
		at: "A30",
		look: "input",
		size: [12, 2],
		formats: ["number", "temperature"],
		slot: "temperature_log",
		once: true,
		align: "right",
	},
	{
		at: "C29",
		look: "note",
		rows: [
			[
				"One row per interval: how many hours, and the mean temperature of the piece or of the air under the cover.",
			],
		],
	},
];
