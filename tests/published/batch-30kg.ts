import type { PublishedFile } from "./published";

const PARTS = [[228], [456], [719], [883]];

export const published: PublishedFile = {
	source: "University exercise EA102, absolute volume method of ACI",
	locator:
		"worked mix of 2286 kg/m³ scaled to 30 kg; www.scribd.com/document/382756101",
	status: "confirmed",
	cases: [
		{
			function: "WEIGH_OUT",
			args: [PARTS, 30],
			expected: [[2.992], [5.984], [9.436], [11.588]],
			tolerance: 0.0006,
			note: "water, cement, coarse, fine; the source divides by 76.2, itself rounded",
		},
		{
			function: "WATER_BINDER_RATIO",
			args: [PARTS, [[""], [1], [""], [""]], [[1], [""], [""], [""]]],
			expected: 0.5,
			tolerance: 0,
		},
		{
			function: "MIX_DENSITY",
			args: [PARTS, [[1], [3.155], [2.66], [2.7]], 0.03],
			expected: 2286,
			tolerance: 0.5,
			note: "sum of the four masses of a cubic meter",
		},
	],
};
