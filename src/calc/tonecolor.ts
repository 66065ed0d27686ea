/** The color of a tone, from a table of swatches in which each pigment has a column of doses. */
import type { Lab } from "./color";
import { InputError, percent } from "./errors";
import { absorptions, mixedColor } from "./kubelka";
import { withRounding } from "./rounding";
import { sum } from "./sum";
import { type Fit, fitted, type Swatch, shareOfRange } from "./swatches";

export interface SwatchRow {
	/** A pigment each. */
	doses: readonly number[];
	lab: Lab;
	/** How many readings of a meter it is worth, when that is not 1: a photo's is worth less. */
	worth?: number;
}

const worthOf = ({ worth = 1 }: SwatchRow): number => worth;

/** The mean of some swatches, each as much as it is worth. */
export const meanColor = (rows: readonly SwatchRow[]): Lab => {
	const whole = sum(rows.map(worthOf));
	const of = (key: keyof Lab) =>
		sum(rows.map((row) => worthOf(row) * row.lab[key])) / whole;
	return { l: of("l"), a: of("a"), b: of("b") };
};

/** The swatches of one pigment alone and those without any, weakest first; repeats of a dose are averaged. */
export function alone(rows: readonly SwatchRow[], pigment: number): Swatch[] {
	const byDose = new Map<number, SwatchRow[]>();
	for (const row of rows) {
		const { doses } = row;
		if (doses.some((dose, i) => i !== pigment && dose > 0)) continue;
		const dose = doses[pigment] ?? 0;
		byDose.set(dose, [...(byDose.get(dose) ?? []), row]);
	}
	return [...byDose]
		.sort(([a], [b]) => a - b)
		.map(([dose, own]) => ({
			dose,
			lab: meanColor(own),
			count: sum(own.map(worthOf)),
		}));
}

/**
 * The swatches to fit one pigment by.
 *
 * @throws InputError when there are fewer than two doses of it alone.
 */
export function swatchesOf(
	rows: readonly SwatchRow[],
	pigment: number,
): Swatch[] {
	const swatches = alone(rows, pigment);
	if (swatches.length >= 2) return swatches;
	throw new InputError(
		`doses must have at least two different doses of the pigment in column ${pigment + 1} alone (0 counts as one), got ${swatches.length}`,
	);
}

/**
 * What tells the color of a tone from its doses.
 *
 * @throws InputError when a needed pigment has fewer than two doses, when a dose is past the strongest swatch or below the
 * weakest, or when two pigments are mixed and no swatch is without pigment.
 */
export function toneColors(
	rows: readonly SwatchRow[],
): (doses: readonly number[]) => Lab {
	const fits = new Map<number, Fit>();
	const fitOf = (pigment: number): Fit => {
		const fit = fits.get(pigment) ?? fitted(swatchesOf(rows, pigment));
		fits.set(pigment, fit);
		return fit;
	};
	const [undosed] = alone(rows, -1);
	return (doses) => {
		const needed = doses.flatMap((dose, i) => (dose > 0 ? [i] : []));
		const pigments = needed.map((pigment) => {
			const fit = fitOf(pigment);
			const u = shareOfRange(fit, doses[pigment] ?? 0);
			refuseOutside(fit, doses[pigment] ?? 0, pigment);
			return { fit, strengths: fit.strengths, u };
		});
		const [first, second] = pigments;
		if (first && !second) return mixedColor(first.fit.base, [first]);
		if (undosed) return mixedColor(absorptions(undosed.lab), pigments);
		throw new InputError(
			first
				? "doses must have an undosed swatch (all doses 0) for a tone of several pigments"
				: "dose is below the weakest swatch: make an undosed one",
		);
	};
}

function refuseOutside(fit: Fit, dose: number, pigment: number): void {
	const of = `swatch of the pigment in column ${pigment + 1}`;
	if (dose > withRounding(fit.strongest))
		throw new InputError(
			`dose must be at most ${percent(fit.strongest)}, the strongest ${of}, got ${percent(dose)}`,
		);
	if (withRounding(dose) < fit.weakest)
		throw new InputError(
			`dose must be at least ${percent(fit.weakest)}, the weakest ${of}, got ${percent(dose)}: an undosed swatch would do`,
		);
}
