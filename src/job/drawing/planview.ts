/** A piece in plan, as finished or as it lies in the mold: its outline, what is cut out of it, and its dimensions. */
import type { Hole, Part } from "../../calc/places";
import type { Piece } from "../../calc/takeoff";

export type Point = readonly [xM: number, yM: number];

/** A closed outline of corners, or an ellipse. m from the left side and the front; y runs to the back. */
export type Shape =
	| { corners: readonly Point[] }
	| { center: Point; aM: number; bM: number };

/** A dimension beside the piece; `row` counts outward from it. */
export interface Dimension {
	beside: "front" | "back" | "left" | "right";
	row: number;
	fromM: number;
	toM: number;
}

export interface PlanView {
	aM: number;
	bM: number;
	outline: Shape;
	/** Openings, and the inside of a basin or tube. */
	inner: readonly Shape[];
	/** Drop edges, as bands along the outline. */
	drops: readonly Shape[];
	dimensions: readonly Dimension[];
}

export interface Seen {
	piece: Piece;
	holes: readonly Hole[];
	/** What the notch takes out of A × B. */
	notch: Part | undefined;
	/** Sides with a drop edge, or `all around`. */
	dropOn: string;
}

const isCurved = ({ shape }: Piece): boolean =>
	shape === "round" || shape === "oval" || shape === "tube";

/** The other hand: left and right change sides. Of a view that is mirrored twice nothing is changed. */
export function mirrored({ piece, holes, notch, dropOn }: Seen): Seen {
	const { aM = 0 } = piece;
	return {
		piece,
		holes: holes.map((hole) => ({ ...hole, xM: aM - hole.xM })),
		notch: notch && {
			...notch,
			left: aM - notch.right,
			right: aM - notch.left,
		},
		dropOn: dropOn.replace(/\b(?:left|right)\b/g, (side) =>
			side === "left" ? "right" : "left",
		),
	};
}

/** What is seen of a piece; undefined of one that is given by its area. */
export function planView(seen: Seen): PlanView | undefined {
	const { piece, holes, notch } = seen;
	const { shape, aM = 0, thicknessM: t } = piece;
	const bM = piece.bM ?? aM;
	if (shape === "area") return undefined;
	const outline = outlineOf(piece, aM, bM, notch);
	const inside: Shape[] =
		shape === "basin"
			? [{ corners: boxCorners(t, t, aM - t, bM - t) }]
			: shape === "tube"
				? [{ center: [aM / 2, bM / 2], aM: aM - 2 * t, bM: bM - 2 * t }]
				: [];
	return {
		aM,
		bM,
		outline,
		inner: [...inside, ...holes.map(openingOf)],
		drops: dropBands(seen, aM, bM),
		dimensions: dimensionsOf(seen, aM, bM),
	};
}

const boxCorners = (
	left: number,
	front: number,
	right: number,
	back: number,
): Point[] => [
	[left, front],
	[right, front],
	[right, back],
	[left, back],
];

const openingOf = ({ straight, xM, yM, aM, bM }: Hole): Shape =>
	straight
		? {
				corners: boxCorners(xM - aM / 2, yM - bM / 2, xM + aM / 2, yM + bM / 2),
			}
		: { center: [xM, yM], aM, bM };

const near = (one: number, other: number): boolean =>
	Math.abs(one - other) < 1e-9;

function outlineOf(
	piece: Piece,
	aM: number,
	bM: number,
	notch: Part | undefined,
): Shape {
	if (isCurved(piece)) return { center: [aM / 2, bM / 2], aM, bM };
	if (!notch) return { corners: boxCorners(0, 0, aM, bM) };
	const { left, right, front, back } = notch;
	const corners: [Point, Point[]][] = [
		[[0, 0], [[left, front]]],
		[[aM, 0], [[right, front]]],
		[[aM, bM], [[right, back]]],
		[[0, bM], [[left, back]]],
	];
	// The notch of an L is in a corner: that corner gives way to the other three of the notch.
	const at = corners.findIndex(
		([[x, y], [[nx, ny] = [0, 0]]]) => near(x, nx) && near(y, ny),
	);
	const inNotch: Point[] = [
		[left, front],
		[right, front],
		[right, back],
		[left, back],
	];
	const around = (from: number, points: readonly Point[]) =>
		points.map((_, i) => points[(from + i) % points.length] as Point);
	if (at >= 0) {
		const [, next, across, before] = around(at, inNotch);
		const rest = around(at + 1, boxCorners(0, 0, aM, bM)).slice(0, 3);
		return {
			corners: [...rest, before, across, next] as Point[],
		};
	}
	// That of a U is in a side: all four of its corners are seen, after the corner where that side begins.
	const side = [
		near(front, 0),
		near(right, aM),
		near(back, bM),
		near(left, 0),
	].indexOf(true);
	const box = around(side + 1, boxCorners(0, 0, aM, bM));
	const [first, second, third, fourth] = around(side, inNotch);
	return { corners: [...box, first, fourth, third, second] as Point[] };
}

