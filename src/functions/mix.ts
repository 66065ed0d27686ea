import {
	batchKg,
	binderShareOf,
	dampMass,
	fiberKg,
	freshDensityKgPerM3,
	PVA_KG_PER_M3,
	waterBinderRatio,
	weighOutMasses,
} from "../calc/mix";
import { density, list, number, share, units, volume } from "./arguments";
import { sheetFunction } from "./declare";

const group = "Mix";

const parts = () =>
	list(number("Parts of each ingredient by mass, e.g. B2:B9", { min: 0 }));

const binderShare = () =>
	list(
		share(
			"Binder in each ingredient, e.g. 100% for cement, 55% for a bagged blend",
			{ blank: 0 },
		),
	);

const ABSOLUTE_VOLUME =
	"ACI 211.1, absolute volumes; US Navy NAVEDTRA 14070, chapter 17";

export const BATCH_MASS = sheetFunction({
	name: "BATCH_MASS",
	group,
	summary: "Mass of mix to batch for a volume, with an allowance for waste.",
	params: {
		volume: volume("Volume of the pieces, e.g. 56"),
		density: density("Fresh density of the mix, e.g. 2150"),
		waste: share("What is lost on tools and spilled, e.g. 8%", { blank: 0 }),
		units: units(),
	},
	answer: { text: "the mass to batch", unit: "mass" },
	example: {
		shown: ["56", "2150", "8%"],
		values: [56, 2150, 0.08],
		answer: 130.032,
		working: "0.056 m³ × 2150 kg/m³ × 1.08 = 130.032 kg",
	},
	source: "Mass = volume × density × (1 + waste)",
	compute: ({ volume, density, waste }) =>
		batchKg({ volumeM3: volume, densityKgPerM3: density, waste }),
});

export const WEIGH_OUT = sheetFunction({
	name: "WEIGH_OUT",
	group,
	summary: "Mass of each ingredient of a batch.",
	params: {
		parts: parts(),
		mass: number("Mass of the batch in any unit, e.g. 130", { above: 0 }),
	},
	answer: {
		shape: "column",
		text: "each ingredient's mass, in the unit of mass",
		beside: "parts",
	},
	example: {
		shown: ["B2:B4", "130"],
		values: [[[1], [1], [0.6]], 130],
		answer: [50, 50, 30],
		working: "130 / (1 + 1 + 0.6) = 50 a part",
	},
	source: "Proportion",
	compute: ({ parts, mass }) => weighOutMasses(parts, mass),
});

export const MIX_DENSITY = sheetFunction({
	name: "MIX_DENSITY",
	group,
	summary: "Fresh density of a mix from the specific gravities of its parts.",
	limits:
		"As good as the specific gravities and the air typed in: weigh a known volume of the first batch and use that.",
	params: {
		parts: parts(),
		specific_gravity: list(
			number("Specific gravity of each ingredient, e.g. 3.15 for cement", {
				above: 0,
			}),
		),
		air: share("Air in the fresh mix, e.g. 5%", { min: 0, below: 1, blank: 0 }),
		units: units(),
	},
	answer: { text: "the fresh density", unit: "density" },
	example: {
		shown: ["B2:B3", "C2:C3", "5%"],
		values: [[[3], [1]], [[3], [1]], 0.05],
		answer: 1900,
		working: "4 kg / (3 / 3000 + 1 / 1000) m³ × 0.95 = 1900 kg/m³",
	},
	source: ABSOLUTE_VOLUME,
	compute: ({ parts, specific_gravity, air }) =>
		freshDensityKgPerM3(
			parts.map((part, index) => ({
				part,
				specificGravity: specific_gravity[index] ?? Number.NaN,
			})),
			air,
		),
});

