import type { PublishedFile } from "./published";

export const published: PublishedFile = {
	source: "Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed.",
	locator: "table 5-2, beam 8, and its worked number",
	status: "confirmed",
	cases: [
		{
			function: "FORM_DEFLECTION",
			args: [108, 12, 4.29775, 1600000, 300, "us"],
			expected: 0.17,
			tolerance: 0.005,
			note: "150 lb/ft on 108 in, E 1.6·10⁶ psi, I 79.39 in⁴: here as fluid of 300 lb/ft³ on a board 12 in high, 300/1728 × 12²/2 × 12 = 150 lb/ft, I = 12 × 4.29775³/12 = 79.38",
		},
	],
};
