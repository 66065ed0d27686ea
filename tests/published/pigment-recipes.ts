import type { PublishedFile } from "./published";

/** Red, yellow, black and green: invented constants, read to two decimals. */
const DOSES = [
	[0, 0, 0, 0],
	[0.016667, 0, 0, 0],
	[0.05, 0, 0, 0],
	[0, 0.02, 0, 0],
	[0, 0.06, 0, 0],
	[0, 0, 0.013333, 0],
	[0, 0, 0.04, 0],
	[0, 0, 0, 0.016667],
	[0, 0, 0, 0.05],
];
const COLORS = [
	["72, 1.2, 7.5"],
	["64.69, 12.97, 9.89"],
	["57.62, 22.21, 12.55"],
	["70.13, 4.58, 18.5"],
	["67.85, 8.58, 28.11"],
	["58.39, 0.48, 1.39"],
	["48.09, 0.21, -1.04"],
	["67.71, -6.23, 9.13"],
	["62.71, -12.24, 10.85"],
];

const recipe = (color: string, most: number | "", maxima: unknown = "") => [
	color,
	DOSES,
	COLORS,
	maxima,
	most,
];

export const published: PublishedFile = {
	source:
		"Recipes by another program for the same invented swatches (color-match checks); all of them in tests/published/colormatch",
	locator: "cases match-… and correction-…",
	status: "computed apart",
	cases: [
		{
			function: "PIGMENTS_FOR_COLOR",
			args: recipe("63.68, 14.4, 10.24", 1),
			expected: [[0.02016, 0, 0, 0, null, null, null]],
			tolerance: { rel: 0.01 },
			note: "match-one-red; it was made with 0.02",
		},
		{
			function: "PIGMENTS_FOR_COLOR",
			args: recipe("85, 1, 6", ""),
			expected: [[0, 0, 0, 0, null, 9.21, null]],
			tolerance: { rel: 0.005 },
			note: "match-lighter-than-base: out of reach, undosed is nearest",
		},
		{
			function: "PIGMENTS_FOR_COLOR",
			args: recipe("51.66, 12.98, 14.73", "", [[0.06, 0.06, 0.03, 0.06]]),
			expected: [
				[0.04154, 0, 0, 0.01846, null, 6.02, null],
				[null, null, null, null, null, null, null],
			],
			tolerance: { rel: 0.01 },
			note: "match-sum-limit: with black there the sum may not pass 3%, without it 6%",
		},
		{
			function: "RECIPE_AFTER_CAST",
			args: [
				"65.16, 12.58, 20.13",
				[[0.01274, 0.02991, 0, 0]],
				"64.01, 13.87, 19.71",
				DOSES,
				COLORS,
			],
			expected: [[0.00951, 0.02979, 0, 0, null, null, null]],
			tolerance: { rel: 0.03 },
			note: "correction-red-yellow: the red of the cast is a quarter stronger than that of the swatches",
		},
		{
			function: "RECIPE_AFTER_CAST",
			args: [
				"63.54, 4.94, 17.75",
				[[0, 0.03722, 0.00596, 0]],
				"63.24, 4.36, 15.5",
				DOSES,
				COLORS,
			],
			expected: [[0, 0.04465, 0.0054, 0, null, null, null]],
			tolerance: { rel: 0.03 },
			note: "correction-yellow-black",
		},
	],
};
