import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import type { Dimensions } from "../../src/calc/shapes";
import { EDGE, OUTSIDE, type Veins, veins } from "../../src/calc/veins";

const SQUARE: Dimensions = {
	shape: "rectangle",
	aM: 1,
	bM: 1,
	thicknessM: 0.03,
};
const SHARES = [0.4, 0.25, 0.15, 0.2];
const PIECE = {
	outline: SQUARE,
	cutouts: [],
	shares: SHARES,
	folds: 3,
	seed: 1,
	widthPx: 280,
	mirrored: false,
};

const draw = (
	change: Partial<typeof PIECE> & { outline?: Dimensions; notchAt?: string },
) => veins({ ...PIECE, ...change });

const countOf = ({ tones }: Veins, tone: number): number =>
	tones.filter((each) => each === tone).length;

/** The tone at a place given as shares of width and height. */
const at = ({ tones, widthPx, heightPx }: Veins, x: number, y: number) =>
	tones[Math.floor(y * heightPx) * widthPx + Math.floor(x * widthPx)];

const outsideAt = (seen: Veins, x: number, y: number) =>
	at(seen, x, y) === OUTSIDE;

const shapes = fc
	.record({
		shape: fc.constantFrom<Dimensions["shape"]>(
			"rectangle",
			"round",
			"oval",
			"L",
			"U",
			"basin",
			"tube",
			"area",
		),
		a: fc.double({ min: 0.3, max: 3, noNaN: true }),
		b: fc.double({ min: 0.3, max: 3, noNaN: true }),
		c: fc.double({ min: 0.05, max: 0.9, noNaN: true }),
		d: fc.double({ min: 0.05, max: 0.9, noNaN: true }),
	})
	.map(({ shape, a, b, c, d }): Dimensions => {
		const [along, deep] =
			shape === "U" ? [Math.max(a, b), Math.min(a, b)] : [a, b];
		return {
			shape,
			thicknessM: 0.03,
			aM: a,
			areaM2: a * b,
			bM: b,
			cM: c * along,
			dM: d * deep,
		};
	});

describe("shares", () => {
	test("each tone has its share of what is seen, within 0.5%, whatever the shape", () => {
		fc.assert(
			fc.property(
				shapes,
				fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), {
					minLength: 1,
					maxLength: 6,
				}),
				fc.integer({ min: 0, max: 7 }),
				fc.nat(),
				(outline, shares, folds, seed) => {
					const seen = draw({ outline, shares, folds, seed });
					const total = shares.reduce((sum, share) => sum + share, 0);
					const counts = shares.map((_, tone) => countOf(seen, tone));
					const visible = counts.reduce((sum, count) => sum + count, 0);
					const blank = countOf(seen, OUTSIDE) + countOf(seen, EDGE);
					expect(visible + blank).toBe(seen.widthPx * seen.heightPx);
					expect(visible).toBeGreaterThan(200);
					shares.forEach((share, tone) => {
						const off = (counts[tone] ?? 0) / visible - share / total;
						expect(Math.abs(off)).toBeLessThanOrEqual(0.005);
					});
				},
			),
			{ numRuns: 40, seed: 1 },
		);
	});

	test("a tone without a share is not seen, in the middle and at the end", () => {
		const seen = draw({ shares: [1, 0, 1, 0] });
		expect(countOf(seen, 0)).toBe((280 * 280) / 2);
		expect(countOf(seen, 2)).toBe((280 * 280) / 2);
	});

	test("tones that meet are neighbors in the order of the shares", () => {
		for (const seed of [1, 2, 3, 4, 5]) {
			const { tones } = draw({ folds: 2, seed });
			const steps = [...tones]
				.map((tone, i) => (i % 280 ? Math.abs(tone - (tones[i - 1] ?? 0)) : 0))
				.filter((step) => step > 0);
			const near = steps.filter((step) => step === 1).length;
			// The rest is where a band between two others is thinner than a pixel.
			expect(near / steps.length).toBeGreaterThan(0.9);
		}
	});

	test("no tone at all, and a piece without a size, are refused", () => {
		expect(() => draw({ shares: [0, 0] })).toThrow(InputError);
		expect(() => draw({ shares: [] })).toThrow(InputError);
		expect(() => draw({ outline: { ...SQUARE, bM: 0 } })).toThrow(InputError);
	});
});

