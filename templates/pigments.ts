import type { Tab } from "../src/template/plan";
import { headingsTo } from "./intact";

/** Each column that formulas look in, by its place. */
const COLUMNS = {
	to_form: 2,
	to_pigment: 3,
	to_basis: 4,
	to_maximum: 5,
	to_water: 6,
	to_pack: 7,
	to_price: 8,
} as const;

export type PigmentColumn = keyof typeof COLUMNS;

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
					"For a liquid, type the share of pigment in it; for a powder both may stay blank. Color depends on the lot: note it on Stock.",
				],
				[
					"Maximum dose of cement, from its maker; blank counts as 10%, the most ASTM C979 allows. Tones turns every dose into a share of binder.",
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
					"Water to wet it, g per g",
					"Pack, g",
					"Pack price",
				],
			],
		},
		...headingsTo("A4", COLUMNS),
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
		{ at: "A5", look: "input", size: [30, 1], slot: "names" },
	],
	choices: [
		{ range: "B5:B34", list: ["powder", "liquid"] },
		{ range: "D5:D34", list: ["binder", "cement", "dry mix"] },
		{ range: "E5:E34", between: [0, 1], help: "For example 6%." },
	],
};
