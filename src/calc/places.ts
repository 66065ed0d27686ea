/** Where the cutouts of a piece are, and what of their places cannot be. */
import { type PieceCutout, sides } from "./cutouts";
import { at } from "./errors";
import type { Dimensions, LengthText } from "./shapes";

/** One opening, m from the left side and the front of the piece, seen from above. */
export interface Hole {
	/** Row of the cutout, for errors. */
	row: number;
	straight: boolean;
	/** Its middle. */
	xM: number;
	yM: number;
	/** Along A and along B. */
	aM: number;
	bM: number;
}

/** A part of the plan, m from the left side and the front. */
export interface Part {
	left: number;
	right: number;
	front: number;
	back: number;
}

/**
 * The openings of a cutout whose place is typed; nothing where it is not.
 *
 * Several of one row lie beside each other along A, `spacingM` from middle to middle, the middle of the row at `leftM`.
 *
 * @throws InputError when a dimension is missing or one too many.
 */
export function holesOf(cutout: PieceCutout): Hole[] | undefined {
	const { row, count, shape, leftM, frontM, spacingM } = cutout;
	const { aM, bM } = at(`cutouts row ${row}`, () => sides(cutout));
	if (leftM === undefined || frontM === undefined) return undefined;
	if (count > 1 && spacingM === undefined) return undefined;
	return Array.from({ length: count }, (_, i) => ({
		row,
		straight: shape === "rectangle",
		xM: leftM + (i - (count - 1) / 2) * (spacingM ?? 0),
		yM: frontM + bM / 2,
		aM,
		bM,
	}));
}

/**
 * The part that the notch of an L or U takes out of A × B; nothing for other shapes.
 *
 * `notchAt` is a corner of an L, by default the back right, or a side of a U, by default the back, where B is the longer
 * side the right.
 */
export function notchOf(piece: Dimensions, notchAt = ""): Part | undefined {
	const { shape, aM: a = 0, bM: b = 0, cM: c = 0, dM: d = 0 } = piece;
	const is = (side: string) => notchAt.includes(side);
	if (shape === "L")
		return {
			...(is("left") ? { left: 0, right: c } : { left: a - c, right: a }),
			...(is("front") ? { front: 0, back: d } : { front: b - d, back: b }),
		};
	if (shape !== "U") return undefined;
	const across = { left: (a - c) / 2, right: (a + c) / 2 };
	const along = { front: (b - c) / 2, back: (b + c) / 2 };
	const side = notchAt || (b > a ? "right" : "back");
	if (side === "left") return { left: 0, right: d, ...along };
	if (side === "right") return { left: a - d, right: a, ...along };
	return side === "front"
		? { ...across, front: 0, back: d }
		: { ...across, front: b - d, back: b };
}

/** Points of an opening that are far out: its corners, or its rim every half degree. */
function farPoints({ straight, xM, yM, aM, bM }: Hole): [number, number][] {
	const count = straight ? 4 : 720;
	const reach = straight ? Math.SQRT1_2 : 1 / 2;
	return Array.from({ length: count }, (_, i) => {
		const angle = (2 * Math.PI * (straight ? i + 1 / 2 : i)) / count;
		return [
			xM + aM * reach * Math.cos(angle),
			yM + bM * reach * Math.sin(angle),
		];
	});
}

/** How far inside the piece's outline a point is, m; negative outside. The notch is not looked at. */
function depthM(piece: Dimensions, x: number, y: number): number {
	const { shape, aM: a = 0, bM: b = a, radiusM: r = 0, thicknessM } = piece;
	if (shape === "round" || shape === "oval")
		return ovalDepthM(a / 2, b / 2, x - a / 2, y - b / 2);
	const wall = shape === "basin" ? thicknessM : 0;
	const toSide = Math.min(x, a - x) - wall;
	const toEnd = Math.min(y, b - y) - wall;
	return toSide < r && toEnd < r
		? r - Math.hypot(r - toSide, r - toEnd)
		: Math.min(toSide, toEnd);
}

