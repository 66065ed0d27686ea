import type { Block } from "../src/template/plan";
import { SUMMARY_FORMATS, SUMMARY_HEADINGS } from "./jobs";

/** A cell of another tab, blank where that is blank. */
export const ofTab = (cell: string) => `=IF(${cell}="";"";${cell})`;

const dateOf = (index: number) => ofTab(`{at:Cure.day_${index}}`);

/** The job in one row, as the Jobs tab keeps it. */
export const lineBlocks: readonly Block[] = [
	{ at: "A90", look: "total", rows: [["Its line on the Jobs tab"]] },
	{
		at: "A91",
		look: "heading",
		wrap: true,
		rows: [SUMMARY_HEADINGS],
	},
	{
		at: "A92",
		look: "result",
		slot: "summary",
		rows: [
			[
				ofTab("C3"),
				ofTab("C4"),
				ofTab("C7"),
				'=IF(ISNUMBER({at:Cure.day_1});{at:Cure.day_1};IF(C5="";"";C5))',
				ofTab("C6"),
				ofTab("{at:Cost.price}"),
				ofTab("{at:Cost.cost}"),
				ofTab("{at:Cost.margin}"),
				ofTab("{at:Quote.deposit_paid}"),
				ofTab("{at:Quote.balance_paid}"),
				ofTab("{at:Cost.hours}"),
				...[2, 3, 4, 5, 6].map(dateOf),
				'=IF((C7="sampling")+(C7="priced")>0;"";{at:Quote.to_pay})',
			],
		],
		formats: SUMMARY_FORMATS,
	},
];
