/** Recipes against every step of a grid, and out of swatches whose truth is known. */
import { describe, expect, test } from "vitest";
import { castBands } from "../../src/calc/castband";
import { colorDifference } from "../../src/calc/ciede2000";
import type { Lab } from "../../src/calc/color";
import { correctedRecipe } from "../../src/calc/correction";
import { absorptions, mixedColor, type Strength } from "../../src/calc/kubelka";
import { normal, uniform } from "../../src/calc/noise";
import { paletteColor, paletteOf } from "../../src/calc/palette";
import { type Recipe, recipesFor } from "../../src/calc/recipes";
import type { SwatchRow } from "../../src/calc/tonecolor";

/** Invented pigments of two-constant truth: red, yellow, black, green; the share of the strongest dose is u. */
const KAPPA = [
	[0.7, 1.1, 1.6],
	[0.3, 0.38, 1.6],
	[2.3, 2.3, 2],
	[1.4, 0.8, 1.3],
];
const SIGMA = [
	[0.4, 0.35, 0.2],
	[0.5, 0.45, 0.3],
	[0.3, 0.3, 0.28],
	[0.5, 0.6, 0.4],
];
const STRONGEST = [0.05, 0.06, 0.04, 0.05];
const UNDOSED: Lab = { l: 72, a: 1.2, b: 7.5 };

/** What a mix really looks like, `stronger` times as strong in one pigment. */
function truth(doses: readonly number[], stronger: number[] = []): Lab {
	return mixedColor(
		absorptions(UNDOSED),
		doses.map((dose, i) => ({
			u: dose / (STRONGEST[i] ?? 1),
			strengths: [0, 1, 2].map(
				(j): Strength => ({
					kappa: (KAPPA[i]?.[j] ?? 0) * (stronger[i] ?? 1),
					sigma: SIGMA[i]?.[j] ?? 0,
				}),
			),
		})),
	);
}

/** Undosed, and each pigment at these shares of its strongest dose; `noise` is that of a reading. */
function swatches(
	shares: readonly number[],
	noise?: () => number,
): SwatchRow[] {
	const read = ({ l, a, b }: Lab): Lab =>
		noise
			? { l: l + 0.4 * noise(), a: a + 0.28 * noise(), b: b + 0.28 * noise() }
			: { l, a, b };
	const doses = [
		[0, 0, 0, 0],
		...STRONGEST.flatMap((strongest, i) =>
			shares.map((share) =>
				STRONGEST.map((_, k) => (k === i ? share * strongest : 0)),
			),
		),
	];
	return doses.map((each) => ({ doses: each, lab: read(truth(each)) }));
}

const LIMITS: readonly (readonly (number | undefined)[])[] = [
	[],
	[0.06, 0.06, 0.03, undefined],
	[0.02, 0.05, 0.05, 0.01],
];

const palette = paletteOf(swatches([1 / 3, 1]));

/** The least difference on a grid of 13 steps a pigment over every set of up to three. */
function bruteForce(
	wanted: Lab,
	maxima: readonly (number | undefined)[],
): number {
	let best = Number.POSITIVE_INFINITY;
	const steps = 12;
	const all = palette.pigments;
	const visit = (from: number, used: number[], shares: number[]) => {
		const pigments = used.map((i) => all[i] as (typeof all)[number]);
		const doses = pigments.map((one, k) => one.strongest * (shares[k] ?? 0));
		const allowed = Math.min(0.1, ...used.map((i) => maxima[i] ?? 0.1));
		const total = doses.reduce((sum, dose) => sum + dose, 0);
		if (total <= allowed)
			best = Math.min(
				best,
				colorDifference(paletteColor(palette, pigments, shares), wanted),
			);
		if (used.length === 3) return;
		for (let i = from; i < all.length; i += 1)
			for (let k = 1; k <= steps; k += 1)
				visit(i + 1, [...used, i], [...shares, k / steps]);
	};
	visit(0, [], []);
	return best;
}

