/** What lies near the surface of a piece, against points that are counted one by one. */
import { describe, expect, test } from "vitest";
import type { PieceCutout } from "../../src/calc/cutouts";
import { facedVolumeM3 } from "../../src/calc/facedepth";
import type { Piece } from "../../src/calc/takeoff";

const text = (lengthM: number): string => `${lengthM} m`;
const piece = (of: Partial<Piece>): Piece => ({
	row: 1,
	name: "it",
	quantity: 1,
	shape: "rectangle",
	aM: 1,
	bM: 1,
	thicknessM: 0.05,
	...of,
});
const faced = (
	of: Partial<Piece>,
	depthM: number,
	cutouts: readonly PieceCutout[] = [],
): number => facedVolumeM3(piece(of), cutouts, depthM, text);

describe("by hand", () => {
	test("a slab: all but a core that is smaller by the depth on four sides and the face", () => {
		expect(faced({}, 0.01)).toBeCloseTo(0.05 - 0.98 ** 2 * 0.04, 12);
	});
	test("as deep as the slab, or as half its width, it is all of it", () => {
		expect(faced({}, 0.05)).toBeCloseTo(0.05, 12);
		expect(faced({ bM: 0.1 }, 0.051)).toBeCloseTo(0.005, 12);
	});
	test("a round table", () => {
		const all = Math.PI * 0.5 ** 2 * 0.05;
		expect(faced({ shape: "round", bM: undefined }, 0.01)).toBeCloseTo(
			all - Math.PI * 0.49 ** 2 * 0.04,
			12,
		);
	});
	test("a drop edge: its front besides", () => {
		const drop = { dropHeightM: 0.1, dropRunM: 2, dropThicknessM: 0.03 };
		expect(faced(drop, 0.01) - faced({}, 0.01)).toBeCloseTo(0.002, 12);
	});
	test("a tube: a ring between two", () => {
		const tube = { shape: "tube", bM: undefined, cM: 0.6, aM: 0.4 } as const;
		const ring = (out: number, inside: number) =>
			Math.PI * (out ** 2 - inside ** 2);
		expect(faced(tube, 0.01)).toBeCloseTo(
			ring(0.2, 0.15) * 0.6 - ring(0.19, 0.16) * 0.58,
			12,
		);
	});
	test("a radius as large as the depth leaves a core with square corners", () => {
		const all = (1 - (4 - Math.PI) * 0.01 ** 2) * 0.05;
		expect(faced({ radiusM: 0.01 }, 0.01)).toBeCloseTo(
			all - 0.98 ** 2 * 0.04,
			12,
		);
	});
});

const CELL = 0.002;

/** Part of the points of a fine grid over a × b for which it holds, times a × b. */
function counted(
	a: number,
	b: number,
	holds: (x: number, y: number) => boolean,
): number {
	// Edges and depths of the tests are whole numbers of cells.
	const [across, up] = [Math.round(a / CELL), Math.round(b / CELL)];
	let count = 0;
	for (let i = 0; i < across; i++)
		for (let j = 0; j < up; j++)
			if (holds(((i + 0.5) * a) / across, ((j + 0.5) * b) / up)) count++;
	return (count * a * b) / (across * up);
}

type Corners = readonly (readonly [number, number])[];

const nearEdge = (corners: Corners, x: number, y: number): number =>
	Math.min(
		...corners.map(([x1, y1], i) => {
			const [x2, y2] = corners[(i + 1) % corners.length] as [number, number];
			const [dx, dy] = [x2 - x1, y2 - y1];
			const along = ((x - x1) * dx + (y - y1) * dy) / (dx ** 2 + dy ** 2);
			const at = Math.max(0, Math.min(1, along));
			return Math.hypot(x - x1 - at * dx, y - y1 - at * dy);
		}),
	);

describe("against points counted one by one", () => {
	const D = 0.03;
	const core = (all: number, volume: number) => (all - volume) / (0.05 - D);

	test("an L: once around the corner that goes in", () => {
		const L: Corners = [
			[0, 0],
			[1, 0],
			[1, 0.5],
			[0.6, 0.5],
			[0.6, 0.9],
			[0, 0.9],
		];
		const inside = (x: number, y: number) => x < 0.6 || y < 0.5;
		const volume = faced({ shape: "L", aM: 1, bM: 0.9, cM: 0.4, dM: 0.4 }, D);
		expect(core((0.9 - 0.16) * 0.05, volume)).toBeCloseTo(
			counted(1, 0.9, (x, y) => inside(x, y) && nearEdge(L, x, y) > D),
			3,
		);
	});

	test("cutouts: once around each rim", () => {
		const slab: Corners = [
			[0, 0],
			[1, 0],
			[1, 0.6],
			[0, 0.6],
		];
		const hole: Corners = [
			[0.1, 0.2],
			[0.4, 0.2],
			[0.4, 0.4],
			[0.1, 0.4],
		];
		const isHole = (x: number, y: number) =>
			x > 0.1 && x < 0.4 && y > 0.2 && y < 0.4;
		const round = (x: number, y: number) => Math.hypot(x - 0.7, y - 0.3);
		const cut = (shape: "rectangle" | "round", aM: number, bM?: number) => ({
			row: 1,
			piece: "it",
			count: 1,
			shape,
			aM,
			...(bM !== undefined && { bM }),
		});
		const volume = faced({ bM: 0.6 }, D, [
			cut("rectangle", 0.3, 0.2),
			cut("round", 0.2),
		]);
		const all = (0.6 - 0.06 - Math.PI * 0.01) * 0.05;
		expect(core(all, volume)).toBeCloseTo(
			counted(
				1,
				0.6,
				(x, y) =>
					!isHole(x, y) &&
					round(x, y) > 0.1 + D &&
					nearEdge(slab, x, y) > D &&
					nearEdge(hole, x, y) > D,
			),
			3,
		);
	});
});
