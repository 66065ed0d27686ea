import type { PublishedFile } from "./published";

export const published: PublishedFile = {
	source: "ASTM C979/C979M, Pigments for Integrally Colored Concrete",
	locator: "1.4, editions 05, 10 and 16",
	status: "confirmed",
	cases: [
		{
			function: "PIGMENT_HEADROOM",
			args: [[[0]], [[""]]],
			expected: 0.1,
			tolerance: 1e-12,
			note: "at most 10 mass % of cement; the rule is printed, not an example",
		},
		{
			function: "PIGMENT_HEADROOM",
			args: [[[0.03, 0.03]], [[0.1, 0.06]]],
			expected: 0,
			tolerance: 1e-12,
			note: "10% and 6% allowed together 6%: 3.0 kg on 50 kg of cement; the rule is printed, the figures are not",
		},
		{
			function: "PIGMENT_HEADROOM",
			args: [[[0.1]], [[""]], 1],
			expected: 0,
			tolerance: 1e-12,
			locator:
				"National Concrete Canoe Competition RFI 2019-3: cement read as all cementitious material",
			note: "60 kg of cement and 40 kg of slag allow 10 kg when slag counts as cement (cement share 1)",
		},
		{
			function: "PIGMENT_HEADROOM",
			args: [[[0.1]], [[""]], 0.6],
			expected: 0.1 - 10 / 60,
			tolerance: 1e-12,
			note: "the same 10 kg counted on 60 kg of cement alone, as the standard's text says: 6.7% over",
		},
	],
};
