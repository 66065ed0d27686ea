import { length, units } from "./arguments";
import { sheetFunction } from "./declare";

export const READ_LENGTH = sheetFunction({
	name: "READ_LENGTH",
	group: "Takeoff",
	summary: "A length typed as people write it, as a number.",
	limits:
		"A comma followed by exactly three digits (2,440) is refused, since it can be read in two ways.",
	params: {
		text: length(`Length, e.g. 8' 1/2", 25-1/2" or 2.4 m`, { min: 0 }),
		units: units(),
	},
	answer: { text: "the length", unit: "length" },
	example: {
		shown: [`"8' 1/2"""`, `"us"`],
		values: [`8' 1/2"`, "us"],
		answer: 96.5,
		working: "8 ft × 12 in + 1/2 in = 96.5 in",
	},
	source: "International inch of 25.4 mm exactly (NIST SP 811, appendix B)",
	compute: ({ text }) => text,
});
