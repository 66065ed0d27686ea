/** A recipe corrected by what its cast came out as. */
import { colorDifference } from "./ciede2000";
import { type Channels, type Lab, labOfChannels } from "./color";
import { InputError } from "./errors";
import { absorptions, reflectanceOf } from "./kubelka";
import { dosedPigments, type Palette, paletteColor } from "./palette";
import type { Recipe } from "./recipes";
import { boundsOf, type Limits, refined, startsOf } from "./recipesearch";

export interface Cast {
	wanted: Lab;
	/** What was cast, of binder, a column each. */
	doses: readonly number[];
	/** As the cast was measured. */
	measured: Lab;
}

export interface Correction extends Recipe {
	/** The color that the swatches are asked for, so that the cast comes out as wanted. */
	aim: Lab;
}

/**
 * The recipe with the same pigments that should give the wanted color.
 *
 * The cast shows by what factor each channel's K/S misses what the swatches say. The aim is the wanted color with that
 * factor taken out; the answer's color has it put in again.
 *
 * @throws InputError for a recipe without pigment, of a pigment without swatches, or past its strongest swatch.
 */
export function correctedRecipe(
	palette: Palette,
	{ wanted, doses, measured }: Cast,
	limits: Pick<Limits, "maxima" | "cementShare">,
): Correction {
	const pigments = usedPigments(palette, doses);
	const cast = paletteColor(
		palette,
		pigments,
		pigments.map(({ column, strongest }) => (doses[column] ?? 0) / strongest),
	);
	const [said, came] = [absorptions(cast), absorptions(measured)];
	const missed = (lab: Lab, back: 1 | -1): Lab =>
		labWith(
			absorptions(lab).map(
				(q, j) => q * ((came[j] ?? 1) / (said[j] ?? 1)) ** back,
			),
		);
	const aim = missed(wanted, -1);
	const bounds = boundsOf(pigments, { ...limits, leastDose: 0 });
	const { shares } = startsOf(palette, pigments, aim, bounds)
		.map((start) => refined(palette, start, aim, bounds))
		.reduce((a, b) => (b.difference < a.difference ? b : a));
	const lab = missed(paletteColor(palette, pigments, shares), 1);
	const corrected = doses.map(() => 0);
	for (const [i, { column, strongest }] of pigments.entries())
		corrected[column] = strongest * (shares[i] ?? 0);
	return {
		pigments: pigments.map(({ column }) => column),
		doses: corrected,
		lab,
		difference: colorDifference(lab, wanted),
		aim,
	};
}

const labWith = (qs: readonly number[]): Lab =>
	labOfChannels(qs.map(reflectanceOf) as unknown as Channels);

function usedPigments(palette: Palette, doses: readonly number[]) {
	const used = dosedPigments(palette, doses, "recipe");
	if (used.length > 0) return used;
	throw new InputError("recipe must have a dose of at least one pigment");
}
