/** Drawings of pieces, read back from the SVG: every printed dimension is the length of its line, and no label lies on another. */
import { describe, expect, test } from "vitest";
import { basisOf } from "../../src/job/answers/basis";
import { isKnown } from "../../src/job/answers/known";
import { pieceDrawings, svgOf } from "../../src/job/drawing/jobdrawing";
import type { JobFile } from "../../src/job/jobfile";
import type { StudioFile } from "../../src/job/studiofile";
import { starterStudio } from "../../templates/starterstudio";

type Typed = JobFile["pieces"][number];
type TypedCutout = NonNullable<JobFile["cutouts"]>[number];

const top = (more: Typed): Typed => ({
	name: "Top",
	quantity: 1,
	shape: "rectangle",
	thickness: 40,
	face: "face down",
	...more,
});
const hole = (more: TypedCutout): TypedCutout => ({
	piece: "Top",
	count: 1,
	shape: "rectangle",
	...more,
});

/** Ten shapes, each with what may stand in its way. */
const PIECES: readonly [string, Typed, readonly TypedCutout[]][] = [
	["a rectangle", top({ a: 2000, b: 600 }), []],
	[
		"a sink and three faucet holes",
		top({ a: 2000, b: 600 }),
		[
			hole({ a: 800, b: 500, left: 1000, front: 50 }),
			hole({
				count: 3,
				shape: "round",
				a: 35,
				left: 1000,
				front: 555,
				spacing: 100,
			}),
		],
	],
	[
		"an L with a drop edge",
		top({
			shape: "L",
			a: 2150,
			b: 1480,
			c: 1500,
			d: 830,
			notch: "back right",
			dropHeight: 60,
			dropRun: 3630,
			dropOn: "front and left",
		}),
		[hole({ a: 480, b: 390, left: 1400, front: 130 })],
	],
	[
		"an L notched at the front left",
		top({
			shape: "L",
			a: 1800,
			b: 1200,
			c: 600,
			d: 500,
			notch: "front left",
			face: "face up",
		}),
		[],
	],
	[
		"a U",
		top({ shape: "U", a: 2400, b: 1400, c: 1000, d: 700, notch: "back" }),
		[],
	],
	[
		"a U open to the left",
		top({ shape: "U", a: 1400, b: 2400, c: 1000, d: 700, notch: "left" }),
		[],
	],
	["a round one", top({ shape: "round", a: 900 }), []],
	[
		"an oval with an oval hole",
		top({ shape: "oval", a: 1200, b: 800 }),
		[hole({ shape: "oval", a: 400, b: 300, left: 500, front: 250 })],
	],
	[
		"a basin",
		top({ shape: "basin", a: 460, b: 340, c: 130, thickness: 22 }),
		[hole({ shape: "round", a: 45, left: 230, front: 147.5 })],
	],
	["a tube", top({ shape: "tube", a: 600, c: 400 }), []],
];

function drawn(
	units: "metric" | "us",
	piece: Typed,
	cutouts: readonly TypedCutout[] = [],
) {
	const basis = basisOf(
		starterStudio(units) as StudioFile,
		{
			units,
			pieces: [piece],
			cutouts,
			tones: [],
		} as JobFile,
	);
	const drawings = pieceDrawings(basis, 0);
	if (!isKnown(drawings)) throw new Error(JSON.stringify(drawings));
	return svgOf(drawings.is, units);
}

interface Line {
	label: string;
	/** As long as it is drawn, m. */
	lengthM: number;
}

/** Each view's dimension lines with their labels. */
function dimensionLines(svg: string): Line[] {
	return svg
		.split("<g transform=")
		.slice(1)
		.flatMap((view) => {
			const scale = Number(/data-px-per-m="([\d.]+)"/.exec(view)?.[1]);
			return [...view.matchAll(/<g class="dimension">(.*?)<\/g>/g)].map(
				([, inside = ""]) => {
					const [, x1, y1, x2, y2] =
						/<line x1="([\d.-]+)" y1="([\d.-]+)" x2="([\d.-]+)" y2="([\d.-]+)" class="measure"/.exec(
							inside,
						) ?? [];
					return {
						label: /<text[^>]*>([^<]*)</.exec(inside)?.[1] ?? "",
						lengthM:
							Math.hypot(Number(x2) - Number(x1), Number(y2) - Number(y1)) /
							scale,
					};
				},
			);
		});
}

interface Box {
	words: string;
	left: number;
	top: number;
	right: number;
	bottom: number;
}

/** Where labels lie: Arial's digits are 0.556 of the size wide, its letters mostly less; here 0.58. */
function labels(svg: string): Box[] {
	return svg
		.split("<g transform=")
		.slice(1)
		.flatMap((view) => {
			const down = Number(/^"translate\(0 ([\d.]+)\)"/.exec(view)?.[1]);
			return [
				...view.matchAll(
					/<text x="([\d.-]+)" y="([\d.-]+)"[^>]*text-anchor="(\w+)"([^>]*)>([^<]*)</g,
				),
			].map(([, x, y, anchor, look = "", words = ""]) => {
				const long = words.length * 14 * 0.58;
				const upright = look.includes("rotate(-90");
				const [width, height] = upright ? [14, long] : [long, 14];
				const left = Number(x) - (anchor === "middle" ? width / 2 : 0);
				const middle = Number(y) + down;
				return {
					words,
					left,
					right: left + width,
					top: middle - height / 2,
					bottom: middle + height / 2,
				};
			});
		});
}

