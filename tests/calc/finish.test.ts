import fc from "fast-check";
import { expect, test } from "vitest";
import { coatingM3, voidFillM3 } from "../../src/calc/finish";

test("paste: 2 m² × (5% × 4 mm + 1 mm) × 1.5 = 2 × 1.2 mm × 1.5 = 3.6 L", () => {
	const face = { areaM2: 2, voidShare: 0.05, depthM: 0.004, waste: 0.5 };
	expect(voidFillM3({ ...face, skimM: 0.001 })).toBeCloseTo(0.0036, 12);
	expect(voidFillM3({ ...face, skimM: 0, waste: 0 })).toBeCloseTo(0.0004, 12);
});

test("sealer: 6 m² / 10 m²/L × 2 coats × 1.1 = 1.32 L", () => {
	const sealer = { areaM2: 6, coverageM2PerM3: 10000, coats: 2, waste: 0.1 };
	expect(coatingM3(sealer)).toBeCloseTo(0.00132, 12);
});

test("twice the area takes twice as much of both", () => {
	const size = fc.double({ min: 0.01, max: 100, noNaN: true });
	fc.assert(
		fc.property(size, (areaM2) => {
			const face = { voidShare: 0.1, depthM: 0.003, skimM: 0, waste: 0.2 };
			const coat = { coverageM2PerM3: 8000, coats: 1, waste: 0 };
			const twice = 2 * areaM2;
			expect(
				voidFillM3({ ...face, areaM2: twice }) /
					voidFillM3({ ...face, areaM2 }),
			).toBeCloseTo(2, 12);
			expect(
				coatingM3({ ...coat, areaM2: twice }) / coatingM3({ ...coat, areaM2 }),
			).toBeCloseTo(2, 12);
		}),
	);
});
