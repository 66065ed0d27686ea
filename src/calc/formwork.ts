/** What a mold takes to build: sealant in its corners, and how far its boards bend under fluid mix. */
import { formPressurePa } from "./handling";

/**
 * Volume of a fillet of sealant along a right corner, m³: length × r² (1 − π/4).
 *
 * The corner's square r² less the quarter of a circle that stays open.
 */
export const sealantBeadM3 = (lengthM: number, radiusM: number): number =>
	lengthM * radiusM ** 2 * (1 - Math.PI / 4);

/** A board that stands as a side, held at both ends of its span. */
export interface SideBoard {
	spanM: number;
	/** Depth of fluid mix. */
	heightM: number;
	thicknessM: number;
	modulusPa: number;
	densityKgPerM3: number;
}

/**
 * How far a side board bends out between its supports under fluid mix, m: δ = 5 q l⁴ / (384 E I), with q = ρgh²/2, the load of all
 * its height, and I = h t³/12.
 *
 * @source One span under an even load: Peurifoy and Oberlender, Formwork for Concrete Structures, 4th ed., table 5-2. Full head of fluid
 * mix: ACI 347.
 */
export function sideDeflectionM(side: SideBoard): number {
	const { spanM, heightM, thicknessM, modulusPa, densityKgPerM3 } = side;
	const loadNPerM = (formPressurePa(heightM, densityKgPerM3) * heightM) / 2;
	const inertiaM4 = (heightM * thicknessM ** 3) / 12;
	return (5 * loadNPerM * spanM ** 4) / (384 * modulusPa * inertiaM4);
}

/** The most a side may bend between its supports, as a share of the span. @source Peurifoy and Oberlender, as above. */
export const SIDE_LIMIT = 1 / 360;
