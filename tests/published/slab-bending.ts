import type { PublishedFile } from "./published";

const SLAB = [2400, 38, 2300];

export const published: PublishedFile = {
	source: "Statics of a uniformly loaded beam, M = wL²/8, S = bh²/6",
	locator:
		"own arithmetic with g = 9.81; the forms as in mathalino.com, Simple beam with overhang",
	status: "memory",
	cases: [
		{
			function: "SELF_WEIGHT_STRESS",
			args: [...SLAB, "ends"],
			expected: 2.565,
			tolerance: { rel: 0.001 },
			note: "a slab 0.6 m wide: w 514.44 N/m, M 370.39 N·m, S 144 400 mm³; g is 9.80665 here",
		},
		{
			function: "SELF_WEIGHT_STRESS",
			args: [...SLAB, "fifth points"],
			expected: 0.44,
			tolerance: { rel: 0.001 },
			note: "0.0214466 wL², 5.8284 times less than between the ends",
		},
		{
			function: "SELF_WEIGHT_STRESS",
			args: [2000, 50, 1, "fifth points"],
			expected:
				(6 * ((10 - 5.86) / 2 / 10) ** 2 * 9.80665 * 4) / 2 / 0.05 / 1e6,
			tolerance: { rel: 0.003 },
			locator: "mathalino.com, Simple beam with overhang, q. 3",
			status: "confirmed",
			note: "least moment of a 10 m beam at a span of 5.86 m: over the supports w a²/2 with a = 2.07 m; the span's half digit, 0.0025 m in a, is worth 0.24%",
		},
	],
};
