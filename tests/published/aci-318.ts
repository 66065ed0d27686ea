import type { PublishedFile } from "./published";

export const published: PublishedFile = {
	source: "ACI 318, modulus of rupture",
	locator:
		"7.5√f′c psi seen on wikiengineer.com/Structural/CrackingMoment; the numbers are worked by hand",
	status: "confirmed",
	cases: [
		{
			function: "MODULUS_OF_RUPTURE",
			args: [4000, "us"],
			expected: 474,
			tolerance: 0.5,
			note: "7.5 × 63.246 = 474.3",
		},
		{
			function: "MODULUS_OF_RUPTURE",
			args: [25],
			expected: 3.1,
			tolerance: 1e-9,
			status: "memory",
			note: "0.62 × 5",
		},
	],
};
