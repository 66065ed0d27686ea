/** Recipes and corrections against what other code found for the same swatches: source and tolerance stand in the file. */
import { describe, expect, test } from "vitest";
import { boundedLeast } from "../../../src/calc/bounded";
import { colorDifference, differenceParts } from "../../../src/calc/ciede2000";
import { correctedRecipe } from "../../../src/calc/correction";
import {
	absorptions,
	mixedColor,
	type Strength,
} from "../../../src/calc/kubelka";
import { costOf } from "../../../src/calc/recipecost";
import { type Recipe, recipesFor } from "../../../src/calc/recipes";
import { casesOf, labOf, palette } from "./checks";

const close = (got: number, wanted: number, tolerance: number) =>
	expect(Math.abs(got - wanted)).toBeLessThanOrEqual(tolerance);

const closeLab = (got: unknown, wanted: readonly number[], tolerance: number) =>
	expect(got, String(wanted)).toSatisfy(
		(lab: ReturnType<typeof labOf>) =>
			Math.abs(lab.l - (wanted[0] ?? 0)) <= tolerance &&
			Math.abs(lab.a - (wanted[1] ?? 0)) <= tolerance &&
			Math.abs(lab.b - (wanted[2] ?? 0)) <= tolerance,
	);

describe("recipes for a color", () => {
	test.each(casesOf("match"))("%s", (_, { inputs, expected, tolerance }) => {
		const found = recipesFor(palette(inputs), labOf(inputs.target_lab), {
			maxima: inputs.maxima_of_cement,
			cementShare: inputs.cement_share_of_binder,
		});
		const first = found[0] as Recipe;
		const nearest = Math.min(...found.map(({ difference }) => difference));
		close(nearest, expected.best_dE00, tolerance.dE00);
		expect(nearest <= 1.8).toBe(expected.in_reach);
		const sparser = expected.sparser_within_0p5;
		close(first.difference, sparser.dE00, tolerance.dE00);
		closeLab(first.lab, sparser.lab, tolerance.lab);
		const names = first.pigments.map((column) => inputs.pigments[column]);
		expect(names.length).toBeLessThanOrEqual(sparser.pigments.length);
		if (names.join() === sparser.pigments.join())
			for (const [i, column] of first.pigments.entries())
				close(first.doses[column] ?? 0, sparser.doses[i], 0.0015);
	});

	test.each(casesOf("match"))("%s, of one pigment", (_, each) => {
		const { inputs, expected, tolerance } = each;
		const found = recipesFor(palette(inputs), labOf(inputs.target_lab), {
			maxima: inputs.maxima_of_cement,
			most: 1,
		});
		close(
			Math.min(...found.map(({ difference }) => difference)),
			expected.best_with_one.dE00,
			tolerance.dE00,
		);
	});
});

test.each(casesOf("match-linear"))(
	"%s",
	(_, { inputs, expected, tolerance }) => {
		const rows = inputs.q_target.map((q: number, j: number) =>
			inputs.kappa.map(
				(kappa: number[], i: number) =>
					(kappa[j] ?? 0) - q * inputs.sigma[i][j],
			),
		);
		const wanted = inputs.q_target.map(
			(q: number, j: number) => q - inputs.q0[j],
		);
		const found = boundedLeast(rows, wanted, {
			low: [0, 0, 0],
			high: [1, 1, 1],
			weights: [1, 1, 1],
			limit: 3,
		});
		expected.u.forEach((u: number, i: number) => {
			close(found[i] ?? 0, u, tolerance);
		});
	},
);

test.each(casesOf("residual-vector"))("%s", (_, each) => {
	const { inputs, expected, tolerance } = each;
	const parts = differenceParts(labOf(inputs.lab1), labOf(inputs.lab2));
	close(Math.hypot(...parts), expected.norm, tolerance);
});

test.each(casesOf("recipe-amounts"))("%s", (_, each) => {
	const { inputs, expected, tolerance } = each;
	const { pigmentsKg, cost } = costOf({
		doses: inputs.doses_of_binder,
		binderShare: inputs.binder_share,
		pricesPerKg: inputs.price_per_kg,
		massKg: inputs.undosed_kg,
	});
	expected.pigment_kg.forEach((kg: number, i: number) => {
		close(pigmentsKg[i] ?? 0, kg, tolerance);
	});
	close(cost ?? 0, expected.cost, tolerance);
});

describe("a recipe corrected by its cast", () => {
	test.each(casesOf("correction"))(
		"%s",
		(_, { inputs, expected, tolerance }) => {
			const studio = palette(inputs);
			const columns: number[] = inputs.pigments_of_recipe.map((name: string) =>
				inputs.pigments.indexOf(name),
			);
			const doses = inputs.pigments.map(() => 0);
			for (const [i, column] of columns.entries())
				doses[column] = inputs.first_doses[i];
			const wanted = labOf(inputs.target_lab);
			const measured = labOf(inputs.cast_lab);
			close(
				colorDifference(measured, wanted),
				expected.dE00_of_first_cast,
				0.005,
			);
			const corrected = correctedRecipe(
				studio,
				{ wanted, doses, measured },
				{ maxima: [], cementShare: 1 },
			);
			closeLab(corrected.aim, expected.aim_lab, tolerance.aim_lab);
			for (const [i, column] of columns.entries()) {
				const dose: number = expected.corrected_doses[i];
				close(corrected.doses[column] ?? 0, dose, 0.03 * dose);
			}
		},
	);
});

describe("opaque paints as measured", () => {
	test.each(casesOf("opaque-two-constant"))("%s", (_, { inputs, expected }) => {
		const white = absorptions(labOf(inputs.white_lab));
		const pure = absorptions(labOf(inputs.masstone_lab));
		const c: number = inputs.mass_fraction;
		const tint = (scattering: readonly number[]) => {
			const strengths = scattering.map(
				(sigma, j): Strength => ({ sigma, kappa: sigma * (pure[j] ?? 0) }),
			);
			return mixedColor(white, [{ strengths, u: c / (1 - c) }]);
		};
		const guess = tint([1, 1, 1]);
		closeLab(guess, expected.tint_if_pigment_scattered_like_white_lab, 0.1);
		close(
			colorDifference(guess, labOf(inputs.tint_lab)),
			expected.dE00_of_that_guess,
			0.1,
		);
		// Scattering is printed to three decimals: the tint comes back within what 2% of it does.
		const back = tint(expected.scattering_ratio_to_white_XYZ);
		expect(colorDifference(back, labOf(inputs.tint_lab))).toBeLessThan(0.5);
	});
});
