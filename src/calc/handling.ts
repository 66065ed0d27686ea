/** Carrying a piece, its own weight in bending, and what fluid mix does to a mold. */

import { withRounding } from "./rounding";

/** Standard gravity, exact. */
export const G_M_PER_S2 = 9.80665;

/** People who lift together, or the word for what they need instead. */
type Lifters = 1 | 2 | 3 | "lifting equipment";

/**
 * People needed for a lift of which one person may do `onePersonLimit`, in the unit of `weight`.
 *
 * Two lift two thirds of the sum of their limits, three half of it.
 *
 * @source HSE, Manual handling (L23), guidance on team handling.
 */
export function peopleToLift(weight: number, onePersonLimit: number): Lifters {
	if (weight <= withRounding(onePersonLimit)) return 1;
	if (weight <= withRounding(((2 * 2) / 3) * onePersonLimit)) return 2;
	if (weight <= withRounding((3 / 2) * onePersonLimit)) return 3;
	return "lifting equipment";
}

/**
 * Greatest bending moment over w L²: at midspan between the ends; equal at midspan and over supports (√2 − 1)/2 L
 * = 0.207 L from the ends; at the root of a cantilever. Statics of a uniform load.
 */
const MOMENT = {
	ends: 1 / 8,
	"fifth points": (3 - 2 * Math.SQRT2) / 8,
	cantilever: 1 / 2,
};

type Support = keyof typeof MOMENT;

export const SUPPORTS = Object.keys(MOMENT) as Support[];

/** Bending stress of a flat slab under its own weight, Pa: 6 k ρ g L² / t × factor, M = k w L² and S = b t²/6. */
export const selfWeightStressPa = (slab: {
	lengthM: number;
	thicknessM: number;
	densityKgPerM3: number;
	support: Support;
	factor: number;
}): number =>
	(6 *
		MOMENT[slab.support] *
		slab.densityKgPerM3 *
		G_M_PER_S2 *
		slab.lengthM ** 2 *
		slab.factor) /
	slab.thicknessM;

/** Modulus of rupture, MPa: 0.62 √f′c in MPa. @source ACI 318M, normal-weight concrete (from memory). */
export const modulusOfRuptureMPa = (compressiveMPa: number): number =>
	0.62 * Math.sqrt(compressiveMPa);

/** Modulus of rupture, psi: 7.5 √f′c in psi. @source ACI 318, normal-weight concrete. */
export const modulusOfRupturePsi = (compressivePsi: number): number =>
	7.5 * Math.sqrt(compressivePsi);

/** Pressure of fluid mix at the foot of the mold, Pa: ρ g h. @source ACI 347-04, 2.2.2. */
export const formPressurePa = (
	depthM: number,
	densityKgPerM3: number,
): number => densityKgPerM3 * G_M_PER_S2 * depthM;

/** Mass that must hold a knockout down in fluid mix, kg: displaced mix less its own mass; 0 when it sinks. */
export const upliftKg = (former: {
	volumeM3: number;
	densityKgPerM3: number;
	formerKg: number;
}): number =>
	Math.max(0, former.volumeM3 * former.densityKgPerM3 - former.formerKg);
