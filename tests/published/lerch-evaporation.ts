import type { PublishedCase, PublishedFile } from "./published";

/** Case, concrete °F, air °F, humidity %, wind mph, evaporation lb/ft²·h. */
const ROWS = [
	["1a", 70, 70, 70, 0, 0.015],
	["1b", 70, 70, 70, 5, 0.038],
	["1c", 70, 70, 70, 10, 0.062],
	["1d", 70, 70, 70, 15, 0.085],
	["1e", 70, 70, 70, 20, 0.11],
	["1f", 70, 70, 70, 25, 0.135],
	["2a", 70, 70, 90, 10, 0.02],
	["2b", 70, 70, 50, 10, 0.1],
	["2c", 70, 70, 30, 10, 0.135],
	["2d", 70, 70, 10, 10, 0.175],
	["3a", 50, 50, 70, 10, 0.026],
	["3b", 60, 60, 70, 10, 0.043],
	["3c", 80, 80, 70, 10, 0.077],
	["3d", 90, 90, 70, 10, 0.11],
	["6a", 70, 40, 50, 0, 0.035],
	["6b", 70, 40, 50, 10, 0.162],
	["6c", 70, 40, 50, 25, 0.357],
	["7a", 80, 70, 50, 10, 0.175],
	["7b", 70, 70, 50, 10, 0.1],
	["7c", 60, 70, 50, 10, 0.045],
] as const;

export const published: PublishedFile = {
	source:
		"Lerch, Plastic Shrinkage, ACI Journal 53 (1957); table repeated in PCA, Design and Control of Concrete Mixtures",
	locator: "effect of temperatures, humidity and wind on drying tendency",
	status: "memory",
	cases: ROWS.map(
		([locator, mix, air, humidity, wind, rate]): PublishedCase => ({
			function: "EVAPORATION_RATE",
			args: [air, humidity / 100, mix, wind, "us"],
			expected: rate,
			tolerance: Math.max(0.2 * rate, 0.006),
			locator: `case ${locator}`,
			note: "the table is Menzel's formula; the power law of ACI 305R is a fit to it, up to 19% off where the air is cold",
		}),
	),
};
