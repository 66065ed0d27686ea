import { lines } from "../blocks";
import type { Tab } from "../plan";
import { costShownBlocks } from "./costshown";
import { COST_REGION, costTypedBlocks, costTyping } from "./costtyped";

/** What the job costs and what it sells for. */
export const cost: Tab = {
	name: "Cost",
	color: "#8a5a2b",
	rows: 130,
	widths: [
		...[250, 90, 90, 90, 90, 16, 170],
		...Array<number>(8).fill(90),
		270,
	],
	frozenRows: 1,
	names: { cost: COST_REGION },
	blocks: [
		{ at: "A1", look: "title", rows: [['="Cost · "&{at:Job.heading}']] },
		lines(
			"A2",
			"note",
			'=IF({at:Cost.price_met}="fine";"All money in "&{studio:currency}&", for the studio only: the quote shows the price and agreed change orders.";{at:Cost.price_met})',
		),
		...costTypedBlocks,
		...costShownBlocks,
	],
	choices: costTyping.flatMap(({ choices }) => choices),
};
