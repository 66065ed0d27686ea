import { evaporationKgPerM2H, evaporationLbPerFt2H } from "../calc/evaporation";
import {
	iceKg,
	mixTemperatureC,
	type Solid,
	waterTemperatureC,
} from "../calc/water";
import { fromSi, toSi } from "../job/reading/units";
import { list, mass, share, temperature, units, wind } from "./arguments";
import { sheetFunction } from "./declare";

const group = "Water, weather and cure";

const ACI_305 =
	"ACI 305R; formula as in Neville, Properties of Concrete: 0.22 for the specific heat of solids, 80 kcal/kg for ice";

const solidMasses = () =>
	list(mass("Mass of each dry ingredient, e.g. B2:B6", { min: 0 }));

const solidTemps = () =>
	list(temperature("Temperature of each dry ingredient, e.g. 27"));

/** Mix water is liquid: what is colder or hotter is a slip. */
const waterTemp = () =>
	temperature("Temperature of the mix water, e.g. 15", { min: 0, max: 100 });

const target = () =>
	temperature("Temperature wanted of the fresh mix, e.g. 20", {
		min: 0,
		max: 100,
	});

const solidsOf = (
	masses: readonly number[],
	temps: readonly number[],
): Solid[] =>
	masses.map((massKg, index) => ({
		massKg,
		temperatureC: temps[index] ?? Number.NaN,
	}));

export const MIX_TEMPERATURE = sheetFunction({
	name: "MIX_TEMPERATURE",
	group,
	summary: "Temperature of the fresh mix from what goes into it.",
	limits:
		"The heat of mixing, of the mixer and of the binder's first reaction is not in it: they add some degrees. Least sure above about 20% of the water as ice.",
	params: {
		solid_masses: solidMasses(),
		solid_temps: solidTemps(),
		water_mass: mass("Mass of mix water without the ice, e.g. 20", { min: 0 }),
		water_temp: waterTemp(),
		ice_mass: mass("Mass of ice at 0 °C (32 °F), e.g. 5", { min: 0, blank: 0 }),
		units: units(),
	},
	answer: { text: "the mix temperature", unit: "temperature" },
	example: {
		shown: ["100", "30", "28", "10"],
		values: [100, 30, 28, 10],
		answer: 18.8,
		working:
			"(0.22 × 100 × 30 + 28 × 10) / (0.22 × 100 + 28) = 940 / 50 = 18.8",
	},
	source: ACI_305,
	compute: ({ solid_masses, solid_temps, water_mass, water_temp, ice_mass }) =>
		mixTemperatureC({
			solids: solidsOf(solid_masses, solid_temps),
			waterKg: water_mass,
			waterC: water_temp,
			iceKg: ice_mass,
		}),
});

export const WATER_TEMPERATURE_FOR = sheetFunction({
	name: "WATER_TEMPERATURE_FOR",
	group,
	summary: "How cold or warm the mix water must be for a mix temperature.",
	limits:
		"Below freezing it takes ice (ICE_FOR); water above 60 °C (140 °F) may set the binder on contact, so warm the solids instead.",
	params: {
		target: target(),
		solid_masses: solidMasses(),
		solid_temps: solidTemps(),
		water_mass: mass("Mass of mix water, e.g. 20"),
		units: units(),
	},
	answer: {
		text: "the water temperature",
		unit: "temperature",
	},
	example: {
		shown: ["20", "100", "30", "28"],
		values: [20, 100, 30, 28],
		answer: 12.1429,
		working: "(20 × (0.22 × 100 + 28) − 0.22 × 100 × 30) / 28 = 340 / 28",
	},
	source: `${ACI_305}; solved for the water`,
	compute: ({ target, solid_masses, solid_temps, water_mass }) =>
		waterTemperatureC({
			targetC: target,
			solids: solidsOf(solid_masses, solid_temps),
			waterKg: water_mass,
		}),
});

export const ICE_FOR = sheetFunction({
	name: "ICE_FOR",
	group,
	summary: "Ice that cools a mix, in place of the same mass of mix water.",
	limits:
		"Ice must melt before the mixer stops: crush it, and leave the same mass of water out. Least sure above about 20% of the water.",
	params: {
		target: target(),
		solid_masses: solidMasses(),
		solid_temps: solidTemps(),
		water_mass: mass("Mass of all mix water, ice included, e.g. 20"),
		water_temp: waterTemp(),
		units: units(),
	},
	answer: { text: "the mass of ice", unit: "mass" },
	example: {
		shown: ["15", "100", "30", "28", "10"],
		values: [15, 100, 30, 28, 10],
		answer: 2.1111,
		working:
			"(0.22 × 100 × 30 + 28 × 10 − 15 × (0.22 × 100 + 28)) / (10 + 80) = 190 / 90",
	},
	source: `${ACI_305}; solved for the ice`,
	compute: ({ target, solid_masses, solid_temps, water_mass, water_temp }) =>
		iceKg({
			targetC: target,
			solids: solidsOf(solid_masses, solid_temps),
			waterKg: water_mass,
			waterC: water_temp,
		}),
});

export const EVAPORATION_RATE = sheetFunction({
	name: "EVAPORATION_RATE",
	group,
	summary: "Water that a fresh surface loses to the air in an hour.",
	limits:
		"A screening number, ±40% in the field. For a surface wet with bleed water; mixes of little bleed crack earlier. Above 1.0 kg/m²·h (0.2 lb/ft²·h) ACI asks for precautions, for mixes of little bleed from half of that. Wind is measured 0.5 m (20 in) above the surface. Metric and US use the forms as published, usually within 6% of each other. Least sure where the mix is colder than the air. Negative is condensation.",
	params: {
		air_temp: temperature("Air temperature, e.g. 27"),
		humidity: share("Relative humidity of the air, e.g. 50%"),
		mix_temp: temperature("Temperature of the mix's surface, e.g. 31"),
		wind: wind("Wind over the surface, e.g. 19"),
		units: units(),
	},
	answer: { text: "the evaporation", unit: "evaporation" },
	example: {
		shown: ["27", "50%", "31", "19"],
		values: [27, 0.5, 31, 19],
		answer: 1.1517,
		working:
			"5 × (49^2.5 − 0.5 × 45^2.5) × 23 × 10⁻⁶ = 5 × (16807 − 6792.1) × 23 × 10⁻⁶; ACI prints 1.15",
	},
	source:
		"ACI 305R and Uno, ACI Materials Journal 95-M34 (1998); ±40%: Hover, ACI SP-338 (2020)",
	compute: ({ air_temp, humidity, mix_temp, wind }, units) =>
		units === "us"
			? toSi(
					evaporationLbPerFt2H({
						airF: fromSi(air_temp, "temperature", "us"),
						humidity,
						mixF: fromSi(mix_temp, "temperature", "us"),
						windMph: fromSi(wind, "wind", "us"),
					}),
					"evaporation",
					"us",
				)
			: evaporationKgPerM2H({
					airC: air_temp,
					humidity,
					mixC: mix_temp,
					windKmH: fromSi(wind, "wind", "metric"),
				}),
});
