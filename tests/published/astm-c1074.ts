import type { PublishedCase, PublishedFile } from "./published";

/** °C, age factor at a reference of 23 °C and of 20 °C. */
const FACTORS = [
	[5, 0.335, 0.398],
	[10, 0.46, 0.547],
	[30, 1.477, 1.756],
	[40, 2.503, 2.975],
] as const;

const factor = (
	temperature: number,
	reference: number,
	expected: number,
): PublishedCase => ({
	function: "EQUIVALENT_AGE",
	args: [1, temperature, reference, 5000],
	expected,
	tolerance: { rel: 0.002 },
	note: "worked from the formula with 0 °C as 273 K, which is 0.1% off at 40 °C; half the last digit is 0.15% of the smallest",
});

export const published: PublishedFile = {
	source: "ASTM C1074, eq. 2, Q = 5000 K",
	locator: "formula; no printed table of age factors was found",
	status: "memory",
	cases: FACTORS.flatMap(([temperature, at23, at20]) => [
		factor(temperature, 23, at23),
		factor(temperature, 20, at20),
	]),
};
