/** Areas of a photo between marked corners: the color of each, and how far it spreads. */
import { solved } from "./bounded";
import type { Triple } from "./photofit";
import type { Area } from "./photoread";

export interface Point {
	x: number;
	y: number;
}

/** Top left, top right, bottom right, bottom left, as the card is read; in pixels. */
export type Corners = readonly [Point, Point, Point, Point];

/** Pixels as a canvas has them: red, green, blue and opacity of each, row by row. */
export interface Pixels {
	data: ArrayLike<number>;
	width: number;
	height: number;
}

/** Maps the unit square onto four corners, as a lens sees a plane; undefined where they do not span one. */
export function viewOf(
	corners: Corners,
): ((u: number, v: number) => Point) | undefined {
	const square = [
		[0, 0],
		[1, 0],
		[1, 1],
		[0, 1],
	];
	const rows = corners.flatMap(({ x, y }, i) => {
		const [u = 0, v = 0] = square[i] ?? [];
		return [
			[u, v, 1, 0, 0, 0, -u * x, -v * x],
			[0, 0, 0, u, v, 1, -u * y, -v * y],
		];
	});
	const found = solved(
		rows,
		corners.flatMap(({ x, y }) => [x, y]),
	);
	if (!found) return undefined;
	const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = found;
	return (u, v) => {
		const w = g * u + h * v + 1;
		return { x: (a * u + b * v + c) / w, y: (d * u + e * v + f) / w };
	};
}

/** Cells that an area is looked at by, each way, and points in each cell. */
const [CELLS, POINTS] = [5, 5];
/** A spread is compared with no less than this code: in the dark, noise is large beside the light. */
const DIM = 40;

/**
 * The areas of a grid between the corners, row by row: of each its middle half.
 *
 * An area is the median of small cells, each the median of its points, so that voids and grain do not count; its spread is
 * half of what the middle two thirds of the cells span, as a share of the median.
 */
export function areasBetween(
	pixels: Pixels,
	corners: Corners,
	rows: number,
	columns: number,
): Area[] | undefined {
	const view = viewOf(corners);
	if (!view) return undefined;
	return Array.from({ length: rows * columns }, (_, i) => {
		const [row, column] = [Math.floor(i / columns), i % columns];
		const pointOf = (u: number, v: number) =>
			view((column + 0.25 + u / 2) / columns, (row + 0.25 + v / 2) / rows);
		return areaOf(pixels, pointOf);
	});
}

function areaOf(
	pixels: Pixels,
	pointOf: (u: number, v: number) => Point,
): Area {
	const steps = Array.from({ length: CELLS }, (_, i) => i);
	const cells = steps.flatMap((row) =>
		steps.map((column) => cellOf(pixels, pointOf, row, column)),
	);
	const sorted = [0, 1, 2].map((channel) =>
		cells.map((cell) => cell[channel] ?? 0).sort((a, b) => a - b),
	);
	const at = (channel: number, share: number) =>
		sorted[channel]?.[Math.round(share * (cells.length - 1))] ?? 0;
	const middle = pointOf(0.5, 0.5);
	return {
		rgb8: [at(0, 0.5), at(1, 0.5), at(2, 0.5)],
		spread: Math.max(
			...[0, 1, 2].map(
				(channel) =>
					(at(channel, 5 / 6) - at(channel, 1 / 6)) /
					2 /
					Math.max(DIM, at(channel, 0.5)),
			),
		),
		at: { x: middle.x / pixels.width, y: middle.y / pixels.width },
	};
}

function cellOf(
	{ data, width, height }: Pixels,
	pointOf: (u: number, v: number) => Point,
	row: number,
	column: number,
): Triple {
	const channels: [number[], number[], number[]] = [[], [], []];
	for (let i = 0; i < POINTS; i += 1)
		for (let k = 0; k < POINTS; k += 1) {
			const { x, y } = pointOf(
				(column + (k + 0.5) / POINTS) / CELLS,
				(row + (i + 0.5) / POINTS) / CELLS,
			);
			const [px, py] = [
				Math.min(width - 1, Math.max(0, Math.floor(x))),
				Math.min(height - 1, Math.max(0, Math.floor(y))),
			];
			for (const [channel, values] of channels.entries())
				values.push(data[4 * (py * width + px) + channel] ?? 0);
		}
	return channels.map(
		(values) =>
			values.sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0,
	) as unknown as Triple;
}
