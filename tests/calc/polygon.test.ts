/** Closed forms of known polygons; the printed examples are in tests/published/shoelace.ts. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { polygonAreaM2 } from "../../src/calc/polygon";

type Point = readonly [number, number];

const area = (points: readonly Point[]): number =>
	polygonAreaM2(points.map(([xM, yM], index) => ({ row: index + 1, xM, yM })));

const regular = (corners: number, radius: number): Point[] =>
	Array.from({ length: corners }, (_, index) => {
		const angle = (2 * Math.PI * index) / corners;
		return [radius * Math.cos(angle), radius * Math.sin(angle)] as const;
	});

const TRIANGLE: Point[] = [
	[0, 0],
	[3, 0],
	[0, 4],
];

describe("known areas", () => {
	test.each<[string, Point[], number]>([
		["triangle 3-4-5", TRIANGLE, 6],
		["the other way round", [...TRIANGLE].reverse(), 6],
		["first corner repeated as the last", [...TRIANGLE, [0, 0]], 6],
		[
			"a corner in the middle of a side",
			[
				[0, 0],
				[1, 0],
				[3, 0],
				[0, 4],
			],
			6,
		],
		[
			"L 3 × 2 less 1 × 1",
			[
				[0, 0],
				[3, 0],
				[3, 1],
				[2, 1],
				[2, 2],
				[0, 2],
			],
			5,
		],
		["hexagon of side 1: 3√3/2", regular(6, 1), (3 * Math.sqrt(3)) / 2],
		["dodecagon of radius 1: 3", regular(12, 1), 3],
		["far from zero", TRIANGLE.map(([x, y]) => [x + 1e6, y - 1e6]), 6],
	])("%s", (_, points, expected) => {
		expect(area(points)).toBeCloseTo(expected, 8);
	});

	test("any regular polygon: n/2 r² sin(2π/n)", () => {
		fc.assert(
			fc.property(
				fc.integer({ min: 3, max: 60 }),
				fc.double({ min: 0.01, max: 100, noNaN: true }),
				(n, r) => {
					const exact = (n / 2) * r * r * Math.sin((2 * Math.PI) / n);
					expect(area(regular(n, r)) / exact).toBeCloseTo(1, 9);
				},
			),
		);
	});
});

describe("what is refused", () => {
	test.each<[string, Point[], RegExp]>([
		[
			"two corners",
			[
				[0, 0],
				[1, 1],
			],
			/at least 3 different corners, got 2/,
		],
		[
			"two corners and the first again",
			[
				[0, 0],
				[1, 1],
				[0, 0],
			],
			/got 2/,
		],
		[
			"corners on a line",
			[
				[0, 0],
				[1, 1],
				[2, 2],
			],
			/enclose an area/,
		],
		[
			"sides that cross",
			[
				[0, 0],
				[2, 2],
				[3, 0],
				[0, 1],
			],
			/rows 1–2 and the side of rows 3–4 cross or touch/,
		],
		[
			"a corner on another side",
			[
				[0, 0],
				[4, 0],
				[4, 2],
				[2, 0],
				[0, 2],
			],
			/cross or touch/,
		],
		[
			"a corner used twice",
			[
				[0, 0],
				[1, 1],
				[2, 0],
				[2, 2],
				[1, 1],
				[0, 2],
			],
			/cross or touch/,
		],
		[
			"a side that turns back on itself",
			[
				[0, 0],
				[4, 0],
				[2, 0],
				[2, 2],
			],
			/cross or touch/,
		],
		[
			"the same corner twice in a row",
			[
				[0, 0],
				[1, 0],
				[1, 0],
				[0, 1],
			],
			/cross or touch/,
		],
	])("%s", (_, points, sentence) => {
		expect(() => area(points)).toThrow(InputError);
		expect(() => area(points)).toThrow(sentence);
	});

	test("a touch that only unit conversion hides", () => {
		// 0.1 + 0.2 is not 0.3 in binary, but it is on the tape.
		const points: Point[] = [
			[0, 0],
			[0.6, 0],
			[0.6, 0.3],
			[0.3, 0.1 + 0.2 - 0.3],
			[0, 0.3],
		];
		expect(() => area(points)).toThrow(/cross or touch/);
	});
});

test("a thousand corners are checked in well under a second", () => {
	const started = performance.now();
	expect(area(regular(1000, 1))).toBeCloseTo(Math.PI, 3);
	expect(performance.now() - started).toBeLessThan(500);
});
