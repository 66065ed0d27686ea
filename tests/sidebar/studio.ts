import type { PanelStart } from "../../src/sheets/messages";

/** A studio of round numbers, so that a job can be worked by hand. */
export const STUDIO: PanelStart = {
	units: "metric",
	unitsFixed: true,
	currency: "€",
	mixerCapacity: 100,
	gramDivision: 0.1,
	waste: 0.1,
	air: 0,
	mixes: [
		{
			// 2 parts of SG 2.5 and 0.2 of water: 2.2 / (2 / 2.5 + 0.2) = 2.2 kg/L, so 2200 kg/m³; binder 1.1 / 2.2 = 50%; cement 0.88 / 1.1 = 80% of it.
			name: "Plain mix",
			ingredients: [
				{
					name: "Dry",
					parts: 2,
					specificGravity: 2.5,
					binderShare: 0.55,
					cementShare: 0.44,
					waterShare: 0,
					pricePerMass: 0.5,
				},
				{
					name: "Water",
					parts: 0.2,
					specificGravity: 1,
					binderShare: 0,
					cementShare: 0,
					waterShare: 1,
					pricePerMass: 0,
				},
			],
		},
	],
	pigments: [
		{ name: "Umber", maximum: 0.06, pricePerGram: 0.02 },
		{ name: "Black", maximum: 0.06, pricePerGram: 0.01 },
		{ name: "Ocher", maximum: 0.06, pricePerGram: 0 },
	],
	jobs: [],
	open: 0,
	separator: ",",
};
