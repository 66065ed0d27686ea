import { INGREDIENT } from "../../src/job/fields/mix";
import { typedTable } from "../blocks";
import type { Tab } from "../plan";

const ROWS = 60;

const table = typedTable({
	at: "A4",
	slot: "mixes",
	fields: INGREDIENT,
	rows: ROWS,
});

/** One row per ingredient; the job picks a mix by its name. */
export const mixes: Tab = {
	name: "Mixes",
	rows: 64,
	widths: [190, 190, 90, 90, 90, 90, 90, 90, 90, 90, 90, 90],
	frozenRows: 4,
	names: { mixes: "A4:L64" },
	blocks: [
		{ at: "A1", look: "title", rows: [["Mixes"]] },
		{
			at: "A2",
			look: "note",
			rows: [
				[
					"One row per ingredient, parts by dry mass. Of the starter mixes M45 is published, the others are invented: cast samples and read data sheets before you use one.",
				],
				[
					"Binder, cement and water are shares of the ingredient: a bagged blend may be 55% binder. Blank is none. Moisture and absorption are for damp sand.",
				],
			],
		},
		...table.blocks,
		{ at: "A5", look: "input", size: [ROWS, 1], slot: "names" },
	],
	choices: table.choices,
};
