import type { PublishedFile } from "./published";

export const published: PublishedFile = {
	source:
		"US Army Corps of Engineers, CRD-C 307-91, amount of ice for a concrete temperature",
	locator: "notation; www.scribd.com/document/549540178",
	status: "confirmed",
	cases: [
		{
			function: "ICE_FOR",
			args: [32, 0, 32, 2, 32 + 143.5, "us"],
			expected: 1,
			tolerance: { rel: 0.004 },
			note: "143.5 Btu/lb: a pound of water 143.5 °F above freezing melts a pound of ice. ACI's 80 kcal/kg is 144",
		},
	],
};
