import type { PublishedFile } from "./published";

export const published: PublishedFile = {
	source: "Mathematics On Demand, selling price after a profit margin",
	locator: "mathondemand.com: cost 75 at 25%, cost 100 at 20%",
	status: "confirmed",
	cases: [
		{
			function: "PRICE_FOR_MARGIN",
			args: [75, 0.25],
			expected: 100,
			tolerance: 0.005,
		},
		{
			function: "PRICE_FOR_MARGIN",
			args: [100, 0.2],
			expected: 125,
			tolerance: 0.005,
		},
		{
			function: "MARGIN_OF",
			args: [100, 75],
			expected: 0.25,
			tolerance: 0.00005,
		},
		{
			function: "MARGIN_OF",
			args: [125, 100],
			expected: 0.2,
			tolerance: 0.00005,
		},
	],
};
