import type { Format, Tab } from "../src/template/plan";

/** Of an ingredient, without the name of its mix: so it comes to the job's Tones tab. */
export const MIX_HEADINGS: readonly string[] = [
	"Ingredient",
	"Parts",
	"Specific gravity",
	"Binder share",
	"Cement share",
	"Water share",
	"Solid or water",
	"Moisture",
	"Absorption",
	"Pack, {mass}",
	"Pack price",
];

export const MIX_FORMATS: readonly Format[] = [
	"text",
	"number",
	"number",
	"share",
	"share",
	"share",
	"text",
	"share",
	"share",
	"plain",
	"money",
];

/** One row per ingredient; the job picks a mix by its name. */
export const mixes: Tab = {
	name: "Mixes",
	rows: 64,
	widths: [190, 190, 90, 90, 90, 90, 90, 90, 90, 90, 90, 90],
	frozenRows: 4,
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
		{
			at: "A4",
			look: "heading",
			wrap: true,
			rows: [["Mix", ...MIX_HEADINGS]],
		},
		{
			at: "A5",
			look: "input",
			size: [60, 12],
			name: "mixes",
			formats: ["text", ...MIX_FORMATS],
		},
		{ at: "A5", look: "input", size: [60, 1], slot: "names" },
	],
	choices: [
		{
			range: "H5:H64",
			list: ["solid", "water"],
			help: "For the mix temperature: what weighs in as water, and what as solid. Blank is solid.",
		},
		{
			range: "E5:G64",
			between: [0, 1],
			help: "A share of this ingredient, 0% to 100%: binder and cement in it, and water in it.",
		},
	],
};
