/** Recipes for a wanted color: which pigments of a palette, and how much of each. */
import { colorDifference } from "./ciede2000";
import type { Lab } from "./color";
import { type Palette, type PalettePigment, paletteColor } from "./palette";
import {
	boundsOf,
	type Found,
	type Limits,
	refined,
	startsOf,
} from "./recipesearch";
import { sum } from "./sum";

export interface Recipe {
	/** Columns of the table of swatches. */
	pigments: readonly number[];
	/** Of binder, a column each. */
	doses: readonly number[];
	/** What the swatches say that it gives. */
	lab: Lab;
	/** CIEDE2000 to the wanted color: of the recipe, not of the cast. */
	difference: number;
}

/** Pigments in one recipe. */
export const MOST_PIGMENTS = 3;
/** How many sets of pigments of each size are looked at closely. */
const KEPT = 6;
/** A recipe of fewer pigments is as good when it is this much farther: well below what a cast may be off by. */
export const AS_GOOD = 0.5;
/** Recipes of other pigments are shown up to this far above the best: half of people accept that (Paravina et al. 2015). */
const WORTH_SHOWING = 1.8;
const OTHERS = 2;
/** Of binder: below this, a dose is what rounding left. */
const NOTHING = 1e-5;

export interface Search extends Partial<Limits> {
	most?: number;
}

/**
 * Recipes to show for a color, the one to begin with first.
 *
 * That is the one of fewest pigments within 0.5 of the nearest, then of least pigment. After it come the nearest and up
 * to two of other pigments. The search has no random part: it answers the same everywhere.
 */
export function recipesFor(
	palette: Palette,
	wanted: Lab,
	{ most = MOST_PIGMENTS, ...search }: Search = {},
): Recipe[] {
	const limits: Limits = {
		maxima: [],
		cementShare: 1,
		leastDose: NOTHING,
		...search,
	};
	const bySet = new Map<string, Found>();
	const keep = (found: Found) => {
		const key = keyOf(found.pigments);
		const known = bySet.get(key);
		if (!known || found.difference < known.difference) bySet.set(key, found);
	};
	keep({
		pigments: [],
		shares: [],
		difference: colorDifference(paletteColor(palette, [], []), wanted),
	});
	for (let size = 1; size <= most; size += 1)
		setsOf(palette.pigments, size)
			.map((pigments) =>
				startsOf(palette, pigments, wanted, boundsOf(pigments, limits)),
			)
			.sort(([a], [b]) => (a?.difference ?? 0) - (b?.difference ?? 0))
			.slice(0, KEPT)
			.flat()
			.forEach((start) => {
				keep(weighable(palette, start, wanted, limits));
			});
	return chosen([...bySet.values()].map((found) => recipeOf(palette, found)));
}

/** The refined recipe; without the pigments of which there is too little to weigh. */
function weighable(
	palette: Palette,
	start: Found,
	wanted: Lab,
	limits: Limits,
): Found {
	const found = refined(
		palette,
		start,
		wanted,
		boundsOf(start.pigments, limits),
	);
	const enough = found.pigments.map(
		({ strongest }, i) =>
			strongest * (found.shares[i] ?? 0) >= Math.max(NOTHING, limits.leastDose),
	);
	if (enough.every(Boolean)) return found;
	const left = {
		pigments: found.pigments.filter((_, i) => enough[i]),
		shares: found.shares.filter((_, i) => enough[i]),
		difference: 0,
	};
	return weighable(palette, left, wanted, limits);
}

function recipeOf(
	palette: Palette,
	{ pigments, shares, difference }: Found,
): Recipe {
	const doses = Array<number>(palette.columns).fill(0);
	for (const [i, { column, strongest }] of pigments.entries())
		doses[column] = strongest * (shares[i] ?? 0);
	return {
		pigments: pigments.map(({ column }) => column),
		doses,
		lab: paletteColor(palette, pigments, shares),
		difference,
	};
}

function chosen(recipes: readonly Recipe[]): Recipe[] {
	const near = [...recipes].sort((a, b) => a.difference - b.difference);
	const nearest = near[0] as Recipe;
	const first = near
		.filter(({ difference }) => difference <= nearest.difference + AS_GOOD)
		.reduce((a, b) => (sparser(b, a) ? b : a));
	const others = near.filter(
		(recipe) =>
			recipe !== nearest &&
			recipe.difference <= nearest.difference + WORTH_SHOWING &&
			!first.pigments.every((column) => recipe.pigments.includes(column)),
	);
	return [
		first,
		...(first === nearest ? [] : [nearest]),
		...others.slice(0, OTHERS),
	];
}

/** Fewer pigments; of as many, less pigment. */
function sparser(one: Recipe, other: Recipe): boolean {
	const more = one.pigments.length - other.pigments.length;
	return more === 0 ? sum(one.doses) < sum(other.doses) : more < 0;
}

const keyOf = (pigments: readonly PalettePigment[]): string =>
	pigments.map(({ column }) => column).join();

/** Every set of so many of some things, in their order. */
function setsOf<T>(things: readonly T[], size: number): T[][] {
	if (size === 0) return [[]];
	return things.flatMap((thing, i) =>
		setsOf(things.slice(i + 1), size - 1).map((rest) => [thing, ...rest]),
	);
}
