import type { Tab } from "../src/template/plan";

/** The studio's pigments; a dose is a share of binder in every job. */
export const pigments: Tab = {
	name: "Pigments",
	rows: 34,
	widths: [190, 110, 110, 110],
	frozenRows: 4,
	blocks: [
		{ at: "A1", look: "title", rows: [["Pigments"]] },
		{
			at: "A2",
			look: "note",
			rows: [
				[
					"Powder pigments. Maximum dose as its maker states it, of cement; blank counts as 10%, the most ASTM C979 allows.",
				],
			],
		},
		{
			at: "A4",
			look: "heading",
			wrap: true,
			rows: [["Pigment", "Maximum dose, of cement", "Pack, g", "Pack price"]],
		},
		{
			at: "A5",
			look: "input",
			size: [30, 4],
			name: "pigments",
			formats: ["text", "share", "pigment", "money"],
		},
		{ at: "A5", look: "input", size: [30, 1], name: "pigment_names" },
	],
	choices: [{ range: "B5:B34", between: [0, 1], help: "For example 6%." }],
};
