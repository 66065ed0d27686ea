import type { PublishedFile } from "./published";

export const published: PublishedFile = {
	source:
		"Concrete International, Mar 2007, Q&A: Estimating Evaporation Rates (example of ACI 305R)",
	locator:
		"answers seen in www.scribd.com/document/376430127; its inputs are from memory of ACI's chart",
	status: "memory",
	cases: [
		{
			function: "EVAPORATION_RATE",
			args: [80, 0.5, 87, 12, "us"],
			expected: 0.24,
			tolerance: 0.005,
		},
		{
			function: "EVAPORATION_RATE",
			args: [27, 0.5, 31, 19, "metric"],
			expected: 1.15,
			tolerance: 0.005,
		},
	],
};
