/** Temperature of fresh mix, and what mix water or ice must bring. */
import { InputError } from "./errors";
import { withRounding } from "./rounding";
import { sum } from "./sum";
import { temperatureText } from "./temperature";

/** Approximate specific heat of dry ingredients over that of water (ACI 305R; Neville). */
const SOLID_OVER_WATER = 0.22;

/** Heat of fusion of ice, kcal/kg, as ACI 305R has it; CRD-C 307 says 79.7. In °F: 144 − 32 = 112 per lb. */
const ICE_KCAL_PER_KG = 80;

/** Hotter water may set the binder on contact (common practice, no source). */
const HOTTEST_WATER_C = 60;

export interface Solid {
	massKg: number;
	temperatureC: number;
}

/**
 * Mass by which a damp solid counts as a solid, kg: its dry mass and 1 / 0.22 of the water in it, since that water counts fully.
 *
 * @source ACI 305R.
 */
export const dampSolidKg = (dryKg: number, waterKg: number): number =>
	dryKg + waterKg / SOLID_OVER_WATER;

/** Heat of the solids and what warms them by a degree, counted in kg of water. */
function solidHeat(solids: readonly Solid[]): { heat: number; kg: number } {
	if (solids.length === 0) throw new InputError("solid_masses is blank");
	const masses = solids.map(({ massKg }) => SOLID_OVER_WATER * massKg);
	return {
		heat: sum(
			solids.map(({ temperatureC }, i) => (masses[i] ?? 0) * temperatureC),
		),
		kg: sum(masses),
	};
}

/**
 * Temperature of fresh mix, °C.
 *
 * [0.22 Σ(m T) + mw Tw − 80 mi] / [0.22 Σm + mw + mi]; ice at 0 °C, its mass not in mw.
 *
 * @throws InputError when there are no solids, when nothing has a mass, or when there is so much ice that the mix could not melt it all.
 * @source ACI 305R; formula as in Neville, Properties of Concrete.
 */
export function mixTemperatureC(
	mix: { solids: readonly Solid[] } & Record<
		"waterKg" | "waterC" | "iceKg",
		number
	>,
): number {
	const { waterKg, waterC, iceKg } = mix;
	const solid = solidHeat(mix.solids);
	if (solid.kg + waterKg + iceKg === 0)
		throw new InputError("solid_masses and water_mass must not all be 0");
	const heat = solid.heat + waterKg * waterC - ICE_KCAL_PER_KG * iceKg;
	if (iceKg > 0 && heat < 0)
		throw new InputError(
			"ice_mass must be less: the mix has not enough heat to melt this much ice",
		);
	return heat / (solid.kg + waterKg + iceKg);
}

interface Target {
	targetC: number;
	solids: readonly Solid[];
	waterKg: number;
}

/**
 * Temperature of the mix water that brings the mix to the target, °C.
 *
 * [T (0.22 Σm + mw) − 0.22 Σ(m T)] / mw
 *
 * @throws InputError when the water would have to be frozen or above 60 °C.
 */
export function waterTemperatureC({
	targetC,
	solids,
	waterKg,
}: Target): number {
	const solid = solidHeat(solids);
	const waterC = (targetC * (solid.kg + waterKg) - solid.heat) / waterKg;
	if (waterC < -1e-9)
		throw new InputError(
			`target cannot be reached with water alone, which would have to be at ${temperatureText(waterC)}: replace part of it with ice (ICE_FOR)`,
		);
	if (waterC > HOTTEST_WATER_C + 1e-9)
		throw new InputError(
			`target would need water at ${temperatureText(waterC)}, above ${temperatureText(HOTTEST_WATER_C)}: warm the solids`,
		);
	return waterC;
}

/**
 * Ice that brings the mix to the target in place of the same mass of mix water, kg; 0 when none is needed.
 *
 * [0.22 Σ(m T) + mw Tw − T (0.22 Σm + mw)] / (Tw + 80)
 *
 * @throws InputError when that is more than the water there is.
 */
export function iceKg({
	targetC,
	solids,
	waterKg,
	waterC,
}: Target & { waterC: number }): number {
	const solid = solidHeat(solids);
	const tooWarm =
		solid.heat + waterKg * waterC - targetC * (solid.kg + waterKg);
	const ice = Math.max(0, tooWarm / (waterC + ICE_KCAL_PER_KG));
	if (ice > withRounding(waterKg))
		throw new InputError(
			`target cannot be reached: it would take ${Math.round((ice / waterKg) * 100)}% of the mix water as ice, and 100% is all there is: cool the solids`,
		);
	return ice;
}
