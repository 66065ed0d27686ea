import type { PublishedFile } from "./published";

/** Raw sienna, a hydrated iron oxide earth: 0.01, 0.05 and 0.16 mL of watercolor on white paper, as measured. */
const DOSES = [[0.01], [0.05], [0.16]];
const COLORS = [["#ed9b2f"], ["#bd6631"], ["#915832"]];

export const published: PublishedFile = {
	source:
		"NTU WPSM data set: Chen, Huang, Chang and Ouhyoung, arXiv:1904.00275 (2019)",
	locator: "PigmentRGB_primary.csv, raw sienna",
	status: "confirmed",
	cases: [
		{
			function: "TONE_COLOR",
			args: [DOSES, COLORS, 0.03],
			expected: "#d07331",
			tolerance: 0,
			note: "a reference run of the same fit, in two languages, gives L*a*b* 57.903, 31.714, 50.75: sRGB 208.0, 114.9, 48.6 by IEC 61966-2-1; measured is #d0732d",
		},
		{
			function: "TONE_COLOR",
			args: [DOSES, COLORS, 0.08],
			expected: "#ab5e32",
			tolerance: 0,
			note: "the same reference run gives 48.052, 27.646, 38.351: sRGB 170.8, 93.8, 49.6",
		},
		{
			function: "DOSE_FOR_COLOR",
			args: [DOSES, COLORS, "57.9065, 31.4921, 52.364"],
			expected: [[0.03, null, null, null]],
			tolerance: { rel: 0.05 },
			note: "the color measured at 0.03 mL, which is not among the swatches; the tolerance is what such readings are good for",
		},
		{
			function: "DOSE_FOR_COLOR",
			args: [DOSES, COLORS, "#ed9b2f"],
			expected: [[0.01, 0, 0.01, null]],
			tolerance: 1e-6,
			note: "the weakest swatch itself",
		},
	],
};
