import { INGREDIENT } from "../../src/job/fields/mix";
import { area, lines, typedTable } from "../blocks";
import type { Tab } from "../plan";

const table = typedTable({
	at: "A4",
	slot: "mixes",
	fields: INGREDIENT,
	rows: 60,
	slots: { names: "mix" },
});

/** One row per ingredient; the job picks a mix by its name. */
export const mixes: Tab = {
	name: "Mixes",
	rows: 64,
	widths: [190, 190, ...Array<number>(12).fill(90)],
	frozenRows: 4,
	names: { mixes: area("A4", 61, Object.keys(INGREDIENT).length) },
	blocks: [
		{ at: "A1", look: "title", rows: [["Mixes"]] },
		lines(
			"A2",
			"note",
			"One row per ingredient, parts by dry mass. Of the starter mixes M45 is published, the others are invented: cast samples and read data sheets before you use one.",
			"Binder, cement and water are shares of the ingredient: a bagged blend may be 55% binder. Blank is none. Moisture and absorption are for damp sand.",
		),
		...table.blocks,
	],
	choices: table.choices,
};