describe("folds", () => {
	/** Mean length of a run of one tone along all rows and all columns, in pixels. */
	function meanRunPx({ tones, widthPx, heightPx }: Veins): number {
		let runs = widthPx + heightPx;
		for (let i = 0; i < tones.length; i++) {
			if (i % widthPx && tones[i] !== tones[i - 1]) runs++;
			if (i >= widthPx && tones[i] !== tones[i - widthPx]) runs++;
		}
		return (2 * tones.length) / runs;
	}
	const seeds = Array.from({ length: 16 }, (_, i) => i + 1);
	const runs = [1, 2, 3, 4, 5].map((folds) =>
		seeds.map((seed) => meanRunPx(draw({ folds, seed, widthPx: 300 }))),
	);
	const ratios = runs
		.slice(1)
		.map((row, fold) =>
			row.map((run, seed) => run / (runs[fold]?.[seed] ?? 0)),
		);

	test("a further fold halves the mean run, within a tenth of a run over sixteen seeds", () => {
		for (const row of ratios) {
			const logs = row.map(Math.log);
			const mean = Math.exp(
				logs.reduce((sum, log) => sum + log, 0) / seeds.length,
			);
			// Above a half rather than below: the piece's edge cuts long runs, and a pixel is the shortest.
			expect(mean).toBeGreaterThan(0.42);
			expect(mean).toBeLessThan(0.6);
		}
	});

	test("a further fold makes the veins of every seed finer", () => {
		for (const ratio of ratios.flat()) expect(ratio).toBeLessThan(0.8);
	});
});

describe("arrangements", () => {
	test("the same seed gives the same picture, another seed another", () => {
		fc.assert(
			fc.property(fc.nat(), fc.integer({ min: 1, max: 5 }), (seed, folds) => {
				const first = draw({ seed, folds });
				const again = draw({ seed, folds });
				expect(again.tones.every((tone, i) => tone === first.tones[i])).toBe(
					true,
				);
				const next = draw({ seed: seed + 1, folds });
				const same = first.tones.filter((tone, i) => tone === next.tones[i]);
				// Two independent pictures agree in Σ share² = 28.5% of the pixels.
				expect(same.length / first.tones.length).toBeLessThan(0.6);
			}),
			{ numRuns: 10, seed: 1 },
		);
	});

	test("a finer grid shows the same arrangement", () => {
		const coarse = draw({ folds: 2 });
		const fine = draw({ folds: 2, widthPx: 840 });
		let same = 0;
		for (let i = 0; i < coarse.tones.length; i++) {
			const x = 3 * (i % 280) + 1;
			const y = 3 * Math.floor(i / 280) + 1;
			if (coarse.tones[i] === fine.tones[y * 840 + x]) same++;
		}
		expect(same / coarse.tones.length).toBeGreaterThan(0.98);
	});

	test("it is drawn in under a second", () => {
		draw({ folds: 5 });
		const before = performance.now();
		draw({ folds: 5 });
		expect(performance.now() - before).toBeLessThan(1000);
	});
});

describe("outlines", () => {
	// 2 m × 1 m less 1.2 m × 0.4 m: the notch is the back right, so right of 40% and above 40%.
	const L: Dimensions = {
		shape: "L",
		aM: 2,
		bM: 1,
		cM: 1.2,
		dM: 0.4,
		thicknessM: 0.03,
	};

	test("an L's notch is at the back right, and in a mirrored mold at the back left", () => {
		const above = draw({ outline: L });
		const mold = draw({ outline: L, mirrored: true });
		expect([above.widthPx, above.heightPx]).toEqual([280, 140]);
		expect(countOf(above, OUTSIDE)).toBe(168 * 56);
		for (const [x, y, outside] of [
			[0.43, 0.37, true],
			[0.98, 0.02, true],
			[0.37, 0.37, false],
			[0.43, 0.43, false],
			[0.02, 0.98, false],
			[0.98, 0.98, false],
		] as const) {
			expect(outsideAt(above, x, y)).toBe(outside);
			expect(outsideAt(mold, 1 - x, y)).toBe(outside);
		}
	});

	test.each([
		["back left", 0.02, 0.02],
		["front left", 0.02, 0.98],
		["front right", 0.98, 0.98],
		["right back", 0.98, 0.02],
	])("an L's notch is at the %s when that is said", (notchAt, x, y) => {
		const seen = draw({ outline: L, notchAt });
		expect(countOf(seen, OUTSIDE)).toBe(168 * 56);
		expect(outsideAt(seen, x, y)).toBe(true);
		expect(outsideAt(seen, 1 - x, y)).toBe(false);
		expect(outsideAt(seen, x, 1 - y)).toBe(false);
	});

	test("the mold's view is the mirror image of the piece, pixel by pixel", () => {
		fc.assert(
			fc.property(shapes, fc.nat(), (outline, seed) => {
				const { tones, widthPx } = draw({ outline, seed, widthPx: 90 });
				const mold = draw({ outline, seed, widthPx: 90, mirrored: true });
				const image = (i: number) => i - 2 * (i % widthPx) + widthPx - 1;
				expect(tones.every((tone, i) => mold.tones[image(i)] === tone)).toBe(
					true,
				);
			}),
			{ numRuns: 16, seed: 1 },
		);
	});

	test("a U's notch is in the middle of the longer side", () => {
		const long: Dimensions = { ...L, shape: "U", cM: 1, dM: 0.5 };
		const back = draw({ outline: long });
		expect(countOf(back, OUTSIDE)).toBe(140 * 70);
		expect(outsideAt(back, 0.5, 0.25)).toBe(true);
		expect(outsideAt(back, 0.2, 0.25)).toBe(false);
		expect(outsideAt(back, 0.8, 0.25)).toBe(false);
		expect(outsideAt(back, 0.5, 0.75)).toBe(false);
		const right = draw({ outline: { ...long, aM: 1, bM: 2 } });
		expect(outsideAt(right, 0.75, 0.5)).toBe(true);
		expect(outsideAt(right, 0.25, 0.5)).toBe(false);
		expect(outsideAt(right, 0.75, 0.2)).toBe(false);
		expect(outsideAt(right, 0.75, 0.8)).toBe(false);
	});

	test.each([
		["round", { aM: 0.9 }],
		["oval", { aM: 0.9, bM: 0.6 }],
	] as const)("a %s piece leaves its corners", (shape, size) => {
		const seen = draw({ outline: { shape, thicknessM: 0.03, ...size } });
		const share = 1 - countOf(seen, OUTSIDE) / seen.tones.length;
		expect(share).toBeCloseTo(Math.PI / 4, 2);
		expect(outsideAt(seen, 0.01, 0.01)).toBe(true);
		expect(outsideAt(seen, 0.5, 0.01)).toBe(false);
	});

	test("a basin shows rim, walls and floor parted by edges; no other shape has any", () => {
		const basin = draw({
			outline: { ...SQUARE, shape: "basin", cM: 0.2, thicknessM: 0.1 },
		});
		// Across the middle: rim to wall, wall to floor, and back.
		const row = basin.tones.slice(140 * 280, 141 * 280);
		expect(row.filter((tone) => tone === EDGE).length).toBe(4);
		expect(countOf(draw({ outline: L }), EDGE)).toBe(0);
	});
});

