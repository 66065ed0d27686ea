/** Drying of a fresh surface: two published forms of one curve, whose rounded constants differ. */
import { InputError } from "./errors";

const within = (name: string, value: number, least: number, unit: string) => {
	if (value < least)
		throw new InputError(
			`${name} must be ${least} ${unit} or more for this formula, got ${Number(value.toPrecision(10))} ${unit}`,
		);
};

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
	const { airC, humidity, mixC, windKmH } = weather;
	within("air_temp", airC, -18, "°C");
	within("mix_temp", mixC, -18, "°C");
	const drying = (mixC + 18) ** 2.5 - humidity * (airC + 18) ** 2.5;
	return 5 * drying * (windKmH + 4) * 1e-6;
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
	const { airF, humidity, mixF, windMph } = weather;
	within("air_temp", airF, 0, "°F");
	within("mix_temp", mixF, 0, "°F");
	return (mixF ** 2.5 - humidity * airF ** 2.5) * (1 + 0.4 * windMph) * 1e-6;
}
