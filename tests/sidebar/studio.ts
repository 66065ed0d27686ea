import type { PanelStart } from "../../src/sheets/messages";

/** A studio of round numbers, so that a job can be worked by hand. */
export const STUDIO: PanelStart = {
	units: "metric",
	unitsFixed: true,
	studio: {
		settings: {
			units: "metric",
			currency: "€",
			mixer_capacity: 100,
			gram_division: 0.1,
			waste: 0.1,
			air: 0,
			// no voids, so no paste
			void_share: 0,
			void_depth: 0,
			skim: 0,
		},
		mixes: [
			// 2 parts of SG 2.5 and 0.2 of water: 2.2 / (2 / 2.5 + 0.2) = 2.2 kg/L, so 2200 kg/m³; binder 1.1 / 2.2 = 50%; cement 0.88 / 1.1 = 80% of it.
			{
				mix: "Plain mix",
				ingredient: "Dry",
				parts: 2,
				specificGravity: 2.5,
				binderShare: 0.55,
				cementShare: 0.44,
				// 0.50 a kg
				pack: 25,
				packPrice: 12.5,
			},
			{
				mix: "Plain mix",
				ingredient: "Water",
				parts: 0.2,
				specificGravity: 1,
				waterShare: 1,
			},
		],
		pigments: [
			// 0.02 and 0.01 a gram
			{ name: "Umber", maximum: 0.06, pack: 1000, packPrice: 20 },
			{ name: "Black", maximum: 0.06, pack: 1000, packPrice: 10 },
			{ name: "Ocher", maximum: 0.06 },
		],
	},
	jobs: [],
	open: 0,
	separator: ",",
};

/** The same with other settings. */
export const withSettings = (
	settings: PanelStart["studio"]["settings"],
): PanelStart => ({
	...STUDIO,
	studio: {
		...STUDIO.studio,
		settings: { ...STUDIO.studio.settings, ...settings },
	},
});
