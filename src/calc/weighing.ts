/** How well a scale's divisions let a dose be weighed. */

/** Half-width d/2 of a rectangular distribution: u = d/√12 (JCGM 100:2008, F.2.2.1). */
const readingU = (division: number): number => division / Math.sqrt(12);

/** Tare and reading are two readings. */
const taredU = (division: number): number => Math.SQRT2 * readingU(division);

/** Most readings lie within twice the standard uncertainty: k = 2, about 95% (JCGM 100:2008, 6.3.3). */
export const COVERAGE = 2;

/** Share by which a tared weight may be off, k = 2. */
export const offBy = (weight: number, division: number): number =>
	weight > 0 ? (COVERAGE * taredU(division)) / weight : 0;

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

/**
 * Mass of mix of which a dose is known within a relative standard uncertainty, kg: `doseUncertainty` of one weighing,
 * solved for the mass.
 *
 * √(1/6) · hypot(pigment division / (binder share × dose), mass division) / uncertainty
 *
 * @source JCGM 100:2008 5.1.2 and F.2.2.1.
 */
export const massForDoseKg = ({
	uncertainty,
	dose,
	binderShare,
	pigmentDivisionKg,
	massDivisionKg,
}: {
	uncertainty: number;
	/** Of binder, as it goes on the scale. */
	dose: number;
	binderShare: number;
	pigmentDivisionKg: number;
	massDivisionKg: number;
}): number =>
	Math.hypot(
		taredU(pigmentDivisionKg) / (binderShare * dose),
		taredU(massDivisionKg),
	) / uncertainty;

/** A quotient without the last bits of a conversion, so that what equals a whole number is one. */
const divisionsIn = (weight: number, division: number): number =>
	Number((weight / division).toPrecision(12));

const counted = (divisions: number, division: number): number =>
	Number((divisions * division).toPrecision(12));

/** The nearest weight that a scale can show, in the unit of both; a half is rounded up. */
export const onScale = (weight: number, division: number): number =>
	counted(Math.round(divisionsIn(weight, division)), division);

/** The least weight that a scale can show and that is not below `weight`. */
export const atLeastOnScale = (weight: number, division: number): number =>
	counted(Math.ceil(divisionsIn(weight, division)), division);