describe("cutouts", () => {
	test("are empty and stand evenly along the middle", () => {
		const cutouts = [{ count: 2, shape: "round" as const, aM: 0.2 }];
		const outline = { ...SQUARE, aM: 2 };
		const seen = veins({ ...PIECE, outline, cutouts });
		// Gaps (2 − 2 × 0.2) / 3 = 0.533 m; middles at 0.633 and 1.367 m of 2 m.
		for (const x of [0.3167, 0.6833]) {
			expect(outsideAt(seen, x, 0.5)).toBe(true);
			expect(outsideAt(seen, x + 0.06, 0.5)).toBe(false);
			expect(outsideAt(seen, x, 0.62)).toBe(false);
		}
		const open = countOf(seen, OUTSIDE) / seen.tones.length;
		// 2 π 0.1² / 2 m²
		expect(open).toBeCloseTo(0.0314, 3);
	});

	test("of a notched piece stand in the part that holds them, mirrored with it", () => {
		const outline: Dimensions = {
			shape: "L",
			aM: 2,
			bM: 1,
			cM: 1.2,
			dM: 0.4,
			thicknessM: 0.03,
		};
		const cutouts = [
			{ count: 1, shape: "rectangle" as const, aM: 0.5, bM: 0.4 },
		];
		// In the front part, 2 m × 0.6 m: its middle is at half the length and 0.7 m of 1 m.
		const seen = veins({ ...PIECE, outline, cutouts });
		expect(outsideAt(seen, 0.5, 0.7)).toBe(true);
		// 1.2 × 0.4 + 0.5 × 0.4 of 2 m²
		expect(countOf(seen, OUTSIDE) / seen.tones.length).toBeCloseTo(0.34, 2);
		const tall = [{ count: 1, shape: "rectangle" as const, aM: 0.3, bM: 0.8 }];
		// Deeper than the front part: turned there, 0.8 m along.
		const turned = veins({ ...PIECE, outline, cutouts: tall });
		expect(outsideAt(turned, 0.32, 0.7)).toBe(true);
		// Neither way in front; in the left part, 0.8 m × 1 m.
		const wide = [{ count: 1, shape: "rectangle" as const, aM: 0.7, bM: 0.7 }];
		const left = veins({ ...PIECE, outline, cutouts: wide });
		expect(outsideAt(left, 0.2, 0.5)).toBe(true);
		expect(outsideAt(left, 0.5, 0.7)).toBe(false);
		const mold = veins({ ...PIECE, outline, cutouts: wide, mirrored: true });
		expect(outsideAt(mold, 0.8, 0.5)).toBe(true);
	});

	test("of a basin go through its floor", () => {
		const seen = veins({
			...PIECE,
			outline: { ...SQUARE, shape: "basin", cM: 0.2, thicknessM: 0.05 },
			cutouts: [{ count: 1, shape: "round", aM: 0.1 }],
		});
		expect(outsideAt(seen, 0.5, 0.5)).toBe(true);
		expect(outsideAt(seen, 0.6, 0.5)).toBe(false);
	});
});
