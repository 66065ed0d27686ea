import type { PublishedFile } from "./published";

export const published: PublishedFile = {
	source: "ACI 347-04, 2.2.2, p = wh for mixes above 7 in slump",
	locator:
		"rule in a letter of M. K. Hurd, concreteconstruction.net/how-to/use-updated-wall-pressure-formulas_o; the number is worked by hand",
	status: "confirmed",
	cases: [
		{
			function: "FORM_PRESSURE",
			args: [50, 2300],
			expected: 1.128,
			tolerance: 0.001,
			note: "2300 × 9.81 × 0.05 = 1128 Pa",
		},
		{
			function: "FORM_PRESSURE",
			args: [24, 150, "us"],
			expected: 300,
			tolerance: 1e-9,
			note: "150 lb/ft³ × 2 ft",
		},
	],
};
