/** What molds are built of, worked by hand. */
import { describe, expect, test } from "vitest";
import type { PieceCutout } from "../../src/calc/cutouts";
import { InputError } from "../../src/calc/errors";
import {
	type Building,
	type InMold,
	moldTakes,
} from "../../src/calc/moldparts";
import { convexCorners, straightSides } from "../../src/calc/moldsides";
import { ovalEdgeM } from "../../src/calc/oval";
import { type Piece, pieceSizes } from "../../src/calc/takeoff";

const BUILD: Building = {
	boardM: 0.018,
	stripM: 0.006,
	beside: false,
	screwSpacingM: 0.2,
	screwEndM: 0.05,
};

const mm = (value: number) => value / 1000;
type Sizes = Partial<Record<"a" | "b" | "c" | "d" | "r", number>>;

const piece = (
	shape: Piece["shape"],
	{ a, b, c, d, r }: Sizes,
	thickness: number,
	drop?: { height: number; run: number; thickness: number },
): Piece => ({
	row: 1,
	name: "Counter",
	quantity: 1,
	shape,
	...(a && { aM: mm(a) }),
	...(b && { bM: mm(b) }),
	...(c && { cM: mm(c) }),
	...(d && { dM: mm(d) }),
	...(r && { radiusM: mm(r) }),
	thicknessM: mm(thickness),
	...(drop && {
		dropHeightM: mm(drop.height),
		dropRunM: mm(drop.run),
		dropThicknessM: mm(drop.thickness),
	}),
});

const cutout = (
	shape: PieceCutout["shape"],
	a: number,
	b?: number,
): PieceCutout => ({
	row: 1,
	piece: "Counter",
	count: 1,
	shape,
	aM: mm(a),
	...(b && { bM: mm(b) }),
});

function takes(
	one: Piece,
	cutouts: PieceCutout[] = [],
	lie: InMold = {},
	build: Partial<Building> = {},
) {
	const [sizes] = pieceSizes([one], cutouts, String);
	if (!sizes) throw new Error("no sizes");
	return moldTakes(one, cutouts, sizes, lie, { ...BUILD, ...build });
}

/** Names with length and height in mm. */
const listed = (mold: ReturnType<typeof takes>) =>
	Object.fromEntries(
		mold.parts.map(({ name, lengthM, widthM }) => [
			name,
			[lengthM, widthM].map((m) => Number((m * 1000).toFixed(6))),
		]),
	);

const total = (mold: ReturnType<typeof takes>, pattern: RegExp) =>
	mold.parts
		.filter(({ name }) => pattern.test(name))
		.reduce((sum, { lengthM }) => sum + lengthM * 1000, 0);

const L = piece("L", { a: 2150, b: 1480, c: 1500, d: 830 }, 30);

describe("an L of 2150 × 1480 less 1500 × 830, 30 thick, a sink of 480 × 390", () => {
	const mold = takes(L, [cutout("rectangle", 480, 390)]);

	test("sides are the outline and four boards' thicknesses: 7260 + 72; the knockout's 1740 − 72", () => {
		expect(total(mold, /side/)).toBeCloseTo(7332, 6);
		expect(total(mold, /^knockout/)).toBeCloseTo(1668, 6);
	});

	test("a bead in 7260 + 1740 of feet and five corners of 30: 9150", () => {
		expect(mold.sealantM * 1000).toBeCloseTo(9150, 6);
	});

	test("release on 2.0198 m²: 3.182 − 1.245 − 0.1872 of face, 9 m of edges 30 high", () => {
		expect(mold.releaseM2).toBeCloseTo(2.0198, 9);
	});

	test("each part by its name", () => {
		expect(listed(mold)).toEqual({
			base: [2186, 1516],
			"front side": [2186, 30],
			"right side": [650, 30],
			"notch side, left to right": [1500, 30],
			"notch side, front to back": [830, 30],
			"back side": [686, 30],
			"left side": [1480, 30],
			"knockout 1, front": [480, 30],
			"knockout 1, back": [480, 30],
			"knockout 1, left": [354, 30],
			"knockout 1, right": [354, 30],
		});
	});

	test("mirrored, the short end is on the left", () => {
		const mirrored = listed(takes(L, [], { notchAt: "back left" }));
		expect(mirrored["left side"]).toEqual([650, 30]);
		expect(mirrored["right side"]).toEqual([1480, 30]);
		expect(mirrored["back side"]).toEqual([686, 30]);
		const front = listed(takes(L, [], { notchAt: "front right" }));
		expect(front["front side"]).toEqual([686, 30]);
		expect(front["back side"]).toEqual([2186, 30]);
	});
});

