import fc from "fast-check";
import { expect, test } from "vitest";
import {
	atLeastOnScale,
	doseUncertainty,
	massForDoseKg,
	onScale,
} from "../../src/calc/weighing";

test("a scale shows the nearest of its divisions", () => {
	// 60.43 kg is between 60.42 and 60.44: a half goes up.
	expect(onScale(60.43, 0.02)).toBe(60.44);
	expect(onScale(60.4299, 0.02)).toBe(60.42);
	// 0.3 is three times 0.1, though not in binary arithmetic.
	expect(onScale(0.3, 0.1)).toBe(0.3);
	expect(onScale(0.15, 0.1)).toBe(0.2);
	expect(onScale(1.026, 0.05)).toBe(1.05);
});

test("the least weight that is not below", () => {
	expect(atLeastOnScale(1.501, 0.02)).toBe(1.52);
	expect(atLeastOnScale(1.52, 0.02)).toBe(1.52);
	// 0.06 / 0.02 is 3 but for the last bit.
	expect(atLeastOnScale(0.06, 0.02)).toBe(0.06);
});

test("of the mass for a dose, the dose is as uncertain as was allowed", () => {
	const positive = fc.double({ min: 1e-4, max: 10, noNaN: true });
	fc.assert(
		fc.property(
			fc.record({
				uncertainty: fc.double({ min: 0.001, max: 0.5, noNaN: true }),
				dose: fc.double({ min: 0.001, max: 0.2, noNaN: true }),
				binderShare: fc.double({ min: 0.1, max: 1, noNaN: true }),
				pigmentDivisionKg: positive,
				massDivisionKg: positive,
			}),
			(scales) => {
				const massKg = massForDoseKg(scales);
				const { dose, binderShare, uncertainty } = scales;
				expect(
					doseUncertainty({
						...scales,
						pigmentKg: massKg * binderShare * dose,
						massKg,
						weighings: 1,
					}) / uncertainty,
				).toBeCloseTo(1, 9);
			},
		),
	);
});

test("the mass for a dose by hand", () => {
	// √2 · d/√12 = d/√6 a tared weighing (JCGM 100, F.2.2.1): of the mix alone, 0.6/√6 kg is 10% of 6/√6 kg.
	expect(
		massForDoseKg({
			uncertainty: 0.1,
			dose: 0.04,
			binderShare: 0.5,
			pigmentDivisionKg: 1e-12,
			massDivisionKg: 0.6,
		}),
	).toBeCloseTo(6 / Math.sqrt(6), 9);
	// Of the pigment alone: 0.6 g/√6 is 10% of 6 g/√6, which is 2% of 300 g/√6 of mix.
	expect(
		massForDoseKg({
			uncertainty: 0.1,
			dose: 0.04,
			binderShare: 0.5,
			pigmentDivisionKg: 0.0006,
			massDivisionKg: 1e-12,
		}),
	).toBeCloseTo(0.3 / Math.sqrt(6), 9);
});
