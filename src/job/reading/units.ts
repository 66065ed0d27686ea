/** The units of a person, and what each is in SI: the one place where numbers are converted. */

export type UnitSystem = "metric" | "us";

export type Quantity =
	| "length"
	| "area"
	| "volume"
	| "coating"
	| "bead"
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

/**
 * SI = (number − zero) × times / over. Two whole numbers where the definition allows it: 96 in is then 2.4384 m and
 * 96 in again, not 95.99999999999999.
 */
interface Unit {
	name: string;
	times: number;
	over?: number;
	zero?: number;
}

// Exact by definition (NIST SP 811, appendix B): inch, foot, pound, US gallon, mile; g is 9.80665 m/s².
const POUND = { times: 45359237, over: 1e8 };
const SQUARE_FOOT = { times: 9290304, over: 1e8 };
const CUBIC_FOOT = { times: 28316846592, over: 1e12 };
const CUBIC_INCH = { times: 16387064, over: 1e12 };
const GALLON = { times: 3785411784, over: 1e12 };
const ratio = ({ times, over }: { times: number; over: number }) =>
	times / over;
const POUND_FORCE_N = ratio(POUND) * 9.80665;

/** `calc` counts in m, m², m³, kg, kg/m³, °C, °C·h, Pa, m/s, kg/m²·h and m²/m³. */
const UNITS: Record<Quantity, Record<UnitSystem, Unit>> = {
	length: {
		metric: { name: "mm", times: 1, over: 1000 },
		us: { name: "in", times: 254, over: 10000 },
	},
	area: {
		metric: { name: "m²", times: 1 },
		us: { name: "ft²", ...SQUARE_FOOT },
	},
	volume: {
		metric: { name: "L", times: 1, over: 1000 },
		us: { name: "ft³", ...CUBIC_FOOT },
	},
	coating: {
		metric: { name: "L", times: 1, over: 1000 },
		us: { name: "US gal", ...GALLON },
	},
	bead: {
		metric: { name: "mL", times: 1, over: 1e6 },
		us: { name: "in³", ...CUBIC_INCH },
	},
	mass: {
		metric: { name: "kg", times: 1 },
		us: { name: "lb", ...POUND },
	},
	pigment: {
		metric: { name: "g", times: 1, over: 1000 },
		us: { name: "g", times: 1, over: 1000 },
	},
	density: {
		metric: { name: "kg/m³", times: 1 },
		us: { name: "lb/ft³", times: ratio(POUND) / ratio(CUBIC_FOOT) },
	},
	temperature: {
		metric: { name: "°C", times: 1 },
		us: { name: "°F", times: 5, over: 9, zero: 32 },
	},
	degreeHours: {
		metric: { name: "°C·h", times: 1 },
		us: { name: "°F·h", times: 5, over: 9 },
	},
	stress: {
		metric: { name: "MPa", times: 1e6 },
		us: { name: "psi", times: POUND_FORCE_N / 0.0254 ** 2 },
	},
	pressure: {
		metric: { name: "kPa", times: 1000 },
		us: { name: "lb/ft²", times: POUND_FORCE_N / ratio(SQUARE_FOOT) },
	},
	wind: {
		metric: { name: "km/h", times: 10, over: 36 },
		us: { name: "mph", times: 1609.344, over: 3600 },
	},
	evaporation: {
		metric: { name: "kg/m²·h", times: 1 },
		us: { name: "lb/ft²·h", times: ratio(POUND) / ratio(SQUARE_FOOT) },
	},
	coverage: {
		metric: { name: "m²/L", times: 1000 },
		us: { name: "ft²/US gal", times: ratio(SQUARE_FOOT) / ratio(GALLON) },
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
	const { times, over = 1, zero = 0 } = UNITS[quantity][units];
	return ((value - zero) * times) / over;
}

/** An SI number in the person's unit. */
export function fromSi(
	value: number,
	quantity: Quantity,
	units: UnitSystem,
): number {
	const { times, over = 1, zero = 0 } = UNITS[quantity][units];
	return (value * over) / times + zero;
}