test("2000 × 600 × 40 with 800 × 500: a bead of 5200 + 2600 + 4 · 40 = 7960", () => {
	const top = piece("rectangle", { a: 2000, b: 600 }, 40);
	const mold = takes(top, [cutout("rectangle", 800, 500)]);
	expect(mold.sealantM * 1000).toBeCloseTo(7960, 6);
});

test.each([
	["rectangle", { a: 900, b: 500 }, 4, 2800],
	["L", { a: 900, b: 500, c: 300, d: 200 }, 5, 2800],
	["U", { a: 900, b: 500, c: 300, d: 200 }, 6, 3200],
	["U", { a: 500, b: 900, c: 300, d: 200 }, 6, 3200],
] as const)(
	"%s: corners that stand out less those that do not are 4",
	(shape, sizes, convex, outline) => {
		const one = piece(shape, sizes, 30);
		for (const notchAt of [undefined, "back", "front", "left", "right"]) {
			if (shape === "L" && notchAt) continue;
			const tall = sizes.b > sizes.a;
			if (notchAt && tall !== /left|right/.test(notchAt)) continue;
			const sides = straightSides(one, notchAt);
			expect(convexCorners(sides)).toBe(convex);
			expect(2 * convex - sides.length).toBe(4);
			const sum = sides.reduce((all, { lengthM }) => all + lengthM * 1000, 0);
			expect(sum).toBeCloseTo(outline, 6);
			const cut = takes(one, [], notchAt ? { notchAt } : {});
			expect(total(cut, /side/)).toBeCloseTo(outline + 72, 6);
			expect(new Set(sides.map(({ name }) => name)).size).toBe(sides.length);
		}
	},
);

describe("curves", () => {
	// Middle of a 6 mm strip around an oval of 1200 × 800, and as its knockout: closed form, and integrated.
	test("an oval: 3191.9375 outside, 3154.2384 as a knockout", () => {
		const oval = takes(piece("oval", { a: 1200, b: 800 }, 30));
		expect(total(oval, /^outside/)).toBeCloseTo(3191.93747378, 5);
		const slab = piece("rectangle", { a: 2000, b: 1200 }, 30);
		const cut = takes(slab, [cutout("oval", 1200, 800)]);
		expect(total(cut, /ring/)).toBeCloseTo(3154.23836194, 5);
	});

	// 4a E(e) by the arithmetic-geometric mean; Ramanujan's second formula is 0.06 mm low for 1 : 10.
	test.each([
		[1200, 800, 3173.0879178581, 1e-7],
		[2400, 240, 4876.7690161211, 0.06],
	])("outline of %d × %d: %d", (a, b, edge, tolerance) => {
		expect(Math.abs(ovalEdgeM(a, b) - edge)).toBeLessThan(tolerance);
	});

	test("a tube: π (600 + 6) outside, π (600 − 80 − 6) for its core, and no release on the open rim", () => {
		const tube = takes(piece("tube", { a: 600, c: 400 }, 40));
		expect(listed(tube)).toMatchObject({
			outside: [Number((Math.PI * 606).toFixed(6)), 400],
			core: [Number((Math.PI * 514).toFixed(6)), 400],
		});
		// walls π (0.6 + 0.52) 0.4 and one rim π (0.3² − 0.26²)
		expect(tube.releaseM2).toBeCloseTo(
			Math.PI * 1.12 * 0.4 + Math.PI * (0.09 - 0.0676),
			9,
		);
		expect(tube.sealantM).toBeCloseTo(Math.PI * 1.12, 9);
	});

	test("rounded corners of 50: a strip of π/2 · 53 in each, and no bead up them", () => {
		const top = piece("rectangle", { a: 900, b: 500, r: 50 }, 30);
		const mold = takes(top);
		expect(total(mold, /rounded/)).toBeCloseTo(4 * (Math.PI / 2) * 53, 6);
		// 2800 − 8 · 50 + 2π · 50
		expect(mold.sealantM * 1000).toBeCloseTo(2400 + 100 * Math.PI, 6);
	});

	test("a faucet hole is a plug", () => {
		const top = piece("rectangle", { a: 900, b: 500 }, 30);
		const plug = takes(top, [cutout("round", 35)]).parts.at(-1);
		expect(plug).toMatchObject({ madeOf: "plug", name: "knockout 1" });
	});
});