describe("recipes", () => {
	const next = uniform(11);
	/** Any color a stone may have, in reach or far out of it. */
	const wanted = Array.from({ length: 24 }, (_, i) => ({
		lab: { l: 30 + 60 * next(), a: -15 + 45 * next(), b: -15 + 50 * next() },
		maxima: LIMITS[i % LIMITS.length] ?? [],
	}));

	test("are never worse than a grid of all doses", () => {
		for (const { lab, maxima } of wanted) {
			const found = recipesFor(palette, lab, { maxima });
			const nearest = Math.min(...found.map(({ difference }) => difference));
			expect(nearest).toBeLessThanOrEqual(bruteForce(lab, maxima) + 1e-3);
		}
	});

	test("keep to the limits of the pigments that are in them", () => {
		for (const { lab, maxima } of wanted)
			for (const { doses, pigments } of recipesFor(palette, lab, { maxima })) {
				const total = doses.reduce((sum, dose) => sum + dose, 0);
				const allowed = pigments.map((i) => maxima[i] ?? 0.1);
				expect(total).toBeLessThanOrEqual(Math.min(0.1, ...allowed) + 1e-9);
				doses.forEach((dose, i) => {
					expect(dose).toBeLessThanOrEqual((STRONGEST[i] ?? 0) + 1e-9);
				});
			}
	});

	test("begin with the fewest pigments within 0.5 of the nearest; each set of pigments once", () => {
		for (const { lab, maxima } of wanted) {
			const [first, ...others] = recipesFor(palette, lab, { maxima });
			const nearest = Math.min(
				...[first as Recipe, ...others].map((each) => each.difference),
			);
			expect(first?.difference).toBeLessThanOrEqual(nearest + 0.5);
			for (const other of others)
				if (other.difference <= nearest + 0.5)
					expect(other.pigments.length).toBeGreaterThanOrEqual(
						first?.pigments.length ?? 0,
					);
			const sets = [first, ...others].map((each) => each?.pigments.join());
			expect(new Set(sets).size).toBe(sets.length);
		}
	});

	test("do not depend on the order of the swatches", () => {
		const turned = paletteOf(swatches([1 / 3, 1]).reverse());
		for (const { lab } of wanted.slice(0, 6))
			expect(recipesFor(turned, lab)).toEqual(recipesFor(palette, lab));
	});

	test("leave out a pigment of which there is too little to weigh", () => {
		const [, nearest] = recipesFor(palette, truth([0.02, 0, 0.0002, 0]));
		expect(nearest?.pigments.length).toBeGreaterThan(1);
		const found = recipesFor(palette, truth([0.02, 0, 0.0002, 0]), {
			leastDose: 0.001,
		});
		for (const { doses } of found)
			expect(doses.filter((dose) => dose > 0 && dose < 0.001)).toEqual([]);
	});

	test("find the doses that a color was made with, and its color", () => {
		const made = [
			[0.02, 0, 0, 0],
			[0, 0.03, 0, 0],
			[0.012, 0.02, 0, 0],
			[0, 0.02, 0, 0.02],
			[0.01, 0.015, 0.005, 0],
		];
		for (const doses of made) {
			const lab = truth(doses);
			const found = recipesFor(palette, lab);
			// What the ridge of the fit leaves, seen with three noiseless swatches a pigment.
			for (const recipe of found.filter((each) => each.difference <= 0.5))
				expect(colorDifference(truth(recipe.doses), lab)).toBeLessThan(1);
		}
	});

	test("are refused without an undosed swatch, or without any pigment alone", () => {
		expect(() => paletteOf(swatches([1 / 3, 1]).slice(1))).toThrow("undosed");
		expect(() => paletteOf(swatches([1 / 3, 1]).slice(0, 1))).toThrow(
			"at least one pigment alone",
		);
	});
});

describe("a correction by a cast", () => {
	// A batch of pigment that is a quarter stronger, or a fifth weaker, than the swatches say.
	test.each([
		[[1.25, 1, 1, 1]],
		[[1, 0.8, 1, 1]],
		[[1, 1, 1.25, 1]],
		[[0.8, 1.2, 1, 1]],
	])("comes nearer than half, whatever the pigments really do: %s", (batch) => {
		for (const doses of [
			[0.015, 0.02, 0, 0],
			[0, 0.03, 0.006, 0],
			[0.012, 0.012, 0.006, 0],
		]) {
			const wanted = truth(doses);
			const off = (made: readonly number[]) =>
				colorDifference(truth(made, batch), wanted);
			const first = recipesFor(palette, wanted).find(
				({ difference }) => difference < 0.1,
			) as Recipe;
			const corrected = correctedRecipe(
				palette,
				{ wanted, doses: first.doses, measured: truth(first.doses, batch) },
				{ maxima: [], cementShare: 1 },
			);
			expect(off(corrected.doses)).toBeLessThanOrEqual(
				Math.max(0.35, off(first.doses) / 2),
			);
		}
	});

	test("changes nothing where the cast came out as the swatches say", () => {
		const [recipe] = recipesFor(palette, truth([0.02, 0.02, 0, 0])) as [Recipe];
		const corrected = correctedRecipe(
			palette,
			{ wanted: recipe.lab, doses: recipe.doses, measured: recipe.lab },
			{ maxima: [], cementShare: 1 },
		);
		corrected.doses.forEach((dose, i) => {
			expect(dose).toBeCloseTo(recipe.doses[i] ?? 0, 5);
		});
	});

	test.each([
		["no pigment", [0, 0, 0, 0], "at least one pigment"],
		["more than the strongest", [0.07, 0, 0, 0], "strongest swatch"],
	])("is refused for %s", (_, doses, message) => {
		expect(() =>
			correctedRecipe(
				palette,
				{ wanted: UNDOSED, doses, measured: UNDOSED },
				{ maxima: [], cementShare: 1 },
			),
		).toThrow(message);
	});
});

describe("how far a cast may be off", () => {
	test("covers most casts of one pigment, and is never below what is said at least", () => {
		const noise = normal(5);
		let within = 0;
		let twice = 0;
		let count = 0;
		for (let k = 0; k < 12; k += 1) {
			const read = paletteOf(swatches([1 / 3, 1], noise));
			const bandOf = castBands(read);
			for (const doses of [
				[0.02, 0, 0, 0],
				[0, 0.035, 0, 0],
				[0, 0, 0.012, 0],
				[0, 0, 0, 0.03],
			]) {
				const [recipe] = recipesFor(read, truth(doses), { most: 1 });
				if (!recipe) throw new Error("no recipe");
				const band = bandOf(recipe.doses);
				expect(band).toBeGreaterThanOrEqual(0.6);
				const off = colorDifference(truth(recipe.doses), recipe.lab);
				if (off <= band) within += 1;
				if (off <= 2 * band) twice += 1;
				count += 1;
			}
		}
		// Three of four, and nearly all within twice as much: what such simulations gave before.
		expect(within / count).toBeGreaterThan(0.7);
		expect(twice / count).toBeGreaterThan(0.95);
	});

	test("is wider with two swatches of a pigment than with three", () => {
		const [two, three] = [[1], [1 / 3, 1]].map((shares) => {
			const own = paletteOf(swatches(shares));
			const [recipe] = recipesFor(own, truth([0.02, 0, 0, 0]), { most: 1 });
			return castBands(own)((recipe as Recipe).doses);
		});
		expect(two).toBeGreaterThan(three ?? 0);
	});
});
