import type { Tab } from "../src/template/plan";

/** The studio's own samples: the only colors that are trusted. */
export const swatches: Tab = {
	name: "Swatches",
	rows: 205,
	widths: [
		190, 90, 90, 90, 90, 90, 90, 90, 90, 90, 90, 90, 90, 90, 90, 90, 190,
	],
	frozenRows: 5,
	blocks: [
		{ at: "A1", look: "title", rows: [["Swatches"]] },
		{
			at: "A2",
			look: "note",
			rows: [
				[
					"Measure where it is flat and clean, the mean of three spots: a color code by daylight (D65) such as #b8a591, or L*, a*, b* of a meter such as 52.1, 8.0, 14.2. Per pigment two doses or more, and one undosed, all 28 days old.",
				],
				[
					'=IF(COUNTA(M6:M205)=0;"No swatch yet: cast small samples of your mix with 0%, 1%, 2% and 4% of each pigment, and note here what they became. Tones then shows the color to expect.";IF(COUNTIF(Q6:Q205;"invented*")>0;"Some swatches are invented, for the demo: clear them once you have your own.";""))',
				],
			],
		},
		{
			at: "E4",
			look: "note",
			rows: [["Dry pigment, share of binder: name each pigment below"]],
		},
		{ at: "A5", look: "heading", rows: [["Mix", "Finish", "Sealed", "State"]] },
		{
			at: "E5",
			look: "input",
			size: [1, 8],
			formats: "text",
			slot: "swatch_pigments",
			align: "right",
		},
		{
			at: "M5",
			look: "heading",
			rows: [["Color", "Age, days", "Lot", "Date", "Remark"]],
		},
		{
			at: "A6",
			look: "input",
			size: [200, 17],
			name: "swatches",
			formats: [
				"text",
				"text",
				"text",
				"text",
				"share",
				"share",
				"share",
				"share",
				"share",
				"share",
				"share",
				"share",
				"text",
				"whole",
				"text",
				"date",
				"text",
			],
		},
		{ at: "A6", look: "input", size: [200, 4], slot: "kinds" },
		{ at: "E6", look: "input", size: [200, 8], slot: "doses" },
		{ at: "M6", look: "input", size: [200, 1], slot: "colors" },
		{ at: "O6", look: "input", size: [200, 1], slot: "lots" },
		{ at: "Q6", look: "input", size: [200, 1], slot: "remarks" },
	],
	choices: [
		{ range: "A6:A205", from: "{at:Mixes.names}" },
		{ range: "B6:B205", list: ["cast", "honed", "polished"] },
		{ range: "C6:C205", list: ["sealed", "bare"] },
		{ range: "D6:D205", list: ["dry", "damp"] },
		{ range: "E5:L5", from: "{at:Pigments.names}" },
		{
			range: "E6:L205",
			between: [0, 1],
			help: "Dry pigment as a share of binder, for example 2%. Blank is none.",
		},
	],
};
