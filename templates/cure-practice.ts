import type { Block } from "../src/template/plan";

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
