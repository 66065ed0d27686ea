/** Places of cutouts: plane geometry by hand, in meters. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { PieceCutout } from "../../src/calc/cutouts";
import {
	type Hole,
	holesOf,
	notchOf,
	placeTroubles,
	stripM,
} from "../../src/calc/places";
import type { Dimensions } from "../../src/calc/shapes";

const top: Dimensions = {
	shape: "rectangle",
	aM: 2,
	bM: 0.6,
	thicknessM: 0.04,
};
const cutout = (
	shape: PieceCutout["shape"],
	aM: number,
	bM: number | undefined,
	leftM: number,
	frontM: number,
): PieceCutout => ({
	row: 1,
	piece: "Top",
	count: 1,
	shape,
	aM,
	bM,
	leftM,
	frontM,
});
const hole = (...given: Parameters<typeof cutout>): Hole =>
	(holesOf(cutout(...given)) as Hole[])[0] as Hole;
const sink = hole("rectangle", 0.8, 0.5, 1, 0.05);

describe("the strip to the nearest edge", () => {
	test.each<[string, Dimensions, Hole, number]>([
		["before and behind a sink: 600 − 500 over 2", top, sink, 0.05],
		["left: 450 − 800 / 2", top, hole("rectangle", 0.8, 0.4, 0.45, 0.1), 0.05],
		[
			"behind: 600 − 130 − 400",
			top,
			hole("round", 0.4, undefined, 1, 0.13),
			0.07,
		],
		[
			"past the left side",
			top,
			hole("round", 0.4, undefined, 0.15, 0.1),
			-0.05,
		],
		// Circle of 900: the corner of 300 × 400 on its middle is 250 from the middle.
		[
			"a rectangle in a round top: 450 − √(150² + 200²)",
			{ shape: "round", aM: 0.9, thicknessM: 0.03 },
			hole("rectangle", 0.3, 0.4, 0.45, 0.25),
			0.2,
		],
		[
			"a round one beside the middle of a round top: 450 − 200 − 100",
			{ shape: "round", aM: 0.9, thicknessM: 0.03 },
			hole("round", 0.2, undefined, 0.65, 0.35),
			0.15,
		],
		// On the axes of an oval the nearest point of its rim is the end of the short axis.
		[
			"a round one in the middle of an oval: 400 − 100",
			{ shape: "oval", aM: 1.2, bM: 0.8, thicknessM: 0.03 },
			hole("round", 0.2, undefined, 0.6, 0.3),
			0.3,
		],
		// Corner at 40 from both sides of a corner rounded with 100: 100 − √2 × 60.
		[
			"beside a rounded corner",
			{ ...top, radiusM: 0.1 },
			hole("rectangle", 0.2, 0.2, 0.14, 0.04),
			0.1 - Math.SQRT2 * 0.06,
		],
	])("%s", (_, piece, opening, strip) => {
		expect(stripM(piece, undefined, opening)).toBeCloseTo(strip, 9);
	});

	test("to the far rim of an oval agrees with Lagrange's condition", () => {
		// From (0.3, 0) of x²/0.36 + y²/0.16 = 1 the nearest rim is at x = a² p / (a² − b²) = 0.54.
		const x = (0.36 * 0.3) / (0.36 - 0.16);
		const y = 0.4 * Math.sqrt(1 - (x * x) / 0.36);
		const tiny = hole("round", 1e-9, undefined, 0.9, 0.4 - 5e-10);
		const oval: Dimensions = {
			shape: "oval",
			aM: 1.2,
			bM: 0.8,
			thicknessM: 0.03,
		};
		expect(stripM(oval, undefined, tiny)).toBeCloseTo(
			Math.hypot(x - 0.3, y),
			7,
		);
	});
});

describe("notches", () => {
	const bar: Dimensions = {
		shape: "L",
		aM: 2.15,
		bM: 1.48,
		cM: 1.5,
		dM: 0.83,
		thicknessM: 0.03,
	};
	test.each([
		["", { left: 0.65, right: 2.15, front: 0.65, back: 1.48 }],
		["back left", { left: 0, right: 1.5, front: 0.65, back: 1.48 }],
		["front right", { left: 0.65, right: 2.15, front: 0, back: 0.83 }],
	])("an L's at the %s", (at, part) => {
		const found = notchOf(bar, at);
		for (const [side, m] of Object.entries(part))
			expect(found?.[side as keyof typeof part]).toBeCloseTo(m, 12);
	});

	test.each([
		["", { left: 0.75, right: 1.75, front: 0.4, back: 0.8 }],
		["front", { left: 0.75, right: 1.75, front: 0, back: 0.4 }],
	])("a U's at the %s", (at, part) => {
		const found = notchOf(
			{ ...bar, shape: "U", aM: 2.5, bM: 0.8, cM: 1, dM: 0.4 },
			at,
		);
		for (const [side, m] of Object.entries(part))
			expect(found?.[side as keyof typeof part]).toBeCloseTo(m, 12);
	});

	test("a U longer than wide has its notch at the right", () => {
		const found = notchOf({
			...bar,
			shape: "U",
			aM: 0.8,
			bM: 2.5,
			cM: 1,
			dM: 0.4,
		});
		expect(found?.left).toBeCloseTo(0.4, 12);
		expect(found?.front).toBeCloseTo(0.75, 12);
	});

	test("the strip to the notch counts, straight and across its corner", () => {
		const notch = notchOf(bar);
		// 650 − 130 − 390 = 130 behind, as much before.
		expect(
			stripM(bar, notch, hole("rectangle", 0.48, 0.39, 1.4, 0.13)),
		).toBeCloseTo(0.13, 9);
		// Right back corner at (0.55, 0.55), 100 and 100 from the notch's corner.
		expect(
			stripM(bar, notch, hole("rectangle", 0.3, 0.3, 0.4, 0.25)),
		).toBeCloseTo(0.1 * Math.SQRT2, 9);
		expect(
			stripM(bar, notch, hole("rectangle", 0.4, 0.4, 0.6, 0.4)),
		).toBeCloseTo(-0.15, 9);
	});
});

describe("troubles", () => {
	const text = (m: number) => `${Math.round(m * 1000)} mm`;
	const said = (holes: Hole[], leastM = 0.05) =>
		placeTroubles(top, undefined, holes, leastM, text);
	const row = (n: number, one: Hole): Hole => ({ ...one, row: n });

	test("nothing where all is in place, the least strip itself too", () => {
		expect(
			said([sink, row(2, hole("round", 0.04, undefined, 1.6, 0.5))]),
		).toEqual([]);
	});

	test("a strip below the studio's least", () => {
		expect(said([sink], 0.06)).toEqual([
			"cutout 1 leaves a strip of 50 mm to the edge, and the studio's least is 60 mm",
		]);
	});

	test("what leaves the piece", () => {
		expect(said([hole("rectangle", 0.8, 0.5, 1.7, 0.05)])).toEqual([
			"cutout 1 leaves the piece",
		]);
	});

	test.each<[string, Hole, boolean]>([
		["a box into the sink", hole("rectangle", 0.2, 0.2, 1.45, 0.2), true],
		["a box that touches it", hole("rectangle", 0.2, 0.2, 1.5, 0.2), false],
		[
			"a round one into its side",
			hole("round", 0.3, undefined, 1.5, 0.15),
			true,
		],
		// Middle (1.47, 0.12 + 0.1): straight right of the sink, 70 mm off, radius 60.
		[
			"a round one beside it",
			hole("round", 0.12, undefined, 1.47, 0.16),
			false,
		],
	])("%s", (_, other, crosses) => {
		expect(said([sink, row(2, other)], 0.01)).toEqual(
			crosses ? ["cutouts 1 and 2 overlap"] : [],
		);
	});

	test.each<[string, number, boolean]>([
		["closer than both radii", 0.219, true],
		["farther than both radii", 0.221, false],
	])("two round ones %s", (_, apart, crosses) => {
		const one = hole("round", 0.2, undefined, 0.8, 0.2);
		const other = row(2, hole("round", 0.24, undefined, 0.8 + apart, 0.18));
		expect(said([one, other]).length > 0).toBe(crosses);
	});

	test("a small one inside a large one", () => {
		const small = row(2, hole("round", 0.02, undefined, 1, 0.3));
		expect(said([hole("round", 0.4, undefined, 1, 0.1), small])).toEqual([
			"cutouts 1 and 2 overlap",
		]);
	});

	test("a row of faucet holes lies around its middle, each its own place", () => {
		const faucet = {
			...cutout("round", 0.035, undefined, 1, 0.5),
			count: 3,
			spacingM: 0.1,
		};
		expect(holesOf(faucet)?.map(({ xM }) => xM)).toEqual([0.9, 1, 1.1]);
		expect(said(holesOf({ ...faucet, spacingM: 0.03 }) as Hole[])).toEqual([
			"the openings of cutout 1 overlap",
		]);
		expect(holesOf({ ...faucet, spacingM: undefined })).toBeUndefined();
	});

	test("mirrored, everything is as far from the edges and from each other", () => {
		const place = fc.record({
			straight: fc.boolean(),
			xM: fc.double({ min: 0, max: 2, noNaN: true }),
			yM: fc.double({ min: 0, max: 0.6, noNaN: true }),
			aM: fc.double({ min: 0.02, max: 0.6, noNaN: true }),
			bM: fc.double({ min: 0.02, max: 0.4, noNaN: true }),
		});
		fc.assert(
			fc.property(fc.array(place, { maxLength: 3 }), (places) => {
				const holes = places.map((one, i) => ({ ...one, row: i + 1 }));
				const mirrored = holes.map((one) => ({ ...one, xM: 2 - one.xM }));
				for (const [i, one] of holes.entries())
					expect(stripM(top, undefined, mirrored[i] as Hole)).toBeCloseTo(
						stripM(top, undefined, one),
						9,
					);
			}),
		);
	});
});
