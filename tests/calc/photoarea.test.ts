/** Areas between marked corners: where they lie, and what of them counts. */
import { describe, expect, test } from "vitest";
import { areasBetween, type Corners, viewOf } from "../../src/calc/photoarea";
import { cardColors } from "../../src/job/reading/cardtext";

/** A picture of 200 by 100 pixels, painted by a rule. */
function picture(colorAt: (x: number, y: number) => readonly number[]) {
	const [width, height] = [200, 100];
	const data = Array.from({ length: 4 * width * height }, (_, i) => {
		const pixel = Math.floor(i / 4);
		const rgb = colorAt(pixel % width, Math.floor(pixel / width));
		return rgb[i % 4] ?? 255;
	});
	return { data, width, height };
}

const box = (l: number, t: number, r: number, b: number): Corners => [
	{ x: l, y: t },
	{ x: r, y: t },
	{ x: r, y: b },
	{ x: l, y: b },
];

test("a square is seen as its corners lie, also in perspective", () => {
	const corners: Corners = [
		{ x: 10, y: 10 },
		{ x: 110, y: 20 },
		{ x: 90, y: 80 },
		{ x: 20, y: 70 },
	];
	const view = viewOf(corners);
	for (const [i, [u = 0, v = 0]] of [
		[0, 0],
		[1, 0],
		[1, 1],
		[0, 1],
	].entries()) {
		const at = view?.(u, v);
		expect(at?.x).toBeCloseTo(corners[i]?.x ?? 0, 9);
		expect(at?.y).toBeCloseTo(corners[i]?.y ?? 0, 9);
	}
	// Diagonals of a plane meet where its middle is seen: 10 + 80 s = 110 − 90 t, 10 + 70 s = 20 + 50 t.
	// From the second s = (10 + 50 t) / 70; in the first 80 (10 + 50 t) / 70 = 100 − 90 t, so t = 62 / 103.
	const t = (100 - 800 / 70) / (90 + 4000 / 70);
	const middle = view?.(0.5, 0.5);
	expect(middle?.x).toBeCloseTo(110 - 90 * t, 9);
	expect(middle?.y).toBeCloseTo(20 + 50 * t, 9);
	expect(viewOf(box(10, 10, 10, 80))).toBeUndefined();
});

describe("areas", () => {
	test("are the middle halves of a grid, row by row", () => {
		const pixels = picture((x, y) => [
			x < 100 ? 40 : 200,
			y < 50 ? 60 : 180,
			90,
		]);
		const areas = areasBetween(pixels, box(0, 0, 200, 100), 2, 2);
		expect(areas?.map(({ rgb8 }) => rgb8)).toEqual([
			[40, 60, 90],
			[200, 60, 90],
			[40, 180, 90],
			[200, 180, 90],
		]);
		expect(areas?.every(({ spread }) => spread === 0)).toBe(true);
		expect(areas?.[1]?.at).toEqual({ x: 0.75, y: 0.125 });
	});

	test("do not count a void or a speck, and are uneven with an edge through them", () => {
		const speck = picture((x, y) =>
			Math.hypot(x - 100, y - 50) < 8 ? [5, 5, 5] : [120, 110, 100],
		);
		const [one] = areasBetween(speck, box(0, 0, 200, 100), 1, 1) ?? [];
		expect(one?.rgb8).toEqual([120, 110, 100]);
		expect(one?.spread).toBe(0);
		const edge = picture((x) => (x < 100 ? [120, 110, 100] : [60, 50, 40]));
		const [other] = areasBetween(edge, box(0, 0, 200, 100), 1, 1) ?? [];
		expect(other?.spread).toBeGreaterThan(0.04);
	});
});

describe("a card as it is typed", () => {
	test("is read patch by patch, under D50 or D65", () => {
		expect(cardColors("50, 1, 2 | 60, 3, 4\n\n70, 5, 6", "D65")).toEqual([
			{ l: 50, a: 1, b: 2 },
			{ l: 60, a: 3, b: 4 },
			{ l: 70, a: 5, b: 6 },
		]);
		// Neutral stays neutral in any light; a code is of D65 already.
		const [gray, code] = cardColors("50, 0, 0 | #808080", "D50");
		expect(Math.hypot(gray?.a ?? 9, gray?.b ?? 9)).toBeLessThan(0.01);
		expect(code?.l).toBeCloseTo(53.585, 2);
	});

	test("names the patch that is no color", () => {
		expect(() => cardColors("50, 1, 2 | red", "D65")).toThrow(/^patch 2: /);
	});
});
