/** Drawings in cells: on the grid's canvas, and as SVG on paper. */
import { type ICellCustomRender, InterceptorEffectEnum } from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import type { Engine } from "../contract";
import { partOf } from "../engine-private";
import { drawingIn } from "../sparkline/cells";
import { type Drawing, drawingText } from "../sparkline/drawing";
import { type Shape, shapesOf } from "../sparkline/shapes";

/** Between a cell's lines and its drawing, in pixels. */
const INSET = 2;

/** Before the engine's number formats. */
const BEFORE_FORMATS = 50;

/** Draws over the text of each cell that has a drawing, and keeps a neighbor's long text out of it. */
export function showDrawings(engine: Engine): void {
	partOf(engine, SheetInterceptorService).intercept(
		INTERCEPTOR_POINT.CELL_CONTENT,
		{
			priority: BEFORE_FORMATS,
			effect: InterceptorEffectEnum.Style,
			handler(cell, place, next) {
				const drawing = drawingIn(engine, place, place.rawData);
				if (!drawing) return next(cell);
				const customRender = [...(cell?.customRender ?? []), painter(drawing)];
				return next({ ...cell, coverable: false, customRender });
			},
		},
	);
}

const painter = (drawing: Drawing): ICellCustomRender => ({
	drawWith(context, { primaryWithCoord: cell }) {
		const box = cell.isMerged || cell.isMergedMainCell ? cell.mergeInfo : cell;
		const left = Math.round(box.startX) + INSET;
		const top = Math.round(box.startY) + INSET;
		const width = Math.round(box.endX) - INSET - left;
		const height = Math.round(box.endY) - INSET - top;
		context.save();
		context.beginPath();
		context.rect(left, top, width, height);
		context.clip();
		context.translate(left, top);
		for (const shape of shapesOf(drawing, width, height)) paint(context, shape);
		context.restore();
	},
});

function paint(context: CanvasRenderingContext2D, shape: Shape): void {
	if (shape.kind === "box") {
		context.fillStyle = shape.color;
		context.fillRect(shape.x, shape.y, shape.width, shape.height);
		return;
	}
	context.strokeStyle = shape.color;
	context.lineWidth = shape.widthPx;
	context.lineJoin = "round";
	context.beginPath();
	for (const [x, y] of shape.points) context.lineTo(x, y);
	context.stroke();
}

const SVG = "http://www.w3.org/2000/svg";

function svgPart(name: string, parts: Record<string, string | number>) {
	const made = document.createElementNS(SVG, name);
	for (const [key, value] of Object.entries(parts))
		made.setAttribute(key, String(value));
	return made;
}

/** The drawing on paper, in a cell of this size; its fills print without the browser's background graphics. */
export function printedDrawing(
	drawing: Drawing,
	cellWidth: number,
	cellHeight: number,
): SVGElement {
	const [width, height] = [cellWidth - 2 * INSET, cellHeight - 2 * INSET];
	const whole = svgPart("svg", {
		...{ role: "img", "aria-label": drawingText(drawing), width, height },
		style: "display:block",
	}) as SVGElement;
	for (const shape of shapesOf(drawing, width, height))
		if (shape.kind === "box") {
			const { x, y, width, height, color: fill } = shape;
			whole.append(svgPart("rect", { x, y, width, height, fill }));
		} else
			whole.append(
				svgPart("polyline", {
					points: shape.points.join(" "),
					fill: "none",
					stroke: shape.color,
					"stroke-width": shape.widthPx,
				}),
			);
	return whole;
}
