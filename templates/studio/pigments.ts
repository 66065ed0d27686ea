import { PIGMENT } from "../../src/job/fields/pigment";
import { lines, typedTable } from "../blocks";
import type { Tab } from "../plan";

const table = typedTable({
	at: "A4",
	slot: "pigments",
	fields: PIGMENT,
	rows: 30,
	slots: { names: "name" },
});

/** The studio's pigments; a dose is a share of binder in every job. */
export const pigments: Tab = {
	name: "Pigments",
	rows: 34,
	widths: [190, 110, 110, 110, 110, 110, 110, 110],
	frozenRows: 4,
	names: { pigments: "A4:H34" },
	blocks: [
		{ at: "A1", look: "title", rows: [["Pigments"]] },
		lines(
			"A2",
			"note",
			"For a liquid, type the share of pigment in it; for a powder both may stay blank. Color depends on the lot: note it on Stock.",
			"Maximum dose of cement, from its maker; blank counts as 10%, the most ASTM C979 allows. Tones turns every dose into a share of binder.",
		),
		...table.blocks,
	],
	choices: table.choices,
};
