import type { Block } from "../src/template/plan";

/** Which castings share a load of the mixer. */
export const loadBlocks: readonly Block[] = [
	{ at: "L47", look: "total", rows: [["Mixer loads"]] },
	{
		at: "L48",
		look: "heading",
		rows: [["Load", "Casting", "Mix, {mass}", "Load is full"]],
	},
	{
		at: "L49",
		look: "result",
		size: [40, 4],
		rows: [
			[
				'=IF(ISERROR(U11);U11;IF(SUM(V11:V30)=0;"";MIXER_LOADS(CASTINGS(A11:A30;B11:B30;ARRAYFORMULA(IF(ISNUMBER(U11:U30);U11:U30*(1+$C$8);"")));{studio:mixer_capacity})))',
			],
		],
		formats: ["whole", "text", "mass", "percent"],
		slot: "load_table",
	},
	{ at: "L49", look: "result", size: [40, 1], slot: "load_numbers" },
	{ at: "M49", look: "result", size: [40, 1], slot: "load_castings" },
	{ at: "N49", look: "result", size: [40, 1], slot: "load_masses" },
	{ at: "O49", look: "result", size: [40, 1], slot: "load_shares" },
];
