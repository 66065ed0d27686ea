import type { PublishedFile } from "./published";

/** Travel, mm, at which the distance multiplier is the .95 of the example: 4.5 / (0.95 − 0.82) cm. */
const TRAVEL_MM = 45 / 0.13;

export const published: PublishedFile = {
	source:
		"Canadian Centre for Occupational Health and Safety, NIOSH lifting equation: horizontal multiplier",
	locator:
		"worked example; www.ccohs.ca/oshanswers/ergonomics/niosh/horizontal.html",
	status: "confirmed",
	cases: [
		{
			function: "LIFT_LIMIT",
			args: [500, 750, TRAVEL_MM, "", "", "", "good"],
			expected: 10.9,
			tolerance: 0.05,
			note: "23 × .50 × 1 × .95; the page takes .95 for 40 cm of travel, where the manual has .93",
		},
		{
			function: "LIFT_LIMIT",
			args: [312.5, 750, TRAVEL_MM, "", "", "", "good"],
			expected: 17.5,
			tolerance: 0.05,
			note: "23 × .80 × 1 × .95; 25 / .80 = 31.25 cm",
		},
	],
};
