import type { PublishedFile } from "./published";

const MASSES = [[335], [1839]];
const COOLER = "lowers the mix by 1 °C, from 31.8 to 30.8";

export const published: PublishedFile = {
	source:
		"PCA, Design and Control of Concrete Mixtures, EB001, 14th ed. (2002), ch. 13",
	locator:
		"Table 13-1, effect of temperature of materials on initial concrete temperature",
	status: "memory",
	cases: [
		{
			function: "MIX_TEMPERATURE",
			args: [MASSES, [[66], [27]], 123, 27],
			expected: 31.8,
			tolerance: 0.05,
			note: "cement and aggregate; the table counts 0.92 over 4.184 kJ/kg·K and not 0.22",
		},
		{
			function: "MIX_TEMPERATURE",
			args: [MASSES, [[66 - 8.2], [27]], 123, 27],
			expected: 30.8,
			tolerance: 0.05,
			locator: "text under Table 13-1",
			note: `cement 8.2 °C cooler ${COOLER}`,
		},
		{
			function: "MIX_TEMPERATURE",
			args: [MASSES, [[66], [27]], 123, 27 - 4.9],
			expected: 30.8,
			tolerance: 0.05,
			locator: "text under Table 13-1",
			note: `water 4.9 °C cooler ${COOLER}`,
		},
		{
			function: "MIX_TEMPERATURE",
			args: [MASSES, [[66], [27 - 1.5]], 123, 27],
			expected: 30.8,
			tolerance: 0.05,
			locator: "text under Table 13-1",
			note: `aggregate 1.5 °C cooler ${COOLER}`,
		},
		{
			function: "WATER_TEMPERATURE_FOR",
			args: [30.8, MASSES, [[66], [27]], 123],
			expected: 22.1,
			tolerance: 0.25,
			locator: "text under Table 13-1",
			note: "27 − 4.9; the targets' last digit, 0.05 °C, is worth 4.9 times as much in the water",
		},
	],
};
