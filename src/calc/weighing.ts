/** How well a scale's divisions let a dose be weighed. */

/** Half-width d/2 of a rectangular distribution: u = d/√12 (JCGM 100:2008, F.2.2.1). */
const readingU = (division: number): number => division / Math.sqrt(12);

/** Tare and reading are two readings. */
const taredU = (division: number): number => Math.SQRT2 * readingU(division);

/**
 * Relative standard uncertainty (k = 1) of a dose.
 *
 * Quadrature of √2 · d/√12 / pigment and √weighings · √2 · d/√12 / mass: what is left after pull-offs is a
 * difference of weighings.
 *
 * @source JCGM 100:2008 5.1.2 and F.2.2.1.
 */
export const doseUncertainty = ({
	pigmentKg,
	pigmentDivisionKg,
	massKg,
	massDivisionKg,
	weighings,
}: {
	pigmentKg: number;
	pigmentDivisionKg: number;
	massKg: number;
	massDivisionKg: number;
	weighings: number;
}): number =>
	Math.hypot(
		taredU(pigmentDivisionKg) / pigmentKg,
		(Math.sqrt(weighings) * taredU(massDivisionKg)) / massKg,
	);
