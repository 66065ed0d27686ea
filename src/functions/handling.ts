import {
	formPressurePa,
	modulusOfRuptureMPa,
	modulusOfRupturePsi,
	peopleToLift,
	SUPPORTS,
	selfWeightStressPa,
	upliftKg,
} from "../calc/handling";
import { fromSi, toSi } from "../job/reading/units";
import {
	density,
	length,
	mass,
	number,
	stress,
	units,
	volume,
	word,
} from "./arguments";
import { sheetFunction } from "./declare";

const group = "Handling";

export const PEOPLE_TO_LIFT = sheetFunction({
	name: "PEOPLE_TO_LIFT",
	group,
	summary: "How many people a lift takes: 1, 2, 3 or lifting equipment.",
	limits:
		"The limit must be your studio's own for one person in such a lift. NIOSH's limit (LIFT_LIMIT) is for one person and does not cover team lifts. Two people lift two thirds of the sum of their limits, three half of it, and only with room to walk, a good grip for each and one who calls.",
	params: {
		weight: number("Weight of the piece in any unit, e.g. 60", { above: 0 }),
		one_person_limit: number(
			"What one person may lift here, in the same unit, e.g. 23",
			{
				min: 0,
			},
		),
	},
	answer: { text: "people, or lifting equipment" },
	example: {
		shown: ["30", "23"],
		values: [30, 23],
		answer: 2,
		working: "30 > 23; two lift 2/3 × 2 × 23 = 30.67",
	},
	source: "HSE, Manual handling (L23), team handling",
	compute: ({ weight, one_person_limit }) =>
		peopleToLift(weight, one_person_limit),
});

export const SELF_WEIGHT_STRESS = sheetFunction({
	name: "SELF_WEIGHT_STRESS",
	group,
	summary: "Bending stress of a flat slab that carries its own weight.",
	limits:
		"A plain rectangular slab of one thickness. Cutouts, notches and inlays are not in it, and a slab cracks at them first. Compare with the strength of your own mix at that age, with room to spare; handling adds impact (factor). On edge a slab is far stronger.",
	params: {
		length: length(
			"Length of the whole slab, of a cantilever what stands out, e.g. 2400",
		),
		thickness: length("Thickness, e.g. 38"),
		density: density("Density, e.g. 2150"),
		support: word(
			SUPPORTS,
			"ends, fifth points (0.207 of the length in from each end) or cantilever",
			{ blank: "ends" },
		),
		factor: number("Impact while handling, e.g. 1.5", { min: 1, blank: 1 }),
		units: units(),
	},
	answer: { text: "the bending stress", unit: "stress" },
	example: {
		shown: ["2000", "40", "2000"],
		values: [2000, 40, 2000],
		answer: 1.4709975,
		working: "0.75 × 2000 × 9.80665 × 2² / 0.04 = 1 470 997.5 Pa",
	},
	source: "Statics: M = wL²/8, (3 − 2√2)wL²/8 and wL²/2; section modulus bt²/6",
	compute: ({ length, thickness, density, support, factor }) =>
		selfWeightStressPa({
			lengthM: length,
			thicknessM: thickness,
			densityKgPerM3: density,
			support,
			factor,
		}),
});

export const MODULUS_OF_RUPTURE = sheetFunction({
	name: "MODULUS_OF_RUPTURE",
	group,
	summary: "Bending stress at which plain concrete cracks, estimated.",
	limits:
		"For plain normal-weight concrete; fibers, age and curing change it much. An estimate, not a test: bend a strip of your own mix. Metric and US use the forms as published, 0.5% apart.",
	params: {
		compressive_strength: stress("Compressive strength, e.g. 40"),
		units: units(),
	},
	answer: { text: "the modulus of rupture", unit: "stress" },
	example: {
		shown: ["25"],
		values: [25],
		answer: 3.1,
		working: "0.62 × √25 = 3.1 MPa",
	},
	source: "ACI 318: 7.5√f′c psi; ACI 318M: 0.62√f′c MPa (from memory)",
	compute: ({ compressive_strength }, units) => {
		const strength = fromSi(compressive_strength, "stress", units);
		const rupture = units === "us" ? modulusOfRupturePsi : modulusOfRuptureMPa;
		return toSi(rupture(strength), "stress", units);
	},
});

export const FORM_PRESSURE = sheetFunction({
	name: "FORM_PRESSURE",
	group,
	summary: "Pressure of fluid mix at the foot of the mold.",
	limits:
		"Full hydrostatic pressure, as ACI 347 asks for mixes that flow. Vibration and pumping from below add to it.",
	params: {
		depth: length("Depth of fluid mix above the foot, e.g. 900"),
		density: density("Fresh density of the mix, e.g. 2150"),
		units: units(),
	},
	answer: { text: "the pressure", unit: "pressure" },
	example: {
		shown: ["500", "2000"],
		values: [500, 2000],
		answer: 9.80665,
		working: "2000 kg/m³ × 9.80665 m/s² × 0.5 m = 9806.65 Pa",
	},
	source: "ACI 347-04, 2.2.2: p = wh",
	compute: ({ depth, density }) => formPressurePa(depth, density),
});

export const UPLIFT = sheetFunction({
	name: "UPLIFT",
	group,
	summary: "Mass that must hold a knockout down in fluid mix.",
	limits:
		"The least that keeps it from floating, for mix all around and below it: add a margin for vibration and pouring.",
	params: {
		volume: volume("Volume of the knockout below the mix, e.g. 12"),
		density: density("Fresh density of the mix, e.g. 2150"),
		former_mass: mass("Mass of the knockout itself, e.g. 1", { min: 0 }),
		units: units(),
	},
	answer: { text: "the mass to hold it down", unit: "mass" },
	example: {
		shown: ["10", "2000", "3"],
		values: [10, 2000, 3],
		answer: 17,
		working: "0.01 m³ × 2000 kg/m³ − 3 kg = 17 kg",
	},
	source: "Archimedes' principle",
	compute: ({ volume, density, former_mass }) =>
		upliftKg({
			volumeM3: volume,
			densityKgPerM3: density,
			formerKg: former_mass,
		}),
});
