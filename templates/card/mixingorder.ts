import { lines } from "../blocks";
import type { Block } from "../plan";

/** In which order to mix, and what harms hands and lungs. */
export const mixingOrder: readonly Block[] = [
	{ at: "A35", look: "total", rows: [["Mixing order"]] },
	{
		at: "A36",
		look: "result",
		rows: [
			[1, "Water, chilled or with ice; most of the water reducer."],
			[2, "Three quarters of the dry material. Blend."],
			[3, "The rest. Blend until even, scrape down."],
			[4, "Very fluid before fibers: else the held-back reducer."],
			[5, "The longer fibers, then the shorter. Blend."],
			[6, "Pull off and dose as below, pigment wetted first."],
			[7, "Fold less for bolder veins. Leave a placed face alone."],
		],
		formats: ["whole", "text"],
	},
	lines(
		"A43",
		"note",
		"Common practice; the data sheet of the material comes first.",
	),
	{ at: "I35", look: "caution", rows: [["Cautions, before the mixer runs"]] },
	lines(
		"I36",
		"note",
		"Wet cement burns skin and eyes: gloves, goggles, rinse at once.",
		"Wash water does not go down a drain.",
		"Silica, pigment and fiber dust: extraction or a fitted respirator.",
		"Mixers catch sleeves: off and unplugged before reaching in.",
		"Powered wet tools on a ground-fault interrupter (GFCI).",
		"Lift with enough people or a cart: see How to carry it on the Job tab.",
		"Local codes, the material's data sheet and a licensed engineer",
		"come before any number here.",
	),
];
