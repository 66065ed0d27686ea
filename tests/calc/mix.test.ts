/** Printed examples are in tests/published; here is what must hold whatever the mix. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import {
	batchKg,
	binderShareOf,
	dampMass,
	fiberKg,
	freshDensityKgPerM3,
	waterBinderRatio,
	weighOutMasses,
} from "../../src/calc/mix";

const positive = fc.double({ min: 0.01, max: 1000, noNaN: true });
const parts = fc.array(positive, { minLength: 1, maxLength: 9 });
const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

test("batch: 0.1 m³ × 2000 kg/m³ × 1.08 = 216 kg", () => {
	const batch = { volumeM3: 0.1, densityKgPerM3: 2000, waste: 0.08 };
	expect(batchKg(batch)).toBeCloseTo(216, 9);
});

describe("weighing out", () => {
	test("masses add up to the batch, in proportion", () => {
		fc.assert(
			fc.property(parts, positive, (all, mass) => {
				const masses = weighOutMasses(all, mass);
				expect(sum(masses) / mass).toBeCloseTo(1, 9);
				masses.forEach((each, index) => {
					const share = (all[index] ?? 0) / sum(all);
					expect(each / mass).toBeCloseTo(share, 9);
				});
			}),
		);
	});

	test("twice the batch is twice each mass", () => {
		fc.assert(
			fc.property(parts, positive, (all, mass) => {
				expect(weighOutMasses(all, 2 * mass)).toEqual(
					weighOutMasses(all, mass).map((each) => 2 * each),
				);
			}),
		);
	});

	test.each([[[]], [[0, 0]]])("parts %j are refused", (none) => {
		expect(() => weighOutMasses(none, 10)).toThrow(InputError);
	});
});

describe("fresh density", () => {
	test("3 kg of 3.0 and 1 kg of water with 5% air: 4 / 0.002 × 0.95 = 1900", () => {
		const mix = [
			{ part: 3, specificGravity: 3 },
			{ part: 1, specificGravity: 1 },
		];
		expect(freshDensityKgPerM3(mix, 0.05)).toBeCloseTo(1900, 9);
	});

	test("lies between the lightest and the heaviest, whatever the parts' unit", () => {
		const ingredient = fc.record({
			part: positive,
			specificGravity: fc.double({ min: 0.5, max: 5, noNaN: true }),
		});
		fc.assert(
			fc.property(fc.array(ingredient, { minLength: 1 }), (mix) => {
				const density = freshDensityKgPerM3(mix, 0);
				const gravities = mix.map(({ specificGravity }) => specificGravity);
				expect(density).toBeGreaterThan(Math.min(...gravities) * 999.999);
				expect(density).toBeLessThan(Math.max(...gravities) * 1000.001);
				const pounds = mix.map((each) => ({ ...each, part: each.part * 2.2 }));
				expect(freshDensityKgPerM3(pounds, 0) / density).toBeCloseTo(1, 9);
			}),
		);
	});

	test("nothing to weigh is refused", () => {
		expect(() =>
			freshDensityKgPerM3([{ part: 0, specificGravity: 1 }], 0),
		).toThrow("parts must not all be 0");
	});
});

describe("binder and water", () => {
	// 100 kg of bagged blend at 55%, 12 of water, 2 of a reducer that is 60% water.
	const rows = [
		{ part: 100, binderShare: 0.55, waterShare: 0 },
		{ part: 12, binderShare: 0, waterShare: 1 },
		{ part: 2, binderShare: 0, waterShare: 0.6 },
	];

	test("55 / 114 and 13.2 / 55", () => {
		expect(binderShareOf(rows)).toBeCloseTo(55 / 114, 12);
		expect(waterBinderRatio(rows)).toBeCloseTo(0.24, 12);
	});

	test.each([
		[[{ part: 5, binderShare: 0, waterShare: 1 }], /got no binder at all/],
		[[{ part: 0, binderShare: 1, waterShare: 0 }], /parts must not all be 0/],
		[[], /parts is blank/],
	])("%j is refused", (none, sentence) => {
		expect(() => binderShareOf(none)).toThrow(sentence);
		expect(() => waterBinderRatio(none)).toThrow(sentence);
	});
});

test("damp sand, 40 kg dry, 5% wet, 1% absorbed: 42 kg brings 1.6; dry sand at 0% takes up 0.4", () => {
	const sand = { dryMass: 40, absorption: 0.01 };
	const [damp, brings] = dampMass({ ...sand, moisture: 0.05 });
	expect(damp).toBeCloseTo(42, 12);
	expect(brings).toBeCloseTo(1.6, 12);
	const [dry, takes] = dampMass({ ...sand, moisture: 0 });
	expect(dry).toBe(40);
	expect(takes).toBeCloseTo(-0.4, 12);
});

test("fiber: 0.06 m³ × 2% × 1300 = 1.56 kg", () => {
	const fiber = { volumeM3: 0.06, volumeShare: 0.02, densityKgPerM3: 1300 };
	expect(fiberKg(fiber)).toBeCloseTo(1.56, 12);
});