describe.each(PIECES)("%s", (_, piece, cutouts) => {
	const svg = drawn("metric", piece, cutouts);

	test("every printed dimension is the length of its line", () => {
		const lines = dimensionLines(svg);
		expect(lines.length).toBeGreaterThan(1);
		for (const { label, lengthM } of lines)
			expect(lengthM * 1000).toBeCloseTo(Number(label), 0);
	});

	test("the dimensions that were typed stand there, in both views", () => {
		const printed = dimensionLines(svg).map(({ label }) => label);
		const { shape, a, b, c, d } = piece;
		const isNotched = shape === "L" || shape === "U";
		for (const typed of [a, b, ...(isNotched ? [c, d] : [])])
			if (typed !== undefined)
				expect(
					printed.filter((label) => label === String(typed)).length,
				).toBeGreaterThanOrEqual(2);
		for (const one of cutouts)
			for (const typed of [one.a, one.b, one.left, one.front])
				if (typed !== undefined) expect(printed).toContain(String(typed));
	});

	test("no label lies on another, and none leaves the page", () => {
		const boxes = labels(svg);
		const [, width, height] = (
			/width="([\d.]+)" height="([\d.]+)"/.exec(svg) ?? []
		).map(Number);
		for (const [index, one] of boxes.entries()) {
			expect(one.left, one.words).toBeGreaterThanOrEqual(0);
			expect(one.top, one.words).toBeGreaterThanOrEqual(0);
			expect(one.right, one.words).toBeLessThanOrEqual(width ?? 0);
			expect(one.bottom, one.words).toBeLessThanOrEqual(height ?? 0);
			for (const other of boxes.slice(index + 1))
				expect(
					one.left < other.right &&
						other.left < one.right &&
						one.top < other.bottom &&
						other.top < one.bottom,
					`${one.words} and ${other.words}`,
				).toBe(false);
		}
	});
});

/** Corners of the first polygon of each view, m from the left side. */
const outlines = (svg: string): number[][] =>
	svg
		.split("<g transform=")
		.slice(1)
		.map((view) => {
			const scale = Number(/data-px-per-m="([\d.]+)"/.exec(view)?.[1]);
			const points = (/<polygon points="([^"]*)"/.exec(view)?.[1] ?? "")
				.split(" ")
				.map((point) => point.split(",").map(Number));
			const least = Math.min(...points.map(([x = 0]) => x));
			return points.map(([x = 0]) => Math.round(((x - least) / scale) * 1000));
		});

test("cast face down the mold is mirrored: 1400 from the left is 750, the notch is at the other side", () => {
	const [, piece, cutouts] = PIECES[2] ?? [];
	if (!piece || !cutouts) throw new Error("no L");
	const svg = drawn("metric", piece, cutouts);
	const [finished = "", mold = ""] = svg.split("<g transform=").slice(1);
	expect(finished).toContain(">1400<");
	expect(finished).not.toContain(">750<");
	expect(mold).toContain(">750<");
	expect(mold).not.toContain(">1400<");
	expect(mold).toContain("MIRRORED");
	const [own = [], other = []] = outlines(svg);
	expect(other.map((x) => 2150 - x).sort()).toEqual([...own].sort());
	expect(other).not.toEqual(own);
});

test("the outline of an L encloses its face: 2150 × 1480 − 1500 × 830", () => {
	const [, piece] = PIECES[2] ?? [];
	if (!piece) throw new Error("no L");
	const svg = drawn("metric", piece);
	const scale = Number(/data-px-per-m="([\d.]+)"/.exec(svg)?.[1]);
	const points = (/<polygon points="([^"]*)"/.exec(svg)?.[1] ?? "")
		.split(" ")
		.map((point) => point.split(",").map(Number) as [number, number]);
	const twice = points.reduce((sum, [x, y], i) => {
		const [nextX, nextY] = points[(i + 1) % points.length] ?? [0, 0];
		return sum + x * nextY - nextX * y;
	}, 0);
	expect(Math.abs(twice) / 2 / scale ** 2).toBeCloseTo(
		2.15 * 1.48 - 1.5 * 0.83,
		3,
	);
});

test("inches as on a tape", () => {
	const svg = drawn(
		"us",
		top({ a: "84 1/2", b: "25 1/2", thickness: "1 1/2" }),
		[hole({ a: 33, b: 18, left: "42 1/4", front: "3 3/4" })],
	);
	for (const label of ["84 1/2", "25 1/2", "42 1/4", "3 3/4", "33", "18"])
		expect(svg).toContain(`>${label}<`);
	expect(svg).toContain("Lengths in in. 1 1/2 thick");
});

test("what is not known is said, not drawn", () => {
	const unplaced = drawn("metric", top({ a: 2000, b: 600 }), [
		hole({ a: 800, b: 500 }),
	]);
	expect(unplaced).toContain("not known yet: type where cutout 1 is in Top");
	expect(drawn("metric", top({ a: 2000, b: 600, face: "" }))).toContain(
		"not known yet, type face up or face down under Cast",
	);
	const basis = basisOf(
		starterStudio("metric") as StudioFile,
		{
			units: "metric",
			pieces: [top({ shape: "area", a: 1.2, b: 4000 })],
			tones: [],
		} as JobFile,
	);
	const drawings = pieceDrawings(basis, 0);
	expect(isKnown(drawings) && drawings.is).toEqual([]);
});
