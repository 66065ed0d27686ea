import type { PublishedFile } from "./published";

/** Parts, specific gravities and air of the example: cement, water, coarse and fine aggregate in lb per yd³. */
const PARTS = [[610], [305], [1735], [1152]];
const GRAVITIES = [[3.15], [1], [2.6], [2.65]];

export const published: PublishedFile = {
	source:
		"US Navy, NAVEDTRA 14070 and 14071, Engineering Aid, ch. 17 (procedure of ACI 211.1)",
	locator:
		"p. 17-6 and 17-7, example using the absolute volume method; engineeringtraining.tpub.com/14070/css/14070_406.htm",
	status: "confirmed",
	cases: [
		{
			function: "BATCH_MASS",
			args: [17.01, 102, "", "us"],
			expected: 1735,
			tolerance: 0.5,
			note: "dry-rodded volume 0.63 × 27 = 17.01 ft³ at 102 lb/ft³",
		},
		{
			function: "WATER_BINDER_RATIO",
			args: [PARTS, [[1], [""], [""], [""]], [[""], [1], [""], [""]]],
			expected: 0.5,
			tolerance: 0,
			note: "305 lb of water, 610 lb of cement",
		},
		{
			function: "MIX_DENSITY",
			args: [[[610]], [[3.15]], "", "us"],
			expected: 610 / 3.1,
			tolerance: { rel: 0.005 / 3.1 },
			note: "printed as 3.10 ft³ of cement: half its last digit",
		},
		{
			function: "MIX_DENSITY",
			args: [[[305]], [[1]], "", "us"],
			expected: 305 / 4.89,
			tolerance: { rel: 0.005 / 4.89 },
			note: "printed as 4.89 ft³ of water",
		},
		{
			function: "MIX_DENSITY",
			args: [[[1735]], [[2.6]], "", "us"],
			expected: 1735 / 10.69,
			tolerance: { rel: 0.005 / 10.69 },
			note: "printed as 10.69 ft³ of coarse aggregate",
		},
		{
			function: "MIX_DENSITY",
			args: [PARTS, GRAVITIES, 0.05, "us"],
			expected: 140.8,
			tolerance: 0.15,
			note: "the four printed masses, 3802 lb, over 27 ft³; the sum is not printed. The source counts water at 62.4 lb/ft³ and not 62.43, and its masses are rounded: together 0.1 lb/ft³",
		},
	],
};