test("sides beside the base are higher by its thickness, and the base has the piece's size", () => {
	const top = piece("rectangle", { a: 900, b: 500 }, 30);
	expect(listed(takes(top, [], {}, { beside: true }))).toMatchObject({
		base: [900, 500],
		"front side": [936, 48],
		"left side": [500, 48],
	});
});

describe("a drop edge of 60 × 25 on front and right of 900 × 500 × 30", () => {
	const top = piece("rectangle", { a: 900, b: 500 }, 30, {
		height: 60,
		run: 1400,
		thickness: 25,
	});

	test("face down: outer walls 90 high, inner ones 60, shorter by 25 where the other returns", () => {
		expect(
			listed(takes(top, [], { face: "face down", dropOn: "front and right" })),
		).toEqual({
			base: [936, 536],
			"front side": [936, 90],
			"front side, inner wall of the drop edge": [875, 60],
			"right side": [500, 90],
			"right side, inner wall of the drop edge": [475, 60],
			"back side": [936, 30],
			"left side": [500, 30],
		});
	});

	test("face up: a raised base smaller by 25 on both, its edges carried by walls of 60 − 18", () => {
		expect(
			listed(takes(top, [], { face: "face up", dropOn: "front and right" })),
		).toMatchObject({
			"raised base": [875, 475],
			"front side, inner wall of the drop edge": [875, 42],
			"front side": [936, 90],
		});
	});

	test("release on both walls of the drop: face, edges and 2 · 0.06 · 1.4", () => {
		const mold = takes(top, [], {
			face: "face down",
			dropOn: "front and right",
		});
		expect(mold.releaseM2).toBeCloseTo(0.45 + 2.8 * 0.03 + 2 * 0.06 * 1.4, 9);
	});

	test("without its sides or its face it is not known", () => {
		expect(() => takes(top, [], { face: "face down" })).toThrow(
			new InputError("type the sides under Drop edge on"),
		);
		expect(() => takes(top, [], { dropOn: "front" })).toThrow(InputError);
	});
});

test("a basin: walls C high around its core of (A − 2t) × (B − 2t) × (C − t)", () => {
	const basin = takes(piece("basin", { a: 460, b: 340, c: 130 }, 22));
	expect(listed(basin)).toEqual({
		base: [496, 376],
		"front side": [496, 130],
		"back side": [496, 130],
		"left side": [340, 130],
		"right side": [340, 130],
		"core, lid": [416, 296],
		"core, front": [416, 90],
		"core, back": [416, 90],
		"core, left": [260, 90],
		"core, right": [260, 90],
	});
});

test("screws: first and last 50 in from the ends, every 200 at most, two at least", () => {
	// 936: (836 / 200 → 5) + 1 = 6, twice; 500: (400 / 200) + 1 = 3, twice
	expect(takes(piece("rectangle", { a: 900, b: 500 }, 30)).screws).toBe(18);
	// 100 + 36 and 80: two each
	expect(takes(piece("rectangle", { a: 100, b: 80 }, 30)).screws).toBe(8);
});

test("a piece given by its area has no sides that are known", () => {
	const area = { ...piece("area", {}, 30), areaM2: 1, bM: 4 };
	expect(() => takes(area)).toThrow(/no sides that are known/);
});
