import type { Block } from "../src/template/plan";
import { whileIntact } from "./intact";
import { MIX_FORMATS, MIX_HEADINGS } from "./mixes";
import { TONES } from "./tones-table";

/** Rows of the mix: what is in the table under Mix. */
const PARTS = "B49:B60";
/** What needs the mix: blank without it, its error where it is one. */
const ofMix = (formula: string) =>
	`=IF(ISERROR(A49);A49;IF(COUNT(${PARTS})=0;"";${formula}))`;

/** The mix of the job as the Mixes tab has it, what it is made of, and what of it this job takes. */
export const mixBlocks: readonly Block[] = [
	{
		at: "J3",
		look: "result",
		rows: [[ofMix(`BINDER_SHARE(${PARTS};D49:D60)`)]],
		formats: "share",
		name: "binder",
	},
	{
		at: "J4",
		look: "result",
		rows: [
			[ofMix(`MIX_DENSITY(${PARTS};C49:C60;{studio:air};{studio:units})`)],
		],
		formats: "density",
		name: "density",
	},
	{
		at: "J5",
		look: "result",
		rows: [[ofMix(`WATER_BINDER_RATIO(${PARTS};D49:D60;F49:F60)`)]],
		formats: "number",
	},
	{
		at: "J6",
		look: "result",
		rows: [
			[ofMix(`SUMPRODUCT(${PARTS};E49:E60)/SUMPRODUCT(${PARTS};D49:D60)`)],
		],
		formats: "share",
		slot: "cement_share",
	},
	{
		at: "J7",
		look: "result",
		rows: [
			[
				ofMix(
					`SUM(ARRAYFORMULA(IF(ISNUMBER(${PARTS});IF((G49:G60<>"water")*ISERROR(SEARCH("fib";A49:A60));${PARTS};0);0)))/SUMPRODUCT(${PARTS};D49:D60)`,
				),
			],
		],
		formats: "number",
		slot: "dry_mix_share",
	},
	{ at: "A47", look: "total", rows: [["Mix"]] },
	{
		at: "A48",
		look: "heading",
		wrap: true,
		rows: [[...MIX_HEADINGS, "For this job, {mass}", "For the sample, g"]],
	},
	{
		at: "A49",
		look: "result",
		size: [12, 11],
		slot: "mix_table",
		rows: [
			[
				whileIntact(
					[TONES, "{tab:Mixes}!B5:L64"],
					'=IF(B3="";"";IFERROR(FILTER({tab:Mixes}!B5:L64;{tab:Mixes}!A5:A64=B3);""))',
				),
			],
		],
		formats: MIX_FORMATS,
	},
	{
		at: "L49",
		slot: "mix_weights",
		look: "result",
		size: [12, 1],
		rows: [
			[
				`=IF(OR({job}mix_total=0;COUNT(${PARTS})=0);"";ARRAYFORMULA(IF(ISNUMBER(${PARTS});${PARTS}/SUM(${PARTS})*{job}mix_total;"")))`,
			],
		],
		formats: "mass",
	},
	{
		at: "A61",
		look: "note",
		rows: [
			[
				"Dry mix is every solid but the rows with fiber in their name. Water that comes with pigment is left out of the mix water, on the Pour card and in the sample.",
			],
		],
	},
];
