/** Margins that others printed are in tests/published/margins.ts; the rest is worked by hand. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import {
	inCents,
	marginOf,
	packsToBuy,
	priceForMargin,
	splitAmounts,
} from "../../src/calc/money";

describe("packs", () => {
	test.each([
		[100, 0, 25, 4],
		[100.1, 0, 25, 5],
		[100, 30, 25, 3],
		[10, 30, 25, 0],
		// (0.1 + 0.2) / 0.1 is 3.0000000000000004 in binary.
		[0.1 + 0.2, 0, 0.1, 3],
		[0, 0, 25, 0],
	])(
		"%f needed, %f on hand, packs of %f: %i",
		(needed, onHand, pack, packs) => {
			expect(packsToBuy({ needed, onHand, pack })).toBe(packs);
		},
	);

	test("are enough, and one fewer is not", () => {
		const amount = fc.double({ min: 0, max: 1e4, noNaN: true });
		const pack = fc.double({ min: 0.1, max: 50, noNaN: true });
		fc.assert(
			fc.property(amount, amount, pack, (needed, onHand, size) => {
				const packs = packsToBuy({ needed, onHand, pack: size });
				expect(onHand + packs * size).toBeGreaterThanOrEqual(
					needed - 1.001e-9 * size - 1e-9,
				);
				if (packs > 0) expect(onHand + (packs - 1) * size).toBeLessThan(needed);
			}),
		);
	});
});

test("the margin of the price for a margin is that margin", () => {
	const cost = fc.double({ min: 0.01, max: 1e6, noNaN: true });
	const margin = fc.double({ min: 0, max: 0.99, noNaN: true });
	fc.assert(
		fc.property(cost, margin, (c, m) => {
			expect(marginOf(priceForMargin(c, m), c)).toBeCloseTo(m, 9);
		}),
	);
});

test("below cost the margin is negative: (80 − 100) / 80", () => {
	expect(marginOf(80, 100)).toBe(-0.25);
});

// Half away from zero of the decimal that is written, whatever its binary form.
test.each([
	[1.005, 1.01],
	[-1.005, -1.01],
	[2.675, 2.68],
	[1.004999, 1],
	[0.1 + 0.2, 0.3],
	[-0.125, -0.13],
	[0, 0],
	[-0.001, 0],
])("%f in cents is %f", (amount, cents) => {
	expect(inCents(amount)).toBe(cents);
});

describe("splitting", () => {
	test.each<[string, number, number[], number, number[]]>([
		[
			"a third each: the first gets the cent",
			100,
			[1, 1, 1],
			2,
			[33.34, 33.33, 33.33],
		],
		// 1.005 is stored as 1.00499999999999989…; on the sheet it is 1.005.
		["1.005 is 1.01", 1.005, [1], 2, [1.01]],
		["2.675 is 2.68", 2.675, [1], 2, [2.68]],
		["1.115 is 1.12", 1.115, [1], 2, [1.12]],
		["−1.005 is −1.01, away from zero", -1.005, [1], 2, [-1.01]],
		["1.0049 is 1.00", 1.0049, [1], 2, [1]],
		[
			"half to the deposit of 0.05: earlier first",
			0.05,
			[1, 1],
			2,
			[0.03, 0.02],
		],
		// Exact 1.1, 2.2, 7.7 cents: floors 1, 2, 7, the cent left to the largest remainder .7.
		["0.11 as 1 : 2 : 7", 0.11, [1, 2, 7], 2, [0.01, 0.02, 0.08]],
		["whole units", 10, [2, 1], 0, [7, 3]],
		["four decimals", 1, [1, 2], 4, [0.3333, 0.6667]],
		["a share of 0 gets nothing", 0.01, [0, 1], 2, [0, 0.01]],
		["nothing to split", 0, [1, 2], 2, [0, 0]],
		["57 cents are 0.57", 0.57, [1], 2, [0.57]],
		// Credit: −0.05 is split as 0.05.
		["a credit", -0.05, [1, 1], 2, [-0.03, -0.02]],
	])("%s", (_, total, shares, decimals, amounts) => {
		const got = splitAmounts(total, shares, decimals).map((each) => each + 0);
		expect(got).toEqual(amounts);
	});

	test("adds up to the cent, each within a cent of its share", () => {
		const cents = fc.integer({ min: -1e9, max: 1e9 });
		const shares = fc.array(fc.double({ min: 0.001, max: 100, noNaN: true }), {
			minLength: 1,
			maxLength: 12,
		});
		fc.assert(
			fc.property(cents, shares, (total, weights) => {
				const amounts = splitAmounts(total / 100, weights, 2);
				const asCents = amounts.map((amount) => Math.round(amount * 100));
				expect(asCents.reduce((a, b) => a + b, 0)).toBe(total);
				const weight = weights.reduce((a, b) => a + b, 0);
				asCents.forEach((each, index) => {
					const exact = ((weights[index] ?? 0) / weight) * total;
					expect(Math.abs(each - exact)).toBeLessThan(1.001);
				});
			}),
		);
	});

	test.each<[number, number[], RegExp]>([
		[100, [0, 0], /shares must not all be 0/],
		[1e11, [1], /total must be at most 10000000000/],
	])("%f by %j is refused", (total, shares, sentence) => {
		expect(() => splitAmounts(total, shares, 2)).toThrow(InputError);
		expect(() => splitAmounts(total, shares, 2)).toThrow(sentence);
	});
});
