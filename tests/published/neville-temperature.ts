import type { PublishedFile } from "./published";

export const published: PublishedFile = {
	source: "Neville, Properties of Concrete: temperature of fresh concrete",
	locator:
		"formula with 0.22 seen in www.scribd.com/document/680176225; the number is worked from it by hand",
	status: "confirmed",
	cases: [
		{
			function: "MIX_TEMPERATURE",
			args: [[[1839], [335]], [[27], [66]], 123, 27],
			expected: 31.78,
			tolerance: 0.005,
			note: "[0.22 (27 × 1839 + 66 × 335) + 27 × 123] / [0.22 × 2174 + 123] = 19108.86 / 601.28",
		},
		{
			function: "MIX_TEMPERATURE",
			args: [[[1839], [335]], [[27], [66]], 100, 27, 23],
			expected: 27.69,
			tolerance: 0.005,
			note: "23 kg of the water as ice: (10923.66 + 4864.2 + 27 × 100 − 80 × 23) / 601.28 = 16647.86 / 601.28",
		},
	],
};
