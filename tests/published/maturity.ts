import type { PublishedFile } from "./published";

export const published: PublishedFile = {
	source: "Nurse–Saul maturity: examination question and textbooks",
	locator:
		"28 days at 15 °C, datum −11 °C: civinnovate.com, Quality control of concrete, explanation 9",
	status: "confirmed",
	cases: [
		{
			function: "TEMPERATURE_TIME_FACTOR",
			args: [28 * 24, 15, -11],
			expected: 728 * 24,
			tolerance: 0,
			note: "printed as 728 °C·days",
		},
		{
			function: "TEMPERATURE_TIME_FACTOR",
			args: [28 * 24, 18, -11],
			expected: 19800,
			tolerance: 313,
			locator: "28 days at 18 °C, datum −11 °C; Neville, Shetty",
			status: "memory",
			note: "printed rounded: 672 h × 29 °C is 19 488, 312 less",
		},
	],
};
