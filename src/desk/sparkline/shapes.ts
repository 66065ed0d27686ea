/** A drawing as boxes and lines of a size, for the grid's canvas and for paper alike. */
import type { Bar, Columns, Drawing, Line } from "./drawing";

export type Shape =
	| {
			kind: "box";
			x: number;
			y: number;
			width: number;
			height: number;
			color: string;
	  }
	| {
			kind: "line";
			points: readonly (readonly [number, number])[];
			color: string;
			widthPx: number;
	  };

export function shapesOf(
	drawing: Drawing,
	width: number,
	height: number,
): Shape[] {
	switch (drawing.chart) {
		case "bar":
			return barShapes(drawing, width, height);
		case "line":
			return lineShapes(drawing, width, height);
		default:
			return columnShapes(drawing, width, height);
	}
}

/** One part after the other, in two colors in turn, each from a whole pixel to a whole pixel. */
function barShapes(
	{ values, max, colors, fromRight }: Bar,
	width: number,
	height: number,
): Shape[] {
	let sum = 0;
	const at = (value: number) =>
		max > 0 ? Math.round(width * Math.min(1, value / max)) : 0;
	return values.flatMap((value, i): Shape[] => {
		const start = at(sum);
		sum += value;
		const end = at(sum);
		if (end === start) return [];
		const x = fromRight ? width - end : start;
		const color = colors[i % 2] as string;
		return [{ kind: "box", x, y: 0, width: end - start, height, color }];
	});
}

function lineShapes(
	{ points, color, widthPx, from, to }: Line,
	width: number,
	height: number,
): Shape[] {
	if (points.length === 0) return [];
	const part = (value: number, axis: 0 | 1) =>
		to[axis] > from[axis]
			? (value - from[axis]) / (to[axis] - from[axis])
			: 0.5;
	const inset = widthPx / 2;
	const placed = points.map(
		([x, y]) =>
			[
				inset + part(x, 0) * (width - widthPx),
				inset + (1 - part(y, 1)) * (height - widthPx),
			] as const,
	);
	return [{ kind: "line", points: placed, color, widthPx }];
}

function columnShapes(
	{ values, colors, from, to, axis }: Columns,
	width: number,
	height: number,
): Shape[] {
	const up = (value: number) => {
		const share = to > from ? (value - from) / (to - from) : 0;
		return Math.round(height * (1 - Math.min(1, Math.max(0, share))));
	};
	const zero = up(0);
	const left = (i: number) => Math.round((width * i) / values.length);
	const boxes = values.flatMap((value, i): Shape[] => {
		if (value === undefined) return [];
		const [top, bottom] = [
			Math.min(up(value), zero),
			Math.max(up(value), zero),
		];
		const gap = values.length > 1 ? 1 : 0;
		return [
			{
				kind: "box",
				x: left(i),
				y: top,
				width: Math.max(1, left(i + 1) - left(i) - gap),
				height: bottom - top,
				color: colors[i] as string,
			},
		];
	});
	return axis === undefined
		? boxes
		: [...boxes, { kind: "box", x: 0, y: zero, width, height: 1, color: axis }];
}
