/** How far a cast may be from the color that a recipe is expected to give. */
import { colorDifference } from "./ciede2000";
import { misread } from "./doseband";
import { absorptions, mixedColor, type Strength } from "./kubelka";
import { normal } from "./noise";
import { type Palette, type PalettePigment, paletteColor } from "./palette";
import { fitted, GUESSED_SIGMA } from "./swatches";

/** The root mean square of so many draws is known to an eighth. */
const DRAWS = 32;

/**
 * CIEDE2000 within which three of four casts are: max(0.6, s) for one pigment, max(1.5, 1.7 s) for several.
 *
 * s is the root mean square of what the prediction moves by when the swatches are read anew. With two doses of a pigment
 * its saturation is drawn too: ln σ about ln 2, standard deviation 0.7. The smallest values and the factor come from
 * simulated opaque mixes of known truth with three swatches a pigment (own work, no published source).
 */
export function castBands(
	palette: Palette,
): (doses: readonly number[]) => number {
	const bases = drawnBases(palette);
	const drawn = new Map<number, Strength[][]>();
	const strengthsOf = (pigment: PalettePigment) => {
		const known =
			drawn.get(pigment.column) ?? drawnStrengths(palette, pigment, bases);
		drawn.set(pigment.column, known);
		return known;
	};
	return (doses) => {
		const used = palette.pigments.filter(
			({ column }) => (doses[column] ?? 0) > 0,
		);
		const shares = used.map(
			({ column, strongest }) => (doses[column] ?? 0) / strongest,
		);
		const said = paletteColor(palette, used, shares);
		let squares = 0;
		for (const [k, base] of bases.entries()) {
			const other = mixedColor(
				absorptions(base),
				used.map((pigment, i) => ({
					strengths: strengthsOf(pigment)[k] ?? [],
					u: shares[i] ?? 0,
				})),
			);
			squares += colorDifference(said, other) ** 2;
		}
		const s = Math.sqrt(squares / DRAWS);
		return used.length > 1 ? Math.max(1.5, 1.7 * s) : Math.max(0.6, s);
	};
}

/**
 * What is left of it after a correction by a cast: about half, in the same simulated mixes, and at least 0.6 for one
 * pigment, 1 for several.
 */
export const afterCast = (band: number, doses: readonly number[]): number =>
	Math.max(doses.filter((dose) => dose > 0).length > 1 ? 1 : 0.6, band / 2);

/** What the undosed swatch may really be. */
function drawnBases({ undosed }: Palette) {
	const next = normal(1);
	return Array.from({ length: DRAWS }, () =>
		misread(undosed.lab, undosed.count, next),
	);
}

/** What a pigment may really be, over each of the undosed colors. */
function drawnStrengths(
	{ undosed }: Palette,
	{ column, swatches }: PalettePigment,
	bases: ReturnType<typeof drawnBases>,
): Strength[][] {
	const next = normal(column + 2);
	return bases.map((lab) => {
		const own = swatches.slice(1).map((swatch) => ({
			...swatch,
			lab: misread(swatch.lab, swatch.count, next),
		}));
		const guess = GUESSED_SIGMA * Math.exp(0.7 * next());
		return [...fitted([{ ...undosed, lab }, ...own], guess).strengths];
	});
}
