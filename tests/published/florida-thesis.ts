import type { PublishedFile } from "./published";

export const published: PublishedFile = {
	source: "University of Florida, thesis (Parham), mix 73A00P",
	locator:
		"eq. 4-1 and unit weight, p. 72; ufdcimages.uflib.ufl.edu/UF/E0/00/88/23/00001",
	status: "confirmed",
	cases: [
		{
			function: "BATCH_MASS",
			args: [27, 141.2, "", "us"],
			expected: 3812.41,
			tolerance: 27 * 0.05,
			note: "sum of the masses of a cubic yard; its 141.2 lb/ft³ is worked from that sum, not printed",
		},
		{
			function: "WATER_BINDER_RATIO",
			args: [
				[[760], [279], [1033], [1736], [4.41]],
				[[1], [""], [""], [""], [""]],
				[[""], [1], [""], [""], [""]],
			],
			expected: 0.37,
			tolerance: 0.005,
			note: "cement, water, fine, coarse, admixtures in lb per yd³; the source leaves the water of the admixtures out",
		},
	],
};