/** How far inside an oval a point is, m from its middle: the nearest of its rim, found in ever smaller steps. */
function ovalDepthM(a: number, b: number, x: number, y: number): number {
	const px = Math.abs(x);
	const py = Math.abs(y);
	if (a === b) return a - Math.hypot(px, py);
	const awayM = (angle: number) =>
		Math.hypot(px - a * Math.cos(angle), py - b * Math.sin(angle));
	let nearest = 0;
	for (let step = Math.PI / 360; step > 1e-9; step /= 10) {
		const from = Math.max(0, nearest - 20 * step);
		const count = step > 0.008 ? 180 : 40;
		for (let i = 0; i <= count; i++)
			if (awayM(from + i * step) < awayM(nearest)) nearest = from + i * step;
	}
	const away = awayM(nearest);
	return (px / a) ** 2 + (py / b) ** 2 <= 1 ? away : -away;
}

/** Whether an opening reaches into a part of the plan. */
function reachesInto(hole: Hole, { left, right, front, back }: Part): boolean {
	const { straight, xM, yM, aM, bM } = hole;
	const within = (value: number, low: number, high: number) =>
		Math.min(Math.max(value, low), high);
	// In the opening's own measure it is a square or a circle that reaches 1.
	const u = (2 * (within(xM, left, right) - xM)) / aM;
	const v = (2 * (within(yM, front, back) - yM)) / bM;
	return straight
		? Math.max(Math.abs(u), Math.abs(v)) < 1 - SLACK
		: u * u + v * v < 1 - SLACK;
}

/** What touches does not reach in. */
const SLACK = 1e-9;

export const partOf = ({ xM, yM, aM, bM }: Hole): Part => ({
	left: xM - aM / 2,
	right: xM + aM / 2,
	front: yM - bM / 2,
	back: yM + bM / 2,
});

/** Whether two openings overlap; those that touch do not. */
export function overlap(one: Hole, other: Hole): boolean {
	if (other.straight) return reachesInto(one, partOf(other));
	if (one.straight) return reachesInto(other, partOf(one));
	const isIn = ([x, y]: [number, number], { xM, yM, aM, bM }: Hole) =>
		((2 * (x - xM)) / aM) ** 2 + ((2 * (y - yM)) / bM) ** 2 < 1 - SLACK;
	return (
		[...farPoints(one), [one.xM, one.yM] as [number, number]].some((point) =>
			isIn(point, other),
		) || isIn([other.xM, other.yM], one)
	);
}

/** The strip of concrete between an opening and the piece's nearest edge, m; negative where it leaves the piece. */
export function stripM(
	piece: Dimensions,
	notch: Part | undefined,
	hole: Hole,
): number {
	const points = farPoints(hole);
	const outside = Math.min(...points.map(([x, y]) => depthM(piece, x, y)));
	if (notch === undefined) return outside;
	if (reachesInto(hole, notch)) {
		const { left, right, front, back } = partOf(hole);
		const reachM = Math.min(
			right - notch.left,
			notch.right - left,
			back - notch.front,
			notch.back - front,
		);
		return Math.min(outside, -reachM);
	}
	const gapM = ({ left, right, front, back }: Part) =>
		Math.hypot(
			Math.max(0, notch.left - right, left - notch.right),
			Math.max(0, notch.front - back, front - notch.back),
		);
	const toNotch = hole.straight
		? gapM(partOf(hole))
		: Math.min(
				...points.map(([x, y]) =>
					gapM({ left: x, right: x, front: y, back: y }),
				),
			);
	return Math.min(outside, toNotch);
}

/**
 * What is wrong with the places of a piece's cutouts: a sentence for each that leaves the piece, overlaps another, or leaves
 * less than the least strip to an edge. A basin's floor has walls at its edges and needs no strip.
 */
export function placeTroubles(
	piece: Dimensions,
	notch: Part | undefined,
	holes: readonly Hole[],
	leastM: number,
	lengthText: LengthText,
): string[] {
	const edge = holes.flatMap((hole) => {
		const strip = stripM(piece, notch, hole);
		if (strip < -SLACK) return [`cutout ${hole.row} leaves the piece`];
		return piece.shape !== "basin" && strip < leastM - SLACK
			? [
					`cutout ${hole.row} leaves a strip of ${lengthText(strip)} to the edge, and the studio's least is ${lengthText(leastM)}`,
				]
			: [];
	});
	const crossed = holes.flatMap((one, i) =>
		holes
			.slice(i + 1)
			.filter((other) => overlap(one, other))
			.map(({ row }) =>
				row === one.row
					? `the openings of cutout ${row} overlap`
					: `cutouts ${one.row} and ${row} overlap`,
			),
	);
	return [...new Set([...edge, ...crossed])];
}
