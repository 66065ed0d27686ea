import { afterCast, castBands } from "../calc/castband";
import { hexOfLab } from "../calc/color";
import { correctedRecipe } from "../calc/correction";
import { paletteOf } from "../calc/palette";
import { MOST_PIGMENTS, type Recipe, recipesFor } from "../calc/recipes";
import { number, share, table } from "./arguments";
import { sheetFunction } from "./declare";
import { color, SOURCE, swatches, swatchRows } from "./swatchrows";
import { oneRowAsWide } from "./tonetable";

const TABLE = swatches("a dose of each pigment");

const MAXIMA = table(
	"One row, e.g. A1:C1: each pigment's maximum, of binder; 10% where blank",
	{},
	{
		more: share("maximum", { optional: true }),
		alone: true,
		optional: true,
	},
);

const PROMISE =
	"The last number is how far three of four casts are off. With three swatches a pigment a cast of one is usually within 1, a first cast of two within 3, of three within 5, corrected once within 2: simulated, as no published table was found. Your casts decide.";

const COLUMNS = "the color, the difference, how far the cast may be off";

const cells = (recipe: Recipe, band: number) => [
	...recipe.doses,
	hexOfLab(recipe.lab),
	recipe.difference,
	band,
];

const ALGORITHM =
	"Gauss–Newton on CIEDE2000, of least dose among 0.5; sum of pigments by ASTM C979/C979M, 1.4";

export const PIGMENTS_FOR_COLOR = sheetFunction({
	name: "PIGMENTS_FOR_COLOR",
	group: "Color",
	summary: "Recipes of up to three pigments that come nearest to a color.",
	limits: `As good as the swatches: one mix, finish, age, all dry. First comes the recipe of fewest pigments within 0.5 of the nearest, then the nearest and others. A difference above 1.8 is out of reach. ${PROMISE}`,
	params: {
		color: color("Color wanted"),
		...TABLE,
		maxima: MAXIMA,
		most: number("Pigments in a recipe at most, e.g. 2; 3 where blank", {
			blank: MOST_PIGMENTS,
			min: 1,
			max: MOST_PIGMENTS,
			whole: true,
		}),
	},
	answer: {
		shape: "table",
		text: `one row per recipe: dose of each pigment, ${COLUMNS}`,
	},
	example: {
		shown: [`"60, 0, 0"`, "A2:B4", "C2:C4"],
		values: [
			"60, 0, 0",
			[
				[0, 0],
				[0.04, 0],
				[0, 0.06],
			],
			[["60, 0, 0"], ["40, 20, 10"], ["55, 2, 20"]],
		],
		answer: [[0, 0, "#919191", 0, 0.6]],
		working:
			"The undosed swatch itself: no pigment; 0.6 is the least that a cast is said to be off by",
	},
	source: `${SOURCE}; ${ALGORITHM}`,
	compute: ({ color, doses, colors, maxima, most }) => {
		const palette = paletteOf(swatchRows(doses, colors));
		const limits = oneRowAsWide("maxima", maxima, "doses", doses);
		const bandOf = castBands(palette);
		return recipesFor(palette, color, { maxima: limits, most }).map((recipe) =>
			cells(recipe, bandOf(recipe.doses)),
		);
	},
});

export const RECIPE_AFTER_CAST = sheetFunction({
	name: "RECIPE_AFTER_CAST",
	group: "Color",
	summary: "A recipe corrected by the color that its cast came out with.",
	limits: `Measure the cast dry, at the age and in the finish of the swatches. The pigments stay the same; color and difference are those to expect of the next cast. ${PROMISE}`,
	params: {
		color: color("Color wanted"),
		recipe: table(
			"Doses that were cast, one row, e.g. A9:C9: a column per pigment",
			{},
			{ more: share("dose", { blank: 0 }), alone: true },
		),
		measured: color("The cast as measured"),
		...TABLE,
		maxima: MAXIMA,
	},
	answer: {
		shape: "row",
		text: `dose of each pigment, ${COLUMNS}`,
	},
	example: {
		shown: [`"40, 0, 0"`, "4%", `"40, 0, 0"`, "A2:A3", "B2:B3"],
		values: [
			"40, 0, 0",
			0.04,
			"40, 0, 0",
			[[0], [0.04]],
			[["60, 0, 0"], ["40, 0, 0"]],
		],
		answer: [[0.04, "#5e5e5e", 0, 0.6]],
		working: "The cast came out as wanted: the recipe stays",
	},
	source: SOURCE,
	compute: ({ color, recipe, measured, doses, colors, maxima }) => {
		const palette = paletteOf(swatchRows(doses, colors));
		const corrected = correctedRecipe(
			palette,
			{
				wanted: color,
				doses: oneRowAsWide("recipe", recipe, "doses", doses),
				measured,
			},
			{
				maxima: oneRowAsWide("maxima", maxima, "doses", doses),
				cementShare: 1,
			},
		);
		const band = castBands(palette)(corrected.doses);
		return cells(corrected, afterCast(band, corrected.doses));
	},
});
