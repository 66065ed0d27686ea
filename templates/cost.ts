import type { Tab } from "../src/template/plan";
import { buyBlocks } from "./cost-buy";
import { goodsBlocks } from "./cost-goods";
import { moneyBlocks } from "./cost-money";
import { priceBlocks } from "./cost-price";
import { whatIfBlocks } from "./cost-whatif";
import { workBlocks } from "./cost-work";

/** What the job costs and what it sells for. */
export const cost: Tab = {
	name: "Cost",
	color: "#8a5a2b",
	rows: 112,
	widths: [250, 92, 92, 92, 92, 92, 92, 92, 92, 270, 92, 70],
	frozenRows: 1,
	hidden: 1,
	blocks: [
		{ at: "A1", look: "title", rows: [['="Cost · "&{at:Job.heading}']] },
		{
			at: "A2",
			look: "note",
			rows: [
				[
					'="All money in "&{studio:currency}&". For the studio only: the quote shows nothing of this tab but the price and agreed change orders."',
				],
			],
		},
		...priceBlocks,
		...whatIfBlocks,
		...moneyBlocks,
		...workBlocks,
		...goodsBlocks,
		...buyBlocks,
	],
	choices: [{ range: "B23", list: ["as planned", "tighter", "rush"] }],
};
