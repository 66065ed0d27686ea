/** Temperatures as formulas and people need them. */

/** 0 °C in kelvin. */
const ZERO_C_IN_K = 273.15;

export const kelvin = (temperatureC: number): number =>
	temperatureC + ZERO_C_IN_K;

/** In both units, since a formula does not know which one a person uses. */
export const temperatureText = (temperatureC: number): string =>
	`${temperatureC.toFixed(1)} °C (${(temperatureC * 1.8 + 32).toFixed(1)} °F)`;
