import type { PublishedFile } from "./published";

/** A mass so large that its own division does not count. */
const WITHOUT = 1e12;

export const published: PublishedFile = {
	source:
		"JCGM 100:2008, Guide to the expression of uncertainty in measurement",
	locator: "5.1.2 (propagation) and F.2.2.1 (resolution, u = d/√12)",
	status: "memory",
	cases: [
		{
			function: "DOSE_UNCERTAINTY",
			args: [2, 0.1, WITHOUT, 1],
			expected: 0.020412,
			tolerance: 5e-7,
			note: "2 g tared on a scale of 0.1 g; a single reading would be 0.014434",
		},
		{
			function: "DOSE_UNCERTAINTY",
			args: [WITHOUT, 0.1, 1, 0.1, 1],
			expected: 0.0408248,
			tolerance: 5e-8,
			note: "u of one reading of d = 0.1 is 0.028867513; tare and reading are two: × √2",
		},
	],
};
