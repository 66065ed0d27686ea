import type { PublishedFile } from "./published";

const BLANK = [""];

export const published: PublishedFile = {
	source: "Lepech and Li, ACI Materials Journal 105(4), 2008: ECC M45",
	locator: "mix proportions, kg/m³",
	status: "memory",
	cases: [
		{
			function: "WATER_BINDER_RATIO",
			args: [
				[[583], [700], [467], [298], [19], [26]],
				[[1], [1], BLANK, BLANK, BLANK, BLANK],
				[BLANK, BLANK, BLANK, [1], BLANK, BLANK],
			],
			expected: 0.232,
			tolerance: 0.0005,
			note: "298 / (583 + 700), without the water of the reducer; worked from the masses, not printed",
		},
		{
			function: "BINDER_SHARE",
			args: [
				[[583], [700], [467], [298], [19], [26]],
				[[1], [1], BLANK, BLANK, BLANK, BLANK],
			],
			expected: 1283 / 2093,
			tolerance: 1e-12,
			note: "worked from the masses, not printed",
		},
		{
			function: "FIBER_MASS",
			args: [1000, 0.02],
			expected: 26,
			tolerance: 0.01,
			note: "26 kg of PVA fiber in a cubic meter, 2% of the volume",
		},
		{
			function: "FIBER_MASS",
			args: [1000, 0.02, 2680],
			expected: 53.6,
			tolerance: 0.01,
			locator: "definition, for AR glass at 2.68 g/cm³",
			note: "closed form: 0.02 m³ × 2680 kg/m³",
		},
	],
};