/** A band as wide as the drop edge is thick along each side that drops. */
function dropBands(
	{ piece, notch, dropOn }: Seen,
	aM: number,
	bM: number,
): Shape[] {
	if (piece.dropHeightM === undefined || dropOn === "") return [];
	const t = piece.dropThicknessM ?? piece.thicknessM;
	if (isCurved(piece))
		return [{ center: [aM / 2, bM / 2], aM: aM - 2 * t, bM: bM - 2 * t }];
	const drops = (side: string) =>
		dropOn === "all around" || dropOn.includes(side);
	const n = notch ?? { left: -1, right: -1, front: -1, back: -1 };
	const bands: [string, number, number, number, number][] = [
		["front", 0, 0, aM, t],
		["back", 0, bM - t, aM, bM],
		["left", 0, 0, t, bM],
		["right", aM - t, 0, aM, bM],
	];
	return bands
		.filter(([side]) => drops(side))
		.flatMap(([side, left, front, right, back]) =>
			withoutNotch(side, [left, front, right, back], n),
		)
		.map(([left, front, right, back]) => ({
			corners: boxCorners(left, front, right, back),
		}));
}

type Band = [left: number, front: number, right: number, back: number];

/** What is left of a band along a side where the notch is taken out of it. */
function withoutNotch(side: string, band: Band, notch: Part): Band[] {
	const [left, front, right, back] = band;
	const isCut =
		notch.left < right &&
		notch.right > left &&
		notch.front < back &&
		notch.back > front;
	if (!isCut) return [band];
	const parts: Band[] =
		side === "front" || side === "back"
			? [
					[left, front, notch.left, back],
					[notch.right, front, right, back],
				]
			: [
					[left, front, right, notch.front],
					[left, notch.back, right, back],
				];
	return parts.filter(([l, f, r, b]) => r - l > 1e-9 && b - f > 1e-9);
}

/** Those of openings next to the piece, then those of a notch and walls, the whole outermost. Equal ones stand once. */
function dimensionsOf(
	{ piece, holes, notch }: Seen,
	aM: number,
	bM: number,
): Dimension[] {
	const rows = { front: 0, back: 0, left: 0, right: 0 };
	const found: Dimension[] = [];
	const add = (beside: Dimension["beside"], fromM: number, toM: number) => {
		const isThere = found.some(
			(one) =>
				one.beside === beside && near(one.fromM, fromM) && near(one.toM, toM),
		);
		if (isThere || toM - fromM < 1e-9) return;
		found.push({ beside, row: rows[beside]++, fromM, toM });
	};
	for (const [index, { row, xM, yM, aM: a, bM: b }] of holes.entries()) {
		// Of several in a row one says the size of all.
		if (holes.findIndex((hole) => hole.row === row) === index) {
			add("back", xM - a / 2, xM + a / 2);
			add("right", yM - b / 2, yM + b / 2);
		}
		add("front", 0, xM);
		add("left", 0, yM - b / 2);
	}
	if (notch) {
		const { left, right, front, back } = notch;
		const across = near(front, 0) && !near(back, bM) ? "front" : "back";
		const along = near(left, 0) && !near(right, aM) ? "left" : "right";
		for (const [from, to] of [
			[0, left],
			[left, right],
			[right, aM],
		] as const)
			add(across, from, to);
		for (const [from, to] of [
			[0, front],
			[front, back],
			[back, bM],
		] as const)
			add(along, from, to);
	}
	if (piece.shape === "basin" || piece.shape === "tube")
		add("back", 0, piece.thicknessM);
	add("front", 0, aM);
	if (piece.shape !== "round" && piece.shape !== "tube") add("left", 0, bM);
	return found;
}
