import { lines } from "../blocks";
import type { Tab } from "../plan";
import { cureShownBlocks } from "./cureshown";
import { CURE_REGION, cureTypedBlocks, cureTyping } from "./curetyped";
import { practiceBlocks } from "./practice";

/** From the pour to delivery. */
export const cure: Tab = {
	name: "Cure",
	color: "#8a5a2b",
	rows: 130,
	widths: [
		...[215, 90, 110, 250, 90, 90, 90, 90, 330],
		...Array<number>(6).fill(90),
	],
	frozenRows: 1,
	hidden: 6,
	names: { cure: CURE_REGION },
	blocks: [
		{ at: "A1", look: "title", rows: [['="Cure · "&{at:Job.heading}']] },
		lines(
			"A2",
			"note",
			"A test on the piece comes before any day or number of this tab.",
		),
		...cureTypedBlocks,
		...cureShownBlocks,
		...practiceBlocks,
	],
	choices: cureTyping.flatMap(({ choices }) => choices),
};
