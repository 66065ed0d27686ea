import type { PublishedFile } from "./published";

export const published: PublishedFile = {
	source: "US Army Engineer School, course EN5466, Concrete Engineering",
	locator:
		"moisture-adjustment problem; armyengineer.tpub.com/EN5466A/EN5466A0051.htm",
	status: "confirmed",
	cases: [
		{
			function: "MOISTURE_CORRECTION",
			args: [[[1768], [1083]], [[0.02], [0.06]], 0],
			expected: [
				[null, 35.36],
				[null, 64.98],
			],
			tolerance: 0.005,
			note: "coarse and fine aggregate, free moisture 2% and 6%; the masses to weigh are not printed",
		},
	],
};
