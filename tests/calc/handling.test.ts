/** Printed numbers are in tests/published: slab-bending, aci-318, aci-347, hse-team-lifts. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	formPressurePa,
	modulusOfRuptureMPa,
	modulusOfRupturePsi,
	peopleToLift,
	SUPPORTS,
	selfWeightStressPa,
	upliftKg,
} from "../../src/calc/handling";

const slab = { lengthM: 2, thicknessM: 0.05, densityKgPerM3: 2000, factor: 1 };

describe("self-weight stress", () => {
	test.each([
		// 0.75 × 2000 × 9.80665 × 4 / 0.05.
		["ends", 1176798],
		// 3 × 2000 × 9.80665 × 4 / 0.05.
		["cantilever", 4707192],
		// 0.75 (3 − 2√2) × 2000 × 9.80665 × 4 / 0.05 = 1176798 × 0.171573.
		["fifth points", 201906.7],
	] as const)("%s", (support, stressPa) => {
		expect(selfWeightStressPa({ ...slab, support })).toBeCloseTo(stressPa, 0);
	});

	test("at the fifth points the moment is the same in the middle and over the supports", () => {
		// mid wL²/8 − wLa/2, support wa²/2, with w = L = 1: equal where a² + a − 1/4 = 0, a = (√2 − 1)/2.
		const a = (Math.SQRT2 - 1) / 2;
		expect(1 / 8 - a / 2).toBeCloseTo(a ** 2 / 2, 12);
		const ends = selfWeightStressPa({ ...slab, support: "ends" });
		const fifths = selfWeightStressPa({ ...slab, support: "fifth points" });
		expect(fifths / ends).toBeCloseTo((8 * a ** 2) / 2, 12);
		expect(ends / fifths).toBeCloseTo(5.8284, 4);
	});

	test("grows with the square of the length and the impact, shrinks with thickness", () => {
		for (const support of SUPPORTS) {
			const one = selfWeightStressPa({ ...slab, support });
			const at = (more: Partial<typeof slab>) =>
				selfWeightStressPa({ ...slab, support, ...more }) / one;
			expect(at({ lengthM: 4 })).toBeCloseTo(4, 12);
			expect(at({ thicknessM: 0.1 })).toBeCloseTo(0.5, 12);
			expect(at({ factor: 1.5 })).toBeCloseTo(1.5, 12);
		}
	});
});

test("modulus of rupture: the two printed forms are 0.45% apart", () => {
	// 7.5 √psi in MPa is 7.5 × √0.006894757 = 0.62277 √MPa.
	const strength = fc.double({ min: 1, max: 150, noNaN: true });
	fc.assert(
		fc.property(strength, (mpa) => {
			const psi = mpa / 0.006894757293;
			const us = modulusOfRupturePsi(psi) * 0.006894757293;
			expect(us / modulusOfRuptureMPa(mpa)).toBeCloseTo(0.62277 / 0.62, 4);
		}),
	);
});

describe("people to lift", () => {
	test.each([
		[30, 30, 1],
		[30.1, 30, 2],
		// two: 2/3 × 60 = 40; three: 1/2 × 90 = 45.
		[40, 30, 2],
		[40.1, 30, 3],
		[45, 30, 3],
		[45.1, 30, "lifting equipment"],
		// 4/3 × 0.3 is 0.39999999999999997 in binary.
		[0.4, 0.3, 2],
		[1, 0, "lifting equipment"],
	])("%f where one may lift %f: %s", (weight, limit, people) => {
		expect(peopleToLift(weight, limit)).toBe(people);
	});

	test("a heavier piece never takes fewer", () => {
		const order = [1, 2, 3, "lifting equipment"];
		const mass = fc.double({ min: 0.1, max: 200, noNaN: true });
		fc.assert(
			fc.property(mass, mass, mass, (a, b, limit) => {
				const lighter = peopleToLift(Math.min(a, b), limit);
				const heavier = peopleToLift(Math.max(a, b), limit);
				expect(order.indexOf(heavier)).toBeGreaterThanOrEqual(
					order.indexOf(lighter),
				);
			}),
		);
	});
});

test("pressure at the foot: 2000 × 9.80665 × 0.5", () => {
	expect(formPressurePa(0.5, 2000)).toBeCloseTo(9806.65, 9);
});

describe("uplift", () => {
	test("10 L in mix of 2000 kg/m³ lifts 20 kg less its own 3", () => {
		const foam = { volumeM3: 0.01, densityKgPerM3: 2000, formerKg: 3 };
		expect(upliftKg(foam)).toBeCloseTo(17, 12);
	});

	test("what is heavier than the mix sinks: 0", () => {
		const steel = { volumeM3: 0.01, densityKgPerM3: 2000, formerKg: 78 };
		expect(upliftKg(steel)).toBe(0);
	});
});