export const BINDER_SHARE = sheetFunction({
	name: "BINDER_SHARE",
	group,
	summary: "Share of binder in the fresh mix by mass, water included.",
	params: { parts: parts(), binder_share: binderShare() },
	answer: { text: "binder mass over fresh mass" },
	example: {
		shown: ["B2:B4", "C2:C4"],
		values: [
			[[60], [28], [12]],
			[[1], [""], [""]],
		],
		answer: 0.6,
		working: "60 / (60 + 28 + 12) = 60%",
	},
	source: "Definition",
	compute: ({ parts, binder_share }) =>
		binderShareOf(
			parts.map((part, index) => ({
				part,
				binderShare: binder_share[index] ?? 0,
			})),
		),
});

export const WATER_BINDER_RATIO = sheetFunction({
	name: "WATER_BINDER_RATIO",
	group,
	summary: "Water over binder by mass, liquid admixtures counted.",
	params: {
		parts: parts(),
		binder_share: binderShare(),
		water_share: list(
			share(
				"Water in each ingredient, e.g. 100% for water, 60% for a liquid reducer",
				{ blank: 0 },
			),
		),
	},
	answer: { text: "water mass over binder mass" },
	example: {
		shown: ["B2:B4", "C2:C4", "D2:D4"],
		values: [
			[[100], [30], [5]],
			[[1], [""], [""]],
			[[""], [1], [0.6]],
		],
		answer: 0.33,
		working: "(30 + 5 × 0.6) / 100 = 0.33",
	},
	source: "Definition",
	compute: ({ parts, binder_share, water_share }) =>
		waterBinderRatio(
			parts.map((part, index) => ({
				part,
				binderShare: binder_share[index] ?? 0,
				waterShare: water_share[index] ?? 0,
			})),
		),
});

export const MOISTURE_CORRECTION = sheetFunction({
	name: "MOISTURE_CORRECTION",
	group,
	summary:
		"Mass to weigh of a damp material, and the free water it brings into the mix.",
	limits:
		"Subtract the free water from the mix water. Below 0 the material takes up water: add as much to the mix water.",
	params: {
		masses: number("Dry mass by the mix design, in any unit, e.g. 40", {
			min: 0,
		}),
		moisture: share("Water in it as a share of its dry mass, e.g. 5%"),
		absorption: share(
			"What it soaks up itself, as a share of its dry mass, e.g. 1%",
		),
	},
	answer: {
		shape: "row",
		text: "mass to weigh and free water, in the unit of masses",
		columns: [{ text: "mass to weigh" }, { text: "free water" }],
	},
	example: {
		shown: ["40", "5%", "1%"],
		values: [40, 0.05, 0.01],
		answer: [42, 1.6],
		working: "40 × 1.05 = 42; 40 × (5% − 1%) = 1.6",
	},
	source: "ACI 211.1, adjustment for aggregate moisture; US Army course EN5466",
	compute: ({ masses, moisture, absorption }) =>
		dampMass({ dryMass: masses, moisture, absorption }),
});

export const FIBER_MASS = sheetFunction({
	name: "FIBER_MASS",
	group,
	summary: "Mass of fiber for a share of the mix's volume.",
	params: {
		volume: volume("Volume of mix, e.g. 60"),
		volume_share: share("Fiber as a share of the volume, e.g. 2%"),
		density: density(
			"Density of the fiber, e.g. 1300 for PVA, 2680 for AR glass",
			{
				blank: PVA_KG_PER_M3,
			},
		),
		units: units(),
	},
	answer: { text: "the mass of fiber", unit: "mass" },
	example: {
		shown: ["1000", "2%"],
		values: [1000, 0.02],
		answer: 26,
		working: "1 m³ × 0.02 × 1300 kg/m³ = 26 kg",
	},
	source:
		"Mass = volume × density; 1300 kg/m³ for PVA and 2680 for AR glass are from memory of makers' sheets",
	compute: ({ volume, volume_share, density }) =>
		fiberKg({
			volumeM3: volume,
			volumeShare: volume_share,
			densityKgPerM3: density,
		}),
});
