import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { InputError } from "../../../src/calc/errors";
import type { Dimensions } from "../../../src/calc/shapes";
import { FACES } from "../../../src/calc/silhouette";
import { OUTSIDE } from "../../../src/calc/stone/deal";
import {
	type Folded,
	type FoldedPiece,
	foldedPiece,
} from "../../../src/calc/stone/fold";
import { paintPlain, paintStone } from "../../../src/calc/stone/paint";

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
	placing: "bucket fold" as const,
};

const draw = (change: Partial<FoldedPiece>) =>
	foldedPiece({ ...PIECE, ...change });

const countOf = ({ tones }: Folded, tone: number): number =>
	tones.filter((each) => each === tone).length;

/** The tone at a place given as shares of width and height. */
const at = ({ tones, widthPx, heightPx }: Folded, x: number, y: number) =>
	tones[Math.floor(y * heightPx) * widthPx + Math.floor(x * widthPx)];

const outsideAt = (seen: Folded, x: number, y: number) =>
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
	test("each tone has its share of what is seen, within 0.3%, whatever the shape", () => {
		fc.assert(
			fc.property(
				shapes,
				fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), {
					minLength: 1,
					maxLength: 6,
				}),
				fc.integer({ min: 1, max: 8 }),
				fc.nat(),
				(outline, shares, folds, seed) => {
					const seen = draw({ outline, shares, folds, seed });
					const total = shares.reduce((sum, share) => sum + share, 0);
					const counts = shares.map((_, tone) => countOf(seen, tone));
					const visible = counts.reduce((sum, count) => sum + count, 0);
					const blank = countOf(seen, OUTSIDE);
					expect(visible + blank).toBe(seen.widthPx * seen.heightPx);
					expect(visible).toBeGreaterThan(200);
					shares.forEach((share, tone) => {
						const off = (counts[tone] ?? 0) / visible - share / total;
						expect(Math.abs(off)).toBeLessThanOrEqual(0.003);
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

	test("no tone at all, and a piece without a size, are refused", () => {
		expect(() => draw({ shares: [0, 0] })).toThrow(InputError);
		expect(() => draw({ shares: [] })).toThrow(InputError);
		expect(() => draw({ outline: { ...SQUARE, bM: 0 } })).toThrow(InputError);
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

	test("an L's notch is at the back right", () => {
		const above = draw({ outline: L });
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
				const seen = draw({ outline, seed, widthPx: 90 });
				const colors = ["#ffffff", "#ff0000", "#00ff00", "#0000ff"];
				const above = paintPlain(seen, { colors, mirrored: false });
				const mold = paintPlain(seen, { colors, mirrored: true });
				const { widthPx } = seen;
				const colorAt = ({ pixels }: typeof above, i: number) =>
					pixels.slice(4 * i, 4 * i + 4).join();
				const image = (i: number) => i - 2 * (i % widthPx) + widthPx - 1;
				const all = Array.from(seen.tones, (_, i) => i);
				expect(
					all.filter((i) => colorAt(above, i) !== colorAt(mold, image(i))),
				).toEqual([]);
			}),
			{ numRuns: 8, seed: 1 },
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

	test("a basin shows its rim, walls and floor", () => {
		const basin = draw({
			outline: { ...SQUARE, shape: "basin", cM: 0.2, thicknessM: 0.1 },
		});
		// Across the middle: the wall at the left looks to the right.
		const row = [...basin.faces.slice(140 * 280, 141 * 280)];
		expect(row.filter((face, i) => face !== row[i - 1])).toEqual([
			FACES.up,
			FACES.right,
			FACES.floor,
			FACES.left,
			FACES.up,
		]);
	});
});

describe("drop edges", () => {
	const TOP: Dimensions = { ...SQUARE, aM: 2, bM: 1 };
	const drop = { heightM: 0.2, sides: ["front", "left"] as const };

	test("are folded out by half of their height on their sides, none at the corner between", () => {
		// 2 m and 0.1 m wide, 1 m and 0.1 m high, at 210 px
		const seen = draw({ outline: TOP, drop, widthPx: 210 });
		expect([seen.widthPx, seen.heightPx]).toEqual([210, 110]);
		const count = (face: number) =>
			seen.faces.filter((each) => each === face).length;
		expect(count(FACES.front)).toBe(200 * 10);
		expect(count(FACES.left)).toBe(100 * 10);
		expect(count(FACES.up)).toBe(200 * 100);
		expect(count(0)).toBe(10 * 10);
	});

	test("are darker at the front than the face, of one tone", () => {
		const seen = draw({ outline: TOP, drop, widthPx: 210, shares: [1] });
		const { pixels } = paintStone(seen, {
			colors: ["#b0b0b0"],
			mirrored: false,
		});
		const mean = (face: number) => {
			const lights = [...seen.faces.keys()]
				.filter((i) => seen.faces[i] === face)
				.map((i) => pixels[4 * i] ?? 0);
			return lights.reduce((sum, each) => sum + each, 0) / lights.length;
		};
		expect(mean(FACES.front)).toBeLessThan(0.9 * mean(FACES.up));
		expect(mean(FACES.left)).toBeLessThan(mean(FACES.up));
		expect(mean(FACES.left)).toBeGreaterThan(mean(FACES.front));
	});

	test("of a round piece go around it", () => {
		const outline: Dimensions = { shape: "round", aM: 0.8, thicknessM: 0.03 };
		const all = ["front", "back", "left", "right"] as const;
		const seen = draw({ outline, drop: { heightM: 0.2, sides: all } });
		const share =
			seen.faces.filter((face) => face === FACES.up).length /
			seen.faces.filter((face) => face > 0).length;
		// diameters 0.8 and 1 m
		expect(share).toBeCloseTo(0.64, 2);
	});

	test("are not in a notch", () => {
		const L: Dimensions = { ...TOP, shape: "L", cM: 1.2, dM: 0.4 };
		const back = { heightM: 0.2, sides: ["back"] as const };
		const seen = draw({ outline: L, drop: back, widthPx: 200 });
		// what is left of the back beside the notch: 0.8 m
		const drops = seen.faces.filter((face) => face === FACES.back).length;
		expect(drops).toBe(80 * 10);
	});
});

describe("cutouts", () => {
	test("are empty and stand evenly along the middle", () => {
		const cutouts = [{ count: 2, shape: "round" as const, aM: 0.2 }];
		const outline = { ...SQUARE, aM: 2 };
		const seen = foldedPiece({ ...PIECE, outline, cutouts });
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

	test("of a notched piece stand in the part that holds them", () => {
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
		const seen = foldedPiece({ ...PIECE, outline, cutouts });
		expect(outsideAt(seen, 0.5, 0.7)).toBe(true);
		// 1.2 × 0.4 + 0.5 × 0.4 of 2 m²
		expect(countOf(seen, OUTSIDE) / seen.tones.length).toBeCloseTo(0.34, 2);
		const tall = [{ count: 1, shape: "rectangle" as const, aM: 0.3, bM: 0.8 }];
		// Deeper than the front part: turned there, 0.8 m along.
		const turned = foldedPiece({ ...PIECE, outline, cutouts: tall });
		expect(outsideAt(turned, 0.32, 0.7)).toBe(true);
		// Neither way in front; in the left part, 0.8 m × 1 m.
		const wide = [{ count: 1, shape: "rectangle" as const, aM: 0.7, bM: 0.7 }];
		const left = foldedPiece({ ...PIECE, outline, cutouts: wide });
		expect(outsideAt(left, 0.2, 0.5)).toBe(true);
		expect(outsideAt(left, 0.5, 0.7)).toBe(false);
	});

	test("lie at their place: its left side to the middle, and the concrete before them", () => {
		const outline = { ...SQUARE, aM: 2 };
		const sink = {
			count: 1,
			shape: "rectangle" as const,
			aM: 0.4,
			bM: 0.2,
			leftM: 0.5,
			frontM: 0.1,
		};
		const seen = draw({ outline, cutouts: [sink], widthPx: 200 });
		// from 0.3 to 0.7 m of 2 m, and from 0.7 to 0.9 m of 1 m
		expect(countOf(seen, OUTSIDE)).toBe(40 * 20);
		for (const [x, y] of [
			[0.155, 0.705],
			[0.345, 0.895],
		] as const)
			expect(outsideAt(seen, x, y)).toBe(true);
	});

	test("several of one row lie beside each other about their place, as far apart as typed", () => {
		const tap = {
			...{ count: 2, shape: "rectangle" as const, aM: 0.1, bM: 0.1 },
			...{ leftM: 1, frontM: 0.5, spacingM: 0.4 },
		};
		const outline = { ...SQUARE, aM: 2 };
		const seen = draw({ outline, cutouts: [tap], widthPx: 200 });
		// middles at 0.8 and 1.2 m of 2 m, from 0.4 to 0.5 m of 1 m
		expect(countOf(seen, OUTSIDE)).toBe(2 * 10 * 10);
		for (const x of [0.4, 0.6]) expect(outsideAt(seen, x, 0.45)).toBe(true);
		expect(outsideAt(seen, 0.5, 0.45)).toBe(false);
	});

	test("and pieces have their corners round", () => {
		const sink = {
			...{ count: 1, shape: "rectangle" as const, aM: 0.4, bM: 0.4 },
			radiusM: 0.1,
		};
		const outline = { ...SQUARE, radiusM: 0.2 };
		const seen = draw({ outline, cutouts: [sink], widthPx: 400 });
		// a square less what its corners lack: (4 − π) r²
		const lost = (4 - Math.PI) * 0.2 ** 2 + 0.4 ** 2 - (4 - Math.PI) * 0.1 ** 2;
		expect(countOf(seen, OUTSIDE) / seen.tones.length).toBeCloseTo(lost, 3);
	});

	test("of a basin go through its floor", () => {
		const seen = foldedPiece({
			...PIECE,
			outline: { ...SQUARE, shape: "basin", cM: 0.2, thicknessM: 0.05 },
			cutouts: [{ count: 1, shape: "round", aM: 0.1 }],
		});
		expect(outsideAt(seen, 0.5, 0.5)).toBe(true);
		expect(outsideAt(seen, 0.6, 0.5)).toBe(false);
	});
});
