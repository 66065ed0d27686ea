/** Recipes for a wanted color out of the studio's swatches of this mix, finish, sealing and state. */
import { afterCast, castBands } from "../../calc/castband";
import { hexOfLab, type Lab } from "../../calc/color";
import { correctedRecipe } from "../../calc/correction";
import { castDoses, counting } from "../../calc/expected";
import { pigmentHeadroom } from "../../calc/headroom";
import { sameName } from "../../calc/names";
import { dosedColor, type Palette, paletteOf } from "../../calc/palette";
import { costOf } from "../../calc/recipecost";
import { type Recipe, recipesFor } from "../../calc/recipes";
import type { SwatchRow } from "../../calc/tonecolor";
import { toneFamily } from "../../calc/tonefamily";
import type { Basis } from "./basis";
import { setting } from "./given";
import { all, from, is, isKnown, type Known, orNull } from "./known";
import { type PigmentAnswer, pigmentAnswer } from "./pigments";
import { swatchSet } from "./swatchset";

/** What recipes can be made of. */
export interface StudioPalette {
	palette: Palette;
	/** Of its columns. */
	names: readonly string[];
	pigments: readonly PigmentAnswer[];
	/** The swatches of one pigment or none. */
	rows: readonly SwatchRow[];
	/** Doses of every swatch, those of several pigments too. */
	cast: readonly (readonly number[])[];
	/** Pigments that no recipe has, with the reason. */
	left: readonly string[];
	cementShare: number;
	binderShare: number;
}

export interface RecipeDose {
	name: string;
	/** Of binder. */
	dose: number;
	/** As it is typed on the Tones tab, in the basis that its maker states. */
	typed: number;
	/** Dry, for 100 kg of undosed mix. */
	kgPer100: number;
}

export interface RecipeAnswer {
	doses: readonly RecipeDose[];
	/** `#rrggbb`. */
	color: string;
	lab: Lab;
	/** CIEDE2000 to the wanted color. */
	difference: number;
	/** Within which three of four casts are. */
	within: number;
	/** Of the pigment for 100 kg of undosed mix; null where a price is missing. */
	costPer100: number | null;
	/** Share of cement. */
	headroom: number;
}

/** Everything for recipes; a pigment that the studio says too little of is left out, and said. */
export function studioPalette(basis: Basis): Known<StudioPalette> {
	const { given, mix } = basis;
	return from(
		all([swatchSet(basis), mix.cementShare, mix.binderShare] as [
			ReturnType<typeof swatchSet>,
			Known<number>,
			Known<number>,
		]),
		([set, cementShare, binderShare]) => {
			const left: string[] = [];
			const pigments = set.swatchPigments
				.map((name) => pigmentAnswer(given, mix, name))
				.filter(({ name, maximum, toBinder }) => {
					const known = isKnown(maximum) && isKnown(toBinder);
					if (!known)
						left.push(`${name} is not known well on the Pigments tab`);
					return known;
				});
			const names = pigments.map(({ name }) => name);
			const own = { ...set, pigments: names };
			const rows = counting(own);
			const palette = paletteOf(rows);
			for (const [column, name] of names.entries())
				if (!palette.pigments.some((one) => one.column === column))
					left.push(`${name} has no swatch of its own here`);
			return {
				palette,
				names,
				pigments,
				rows,
				cast: castDoses(own),
				left,
				cementShare,
				binderShare,
			};
		},
	);
}

const limitsOf = ({ pigments, cementShare }: StudioPalette) => ({
	maxima: pigments.map(({ maximum }) => orNull(maximum) ?? undefined),
	cementShare,
});

/** Divisions of the gram scale that a dose must weigh in the batch: it is then within 5%. */
const DIVISIONS = 20;

/** Recipes for a color, the one to begin with first. */
export function recipesOf(
	basis: Basis,
	studio: StudioPalette,
	wanted: Lab,
): RecipeAnswer[] {
	const batchKg = orNull(basis.loads.batchKg);
	const divisionKg = orNull(setting(basis.given, "gram_division"));
	const leastDose =
		batchKg && divisionKg
			? (DIVISIONS * divisionKg) / (studio.binderShare * batchKg)
			: 0;
	const bandOf = castBands(studio.palette);
	return recipesFor(studio.palette, wanted, {
		...limitsOf(studio),
		leastDose,
	}).map((recipe) => recipeAnswer(studio, recipe, bandOf(recipe.doses)));
}

/** The recipe after a cast of it was measured. */
export function recipeAfterCast(
	studio: StudioPalette,
	cast: { wanted: Lab; doses: readonly number[]; measured: Lab },
): RecipeAnswer {
	const corrected = correctedRecipe(studio.palette, cast, limitsOf(studio));
	const band = castBands(studio.palette)(corrected.doses);
	return recipeAnswer(studio, corrected, afterCast(band, corrected.doses));
}

/** Doses in the order of the palette's columns. */
export const dosesIn = (
	{ names }: Pick<StudioPalette, "names">,
	doses: Readonly<Record<string, number>>,
): number[] =>
	names.map(
		(name) =>
			Object.entries(doses).find(([other]) => sameName(other, name))?.[1] ?? 0,
	);

/** Tones from a strongest one toward the bare mix, in even steps of lightness. @throws InputError where there are none. */
export function familyOf(
	studio: StudioPalette,
	strongest: readonly number[],
	count: number,
): RecipeAnswer[] {
	const { palette } = studio;
	const colorOf = (doses: readonly number[]) => dosedColor(palette, doses);
	const bandOf = castBands(palette);
	return toneFamily(colorOf, strongest, count).map((doses) =>
		recipeAnswer(
			studio,
			{ pigments: [], doses, lab: colorOf(doses), difference: 0 },
			bandOf(doses),
		),
	);
}

const KG = 100;

function recipeAnswer(
	{ names, pigments, binderShare, cementShare }: StudioPalette,
	recipe: Recipe,
	within: number,
): RecipeAnswer {
	const { doses, lab, difference } = recipe;
	const { pigmentsKg, cost } = costOf({
		doses,
		binderShare,
		massKg: KG,
		pricesPerKg: pigments.map(dryPrice),
	});
	return {
		doses: names.flatMap((name, i) => {
			const dose = doses[i] ?? 0;
			const toBinder = orNull(pigments[i]?.toBinder ?? is(1)) ?? 1;
			return dose > 0
				? [
						{
							name,
							dose,
							typed: dose / toBinder,
							kgPer100: pigmentsKg[i] ?? 0,
						},
					]
				: [];
		}),
		color: hexOfLab(lab),
		lab,
		difference,
		within,
		costPer100: cost ?? null,
		headroom: pigmentHeadroom({
			doses,
			maxima: limitsOf({ pigments, cementShare } as StudioPalette).maxima,
			cementShare,
		}),
	};
}

/** Of a kilogram dry; undefined where it is not known. */
function dryPrice({ pricePerGram, solids }: PigmentAnswer): number | undefined {
	const price = orNull(pricePerGram);
	const share = orNull(solids);
	return price === null || share === null ? undefined : (1000 * price) / share;
}
