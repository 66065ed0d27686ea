import type { Tab } from "../src/template/plan";

/** The studio's pigments; a dose is a share of binder in every job. */
export const pigments: Tab = {
	name: "Pigments",
	rows: 34,
	widths: [190, 110, 110, 110, 110, 110, 110, 110],
	frozenRows: 4,
	blocks: [
		{ at: "A1", look: "title", rows: [["Pigments"]] },
		{
			at: "A2",
			look: "note",
			rows: [
				[
					"Of a liquid, state the share of pigment in it. Maximum dose as its maker states it, of cement; blank counts as 10%, the most ASTM C979 allows.",
				],
				[
					"Blank form is powder, blank share 100%. Its doses are of what its maker states them of; Tones turns them into shares of binder. A tone color depends on the lot: note it on Stock.",
				],
			],
		},
		{
			at: "A4",
			look: "heading",
			wrap: true,
			rows: [
				[
					"Pigment",
					"Form",
					"Pigment in it",
					"Its doses are of",
					"Maximum dose, of cement",
					"Water to wet it, g a g",
					"Pack, g",
					"Pack price",
				],
			],
		},
		{
			at: "A5",
			look: "input",
			size: [30, 8],
			name: "pigments",
			formats: [
				"text",
				"text",
				"share",
				"text",
				"share",
				"number",
				"pigment",
				"money",
			],
		},
		{ at: "A5", look: "input", size: [30, 1], name: "pigment_names" },
	],
	choices: [
		{ range: "B5:B34", list: ["powder", "liquid"] },
		{ range: "D5:D34", list: ["binder", "cement", "dry mix"] },
		{ range: "E5:E34", between: [0, 1], help: "For example 6%." },
	],
};
