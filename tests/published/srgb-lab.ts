import type { PublishedFile } from "./published";

/** sRGB and its L*, a*, b* under D65; told by the difference of the two, which must be 0. */
const COLORS: readonly (readonly [hex: string, lab: string])[] = [
	["#ff0000", "53.2371, 80.0901, 67.2033"],
	["#00ff00", "87.7355, -86.1816, 83.1866"],
	["#0000ff", "32.3009, 79.1953, -107.8555"],
	["#ffffff", "100, 0, 0"],
	["#000000", "0, 0, 0"],
	["#808080", "53.585, 0, 0"],
	["#777777", "50.0344, 0, 0"],
	["#c0c0c0", "77.7044, 0, 0"],
	["#8a5a44", "42.9638, 17.1265, 20.7742"],
	["#b5a99a", "69.8476, 1.7531, 9.2947"],
	["#3a3835", "23.6216, 0.2104, 2.1816"],
	["#d8b45a", "74.8128, 2.503, 49.9834"],
	["#9e3b2f", "38.9044, 40.437, 28.829"],
	["#708090", "52.836, -2.1411, -10.5708"],
];

/** CIEDE2000 of two sRGB colors under D65; under D50 they come out otherwise. */
const UNDER_D65: readonly (readonly [
	a: string,
	b: string,
	difference: number,
])[] = [
	["#b5a99a", "#8a5a44", 28.5854],
	["#c8c4bc", "#7d7a75", 22.9153],
	["#9e3b2f", "#b2453a", 4.9816],
	["#d8b45a", "#e0b95e", 1.6639],
	["#3a3835", "#42403d", 2.6195],
];

export const published: PublishedFile = {
	source: "IEC 61966-2-1 (sRGB) and CIE 1976 L*a*b*",
	locator:
		"formulas as printed in CIE e-ILV 17-23-076; numbers recomputed from them by two public libraries, which agree to 4.2e-5",
	status: "confirmed",
	cases: [
		...COLORS.map((args) => ({
			function: "COLOR_DIFFERENCE",
			args,
			expected: 0,
			tolerance: 5e-4,
		})),
		...UNDER_D65.map(([a, b, expected]) => ({
			function: "COLOR_DIFFERENCE",
			args: [a, b],
			expected,
			tolerance: 5e-5,
		})),
		{
			function: "FAR_COLOR",
			args: [
				[["#000000"], ["#ffffff"]],
				[[0.82], [0.18]],
			],
			expected: "#767676",
			tolerance: 0,
			locator:
				"Colour for Python, models/rgb/transfer_functions/tests/test_srgb.py",
			note: "linear 0.18 is encoded 0.461356129500442: 117.65 of 255, so 118",
		},
	],
};
