import type { PublishedFile } from "./published";

export const published: PublishedFile = {
	source:
		"Christov, Lueptow and Ottino, Stretching and folding versus cutting and shuffling, arXiv:1010.2256",
	locator: "baker's map: bands of start / 2ⁿ, interfaces double with each fold",
	status: "confirmed",
	cases: [
		{ function: "BAND_WIDTH", args: [40, 1], expected: 20, tolerance: 1e-9 },
		{ function: "BAND_WIDTH", args: [40, 3], expected: 5, tolerance: 1e-9 },
		{ function: "BAND_WIDTH", args: [40, 5], expected: 1.25, tolerance: 1e-9 },
		{
			function: "BAND_WIDTH",
			args: [40, 8],
			expected: 0.15625,
			tolerance: 1e-9,
		},
		{
			function: "BAND_WIDTH",
			args: [40, 10],
			expected: 0.0390625,
			tolerance: 1e-9,
		},
	],
};
