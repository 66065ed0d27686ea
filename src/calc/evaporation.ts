/** Drying of a fresh surface: two published forms of one curve, whose rounded constants differ. */
import { InputError } from "./errors";

/** A temperature that the power of 2.5 can take; the last bits of a conversion are no reason to refuse. */
function fromLeast(
	name: string,
	value: number,
	least: number,
	unit: string,
): number {
	if (value < least - 1e-9)
		throw new InputError(
			`${name} must be ${least} ${unit} or more for this formula, got ${Number(value.toPrecision(10))} ${unit}`,
		);
	return Math.max(0, value - least);
}

/**
 * Surface evaporation, kg/m²·h; below 0 is condensation.
 *
 * 5 × [(Tc + 18)^2.5 − r (Ta + 18)^2.5] (V + 4) × 10⁻⁶; a screening number, ±40% in the field.
 *
 * @throws InputError when a temperature is below −18 °C.
 * @source Uno, ACI Materials Journal 95-M34 (1998), SI form; ±40%: Hover, ACI SP-338 (2020).
 */
export function evaporationKgPerM2H(weather: {
	airC: number;
	humidity: number;
	mixC: number;
	windKmH: number;
}): number {
	const { humidity, windKmH } = weather;
	const air = fromLeast("air_temp", weather.airC, -18, "°C");
	const mix = fromLeast("mix_temp", weather.mixC, -18, "°C");
	return 5 * (mix ** 2.5 - humidity * air ** 2.5) * (windKmH + 4) * 1e-6;
}

/**
 * Surface evaporation, lb/ft²·h; below 0 is condensation.
 *
 * (Tc^2.5 − r Ta^2.5) (1 + 0.4 V) × 10⁻⁶; a screening number, ±40% in the field.
 *
 * @throws InputError when a temperature is below 0 °F.
 * @source ACI 305R; Uno, ACI Materials Journal 95-M34 (1998), US form; ±40%: Hover, ACI SP-338 (2020).
 */
export function evaporationLbPerFt2H(weather: {
	airF: number;
	humidity: number;
	mixF: number;
	windMph: number;
}): number {
	const { humidity, windMph } = weather;
	const air = fromLeast("air_temp", weather.airF, 0, "°F");
	const mix = fromLeast("mix_temp", weather.mixF, 0, "°F");
	return (mix ** 2.5 - humidity * air ** 2.5) * (1 + 0.4 * windMph) * 1e-6;
}
