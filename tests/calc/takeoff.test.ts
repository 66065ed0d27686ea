/**
 * Closed forms of areas and volumes, worked by hand with round numbers; nothing of a takeoff is printed in a table.
 * Lengths in m.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { PieceCutout } from "../../src/calc/cutouts";
import { InputError } from "../../src/calc/errors";
import { ovalEdgeM } from "../../src/calc/oval";
import {
	type Piece,
	type PieceSizes,
	pieceSizes,
	slabVolumeM3,
} from "../../src/calc/takeoff";

const mm = (lengthM: number): string => `${Math.round(lengthM * 1000)} mm`;

const piece = (more: Partial<Piece>): Piece => ({
	row: 1,
	name: "Top",
	quantity: 1,
	shape: "rectangle",
	thicknessM: 0.04,
	...more,
});

const cutout = (more: Partial<PieceCutout>): PieceCutout => ({
	row: 1,
	piece: "Top",
	count: 1,
	shape: "rectangle",
	aM: 0.5,
	...more,
});

const sizes = (
	one: Partial<Piece>,
	cutouts: PieceCutout[] = [],
): PieceSizes => {
	const [only] = pieceSizes([piece(one)], cutouts, mm);
	if (!only) throw new Error("no sizes");
	return only;
};

const near = (
	got: PieceSizes,
	face: number,
	edge: number,
	volume: number,
	finish: number,
) => {
	expect(got.faceM2).toBeCloseTo(face, 9);
	expect(got.edgeM).toBeCloseTo(edge, 9);
	expect(got.volumeM3).toBeCloseTo(volume, 9);
	expect(got.finishM2).toBeCloseTo(finish, 9);
};

const { PI } = Math;

describe("shapes: face, edge, volume, finish area", () => {
	test("slab volume: 2 × 0.5 × 0.04", () => {
		const slab = { lengthM: 2, widthM: 0.5, thicknessM: 0.04 };
		expect(slabVolumeM3(slab)).toBeCloseTo(0.04, 12);
	});

	test("rectangle 2 × 0.8 × 0.04: 1.6; 5.6; 0.064; 1.6 + 5.6 × 0.04", () => {
		near(sizes({ aM: 2, bM: 0.8 }), 1.6, 5.6, 0.064, 1.824);
	});

	test("round 1 × 0.04: π/4; π; 0.01 π; 0.29 π", () => {
		near(sizes({ shape: "round", aM: 1 }), PI / 4, PI, 0.01 * PI, 0.29 * PI);
	});

	test("oval of equal diameters is round", () => {
		expect(sizes({ shape: "oval", aM: 1, bM: 1 })).toEqual(
			sizes({ shape: "round", aM: 1 }),
		);
	});

	test("L 2 × 1.5 less 1.2 × 0.9: 3 − 1.08; 7; 1.92 × 0.04; 1.92 + 0.28", () => {
		const corner = sizes({ shape: "L", aM: 2, bM: 1.5, cM: 1.2, dM: 0.9 });
		near(corner, 1.92, 7, 0.0768, 2.2);
	});

	test("U 2 × 1 less 0.8 wide, 0.4 deep: 2 − 0.32; 6 + 0.8; 0.0672; 1.68 + 0.272", () => {
		const notch = { shape: "U", cM: 0.8, dM: 0.4 } as const;
		near(sizes({ ...notch, aM: 2, bM: 1 }), 1.68, 6.8, 0.0672, 1.952);
		near(sizes({ ...notch, aM: 1, bM: 2 }), 1.68, 6.8, 0.0672, 1.952);
	});

	test("basin 0.6 × 0.4 × 0.2, walls 0.02", () => {
		// Inside 0.56 × 0.36 × 0.18. Volume 0.048 − 0.036288. Finish: outside walls 2 × 1 × 0.2 = 0.4, rim
		// 0.24 − 0.2016 = 0.0384, inside walls 2 × 0.92 × 0.18 = 0.3312, floor 0.2016.
		const basin = { shape: "basin", thicknessM: 0.02 } as const;
		near(
			sizes({ ...basin, aM: 0.6, bM: 0.4, cM: 0.2 }),
			0.24,
			2,
			0.011712,
			0.9712,
		);
	});

	test("tube 0.4 high 0.5, wall 0.05", () => {
		// Inside 0.3. Outside wall 0.2 π, inside 0.15 π, a rim π/4 (0.16 − 0.09) = 0.0175 π.
		const tube = sizes({ shape: "tube", aM: 0.4, cM: 0.5, thicknessM: 0.05 });
		near(tube, 0.2 * PI, 1.4 * PI, 0.00875 * PI, 0.385 * PI);
	});

	test("area 1.5 m² with an outline of 5: 0.06; 1.5 + 0.2", () => {
		near(sizes({ shape: "area", areaM2: 1.5, bM: 5 }), 1.5, 5, 0.06, 1.7);
	});
});

describe("perimeter of an oval", () => {
	// Simpson's rule on ∫ √(a² sin² + b² cos²): an integral that Ramanujan's formula has no part in.
	const measured = (a: number, b: number): number => {
		const steps = 20000;
		const speed = (i: number) => {
			const angle = (2 * PI * i) / steps;
			return Math.hypot((a / 2) * Math.sin(angle), (b / 2) * Math.cos(angle));
		};
		let sum = 0;
		for (let i = 0; i < steps; i += 1) sum += speed(i) * (i % 2 ? 4 : 2);
		return (sum * 2 * PI) / steps / 3;
	};

	test.each([
		[1, 0.8, 1e-9],
		[1, 0.5, 1e-7],
		[2, 0.4, 1e-4],
	])("%f × %f within %f", (a, b, tolerance) => {
		const exact = measured(a, b);
		expect(Math.abs(ovalEdgeM(a, b) - exact) / exact).toBeLessThan(tolerance);
	});
});

describe("drop edges", () => {
	const plain = { aM: 2, bM: 0.8 };

	test("0.1 high, 2.8 long, as thick as the slab: 0.28 m², 0.0112 m³", () => {
		const edge = sizes({ ...plain, dropHeightM: 0.1, dropRunM: 2.8 });
		near(edge, 1.6, 5.6, 0.064 + 0.0112, 1.824 + 0.28);
	});

	test("of its own thickness 0.025: 0.007 m³", () => {
		const edge = { dropHeightM: 0.1, dropRunM: 2.8, dropThicknessM: 0.025 };
		expect(sizes({ ...plain, ...edge }).volumeM3).toBeCloseTo(0.071, 9);
	});

	test.each([
		[{ dropHeightM: 0.1 }, "row 1: drop run is blank and drop height is not"],
		[
			{ dropRunM: 2 },
			"row 1: drop height is blank and drop run is not: fill the drop height or clear the drop run",
		],
		[
			{ dropThicknessM: 0.02 },
			"row 1: drop height is blank and drop thickness is not: fill the drop height or clear the drop thickness",
		],
	])("half a drop edge is refused: %j", (half, sentence) => {
		expect(() => sizes({ ...plain, ...half })).toThrow(
			new InputError(sentence),
		);
	});
});

describe("cutouts", () => {
	const plain = { aM: 2, bM: 0.8 };

	test("two of 0.5 × 0.4: face −0.4, edge +3.6, volume −0.016, finish −0.4 + 0.144", () => {
		const two = sizes(plain, [cutout({ count: 2, bM: 0.4 })]);
		near(two, 1.2, 9.2, 0.048, 1.568);
	});

	test("round 0.2: face −0.01 π, edge +0.2 π", () => {
		const hole = sizes(plain, [cutout({ shape: "round", aM: 0.2 })]);
		const face = 1.6 - 0.01 * PI;
		const edge = 5.6 + 0.2 * PI;
		near(hole, face, edge, face * 0.04, face + edge * 0.04);
	});

	test("a drain through a basin's floor, 0.1 round in 0.02: −0.0025 π m², rim 0.1 π", () => {
		const basin = {
			shape: "basin",
			aM: 0.6,
			bM: 0.4,
			cM: 0.2,
			thicknessM: 0.02,
		} as const;
		near(
			sizes(basin, [cutout({ shape: "round", aM: 0.1 })]),
			0.24 - 0.0025 * PI,
			2 + 0.1 * PI,
			0.011712 - 0.00005 * PI,
			0.9712 - 0.0025 * PI + 0.002 * PI,
		);
	});

	test("fits either way round", () => {
		const turned = sizes({ aM: 0.8, bM: 2 }, [cutout({ aM: 1.5, bM: 0.6 })]);
		expect(turned.faceM2).toBeCloseTo(0.7, 9);
	});

	test("names are matched whatever their case and spaces", () => {
		const named = sizes({ ...plain, name: "Island " }, [
			cutout({ piece: " island", bM: 0.4 }),
		]);
		expect(named.faceM2).toBeCloseTo(1.4, 9);
	});

	test("of a free outline only areas are compared", () => {
		const free = { shape: "area", areaM2: 1, bM: 4 } as const;
		expect(sizes(free, [cutout({ aM: 9, bM: 0.1 })]).faceM2).toBeCloseTo(0.1);
		expect(() => sizes(free, [cutout({ aM: 10, bM: 0.1 })])).toThrow(
			"row 1: the cutouts together leave nothing of the face",
		);
	});

	test.each<[string, Partial<Piece>, Partial<PieceCutout>, string]>([
		[
			"of an unknown piece",
			plain,
			{ row: 2, piece: "Bench" },
			'cutouts row 2: piece "Bench" is not in pieces',
		],
		[
			"too large",
			plain,
			{ row: 3, aM: 0.9, bM: 0.85 },
			'cutouts row 3: 900 mm × 850 mm does not fit in "Top" (2000 mm × 800 mm)',
		],
		[
			"wider than a basin's floor",
			{ shape: "basin", aM: 0.6, bM: 0.4, cM: 0.2 },
			{ aM: 0.55, bM: 0.3 },
			'cutouts row 1: 550 mm × 300 mm does not fit in "Top" (520 mm × 320 mm)',
		],
		[
			"in a tube",
			{ shape: "tube", aM: 0.4, cM: 0.5 },
			{ shape: "round", aM: 0.1 },
			'cutouts row 1: piece "Top" is a tube, which takes no cutouts',
		],
		[
			"more than the face",
			plain,
			{ count: 9, aM: 0.5, bM: 0.4 },
			"row 1: the cutouts together leave nothing of the face",
		],
		[
			"all of a basin's floor",
			{ shape: "basin", aM: 0.6, bM: 0.4, cM: 0.2 },
			{ aM: 0.52, bM: 0.32 },
			"row 1: the cutouts together leave nothing of the floor",
		],
		[
			"round with a second dimension",
			plain,
			{ shape: "round", bM: 0.2 },
			"cutouts row 1: B must be blank: round has no B",
		],
		[
			"oval without one",
			plain,
			{ shape: "oval" },
			"cutouts row 1: B is blank, and oval needs it",
		],
	])("%s is refused", (_, one, opening, sentence) => {
		expect(() => sizes(one, [cutout(opening)])).toThrow(
			new InputError(sentence),
		);
	});
});

describe("what is refused", () => {
	test.each<[Partial<Piece>, string]>([
		[{ aM: 2 }, "row 1: B is blank, and rectangle needs it"],
		[{ aM: 2, bM: 1, cM: 1 }, "row 1: C must be blank: rectangle has no C"],
		[
			{ shape: "round", aM: 2, bM: 1 },
			"row 1: B must be blank: round has no B",
		],
		[
			{ shape: "tube", aM: 1, bM: 1, cM: 1 },
			"row 1: B must be blank: tube has no B",
		],
		[{ shape: "area", bM: 4 }, "row 1: A is blank, and area needs it"],
		[
			{ shape: "L", aM: 2, bM: 1, cM: 2, dM: 0.5 },
			"row 1: C must be below A (2000 mm), got 2000 mm",
		],
		[
			{ shape: "L", aM: 2, bM: 1, cM: 1, dM: 1 },
			"row 1: D must be below B (1000 mm), got 1000 mm",
		],
		[
			{ shape: "U", aM: 1, bM: 2, cM: 2.1, dM: 0.5 },
			"row 1: C must be below the longer of A and B (2000 mm), got 2100 mm",
		],
		[
			{ shape: "U", aM: 1, bM: 2, cM: 1.5, dM: 1 },
			"row 1: D must be below the shorter of A and B (1000 mm), got 1000 mm",
		],
		[
			{ shape: "basin", aM: 0.08, bM: 1, cM: 1 },
			"row 1: thickness must be below half of A (40 mm), got 40 mm",
		],
		[
			{ shape: "basin", aM: 1, bM: 0.07, cM: 1 },
			"row 1: thickness must be below half of B (35 mm), got 40 mm",
		],
		[
			{ shape: "basin", aM: 1, bM: 1, cM: 0.04 },
			"row 1: thickness must be below C (40 mm), got 40 mm",
		],
		[
			{ shape: "tube", aM: 0.08, cM: 1 },
			"row 1: thickness must be below half of A (40 mm), got 40 mm",
		],
	])("%j", (one, sentence) => {
		expect(() => sizes(one)).toThrow(new InputError(sentence));
	});

	test("a name twice, whatever its case", () => {
		const pieces = [
			piece({ name: "Island", aM: 2, bM: 1 }),
			piece({ row: 4, name: " ISLAND", aM: 1, bM: 1 }),
		];
		expect(() => pieceSizes(pieces, [], mm)).toThrow(
			'row 4: name must be unique, " ISLAND" is in row 1 too',
		);
	});
});

test("a quantity multiplies the volume and nothing else", () => {
	const size = fc.double({ min: 0.1, max: 5, noNaN: true });
	fc.assert(
		fc.property(size, size, fc.nat(40), (aM, bM, quantity) => {
			const one = sizes({ aM, bM });
			expect(sizes({ aM, bM, quantity })).toEqual({
				...one,
				volumeAllM3: one.volumeM3 * quantity,
			});
		}),
	);
});

test("a piece twice as large has four times the areas and eight times the volume", () => {
	const size = fc.double({ min: 0.2, max: 3, noNaN: true });
	const shape = fc.constantFrom("rectangle", "oval", "basin");
	fc.assert(
		fc.property(shape, size, size, (name, aM, bM) => {
			const cM = name === "basin" ? { cM: 0.3 } : {};
			const twice = name === "basin" ? { cM: 0.6 } : {};
			const one = sizes({ shape: name, aM, bM, ...cM });
			const two = sizes({
				shape: name,
				aM: 2 * aM,
				bM: 2 * bM,
				thicknessM: 0.08,
				...twice,
			});
			expect(two.faceM2 / one.faceM2).toBeCloseTo(4, 9);
			expect(two.edgeM / one.edgeM).toBeCloseTo(2, 9);
			expect(two.volumeM3 / one.volumeM3).toBeCloseTo(8, 9);
			expect(two.finishM2 / one.finishM2).toBeCloseTo(4, 9);
		}),
	);
});
