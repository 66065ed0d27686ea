/** The units of a person, and what each is in SI: the one place where numbers are converted. */

export type UnitSystem = "metric" | "us";

export type Quantity =
	| "length"
	| "area"
	| "volume"
	| "coating"
	| "mass"
	| "pigment"
	| "density"
	| "temperature"
	| "degreeHours"
	| "stress"
	| "pressure"
	| "wind"
	| "evaporation"
	| "coverage";

interface Unit {
	name: string;
	/** SI = (number − zero) × size. */
	size: number;
	zero?: number;
}

// Exact by definition (NIST SP 811, appendix B): inch, foot, pound, US gallon, mile; g is 9.80665 m/s².
const INCH_M = 0.0254;
const FOOT_M = 12 * INCH_M;
const POUND_KG = 0.45359237;
const GALLON_M3 = 231 * INCH_M ** 3;
const POUND_FORCE_N = POUND_KG * 9.80665;

/** `calc` counts in m, m², m³, kg, kg/m³, °C, °C·h, Pa, m/s, kg/m²·h and m²/m³. */
const UNITS: Record<Quantity, Record<UnitSystem, Unit>> = {
	length: {
		metric: { name: "mm", size: 1 / 1000 },
		us: { name: "in", size: INCH_M },
	},
	area: {
		metric: { name: "m²", size: 1 },
		us: { name: "ft²", size: FOOT_M ** 2 },
	},
	volume: {
		metric: { name: "L", size: 1 / 1000 },
		us: { name: "ft³", size: FOOT_M ** 3 },
	},
	coating: {
		metric: { name: "L", size: 1 / 1000 },
		us: { name: "US gal", size: GALLON_M3 },
	},
	mass: {
		metric: { name: "kg", size: 1 },
		us: { name: "lb", size: POUND_KG },
	},
	pigment: {
		metric: { name: "g", size: 1 / 1000 },
		us: { name: "g", size: 1 / 1000 },
	},
	density: {
		metric: { name: "kg/m³", size: 1 },
		us: { name: "lb/ft³", size: POUND_KG / FOOT_M ** 3 },
	},
	temperature: {
		metric: { name: "°C", size: 1 },
		us: { name: "°F", size: 1 / 1.8, zero: 32 },
	},
	degreeHours: {
		metric: { name: "°C·h", size: 1 },
		us: { name: "°F·h", size: 1 / 1.8 },
	},
	stress: {
		metric: { name: "MPa", size: 1e6 },
		us: { name: "psi", size: POUND_FORCE_N / INCH_M ** 2 },
	},
	pressure: {
		metric: { name: "kPa", size: 1000 },
		us: { name: "lb/ft²", size: POUND_FORCE_N / FOOT_M ** 2 },
	},
	wind: {
		metric: { name: "km/h", size: 1 / 3.6 },
		us: { name: "mph", size: (5280 * FOOT_M) / 3600 },
	},
	evaporation: {
		metric: { name: "kg/m²·h", size: 1 },
		us: { name: "lb/ft²·h", size: POUND_KG / FOOT_M ** 2 },
	},
	coverage: {
		metric: { name: "m²/L", size: 1000 },
		us: { name: "ft²/US gal", size: FOOT_M ** 2 / GALLON_M3 },
	},
};

/** The unit's sign, e.g. `mm`. */
export const unitName = (quantity: Quantity, units: UnitSystem): string =>
	UNITS[quantity][units].name;

/** A person's number in SI. */
export function toSi(
	value: number,
	quantity: Quantity,
	units: UnitSystem,
): number {
	const { size, zero = 0 } = UNITS[quantity][units];
	return (value - zero) * size;
}

/** An SI number in the person's unit. */
export function fromSi(
	value: number,
	quantity: Quantity,
	units: UnitSystem,
): number {
	const { size, zero = 0 } = UNITS[quantity][units];
	return value / size + zero;
}
