/** Views of pieces as one SVG to scale, with dimension lines; a line of so many pixels is as long as its label says. */
import type { Dimension, PlanView, Point, Shape } from "./planview";

/** One drawing: a title, what is seen, and sentences below it. */
export interface Drawn {
	title: string;
	view: PlanView;
	notes: readonly string[];
}

const LONGER_PX = 420;
const TEXT_PX = 14;
/** From the piece to the first dimension line, and from each to the next. */
const FIRST_PX = 26;
const ROW_PX = 22;
const SIDE_NAME_PX = 20;
const MARGIN_PX = 14;
const LINE_PX = 20;
/** Wider than any letter or digit of a usual sans-serif face. */
const LETTER_PX = 0.62 * TEXT_PX;
const GAP_PX = 24;

const SIDES = ["front", "back", "left", "right"] as const;

interface Frame {
	scale: number;
	xPx: (xM: number) => number;
	/** The front is at the foot of the drawing. */
	yPx: (yM: number) => number;
	widthPx: number;
	heightPx: number;
	/** From the piece outward, by side. */
	outPx: Record<Dimension["beside"], number>;
	notesPx: number;
}

/** The views one below the other, or beside each other. `tape` writes a length as the studio reads it. */
export function drawingSvg(
	drawings: readonly Drawn[],
	tape: (lengthM: number) => string,
	isRow = false,
): string {
	let width = 0;
	let height = 0;
	const parts = drawings.map((drawn, index) => {
		const frame = frameOf(drawn);
		const gap = index === 0 ? 0 : GAP_PX;
		const [x, y] = isRow ? [width + gap, 0] : [0, height + gap];
		width = Math.max(width, x + frame.widthPx);
		height = Math.max(height, y + frame.heightPx);
		return `<g transform="translate(${num(x)} ${num(y)})" data-px-per-m="${frame.scale}">${viewSvg(drawn, frame, tape)}</g>`;
	});
	return `<svg xmlns="http://www.w3.org/2000/svg" width="${num(width)}" height="${num(height)}" viewBox="0 0 ${num(width)} ${num(height)}" font-family="Arial, Helvetica, sans-serif" font-size="${TEXT_PX}"><rect width="100%" height="100%" fill="#fff"/>${parts.join("")}</svg>`;
}

const num = (value: number): string => String(Number(value.toFixed(3)));

function frameOf({ title, view, notes }: Drawn): Frame {
	const scale = LONGER_PX / Math.max(view.aM, view.bM);
	const rows = (side: Dimension["beside"]) =>
		view.dimensions.filter(({ beside }) => beside === side).length;
	const outPx = Object.fromEntries(
		SIDES.map((side) => [side, FIRST_PX + rows(side) * ROW_PX + SIDE_NAME_PX]),
	) as Frame["outPx"];
	const left = MARGIN_PX + outPx.left;
	const top = MARGIN_PX + LINE_PX + outPx.back;
	const bodyPx = left + view.aM * scale + outPx.right + MARGIN_PX;
	const textPx =
		Math.max(...[title, ...notes].map((line) => line.length)) * LETTER_PX;
	const notesPx = top + view.bM * scale + outPx.front;
	return {
		scale,
		xPx: (xM) => left + xM * scale,
		yPx: (yM) => top + (view.bM - yM) * scale,
		widthPx: Math.max(bodyPx, textPx + 2 * MARGIN_PX),
		heightPx: notesPx + notes.length * LINE_PX + MARGIN_PX,
		outPx,
		notesPx,
	};
}

function viewSvg(
	{ title, view, notes }: Drawn,
	frame: Frame,
	tape: (lengthM: number) => string,
): string {
	const { xPx, yPx, outPx, notesPx } = frame;
	const middleX = xPx(view.aM / 2);
	const middleY = yPx(view.bM / 2);
	const half = SIDE_NAME_PX / 2;
	return [
		text(title, MARGIN_PX, MARGIN_PX + TEXT_PX / 2, {
			anchor: "start",
			bold: true,
		}),
		shapeSvg(
			view.outline,
			frame,
			'fill="#ececec" stroke="#222" stroke-width="1.5"',
		),
		...view.drops.map((band) =>
			shapeSvg(
				band,
				frame,
				'fill="#cfcfcf" stroke="#222" stroke-dasharray="5 3"',
			),
		),
		...view.inner.map((hole) =>
			shapeSvg(hole, frame, 'fill="#fff" stroke="#222" stroke-width="1.5"'),
		),
		...view.dimensions.map((one) => dimensionSvg(one, view, frame, tape)),
		text("front", middleX, yPx(0) + outPx.front - half, { gray: true }),
		text("back", middleX, yPx(view.bM) - outPx.back + half, { gray: true }),
		text("left", xPx(0) - outPx.left + half, middleY, {
			gray: true,
			upright: true,
		}),
		text("right", xPx(view.aM) + outPx.right - half, middleY, {
			gray: true,
			upright: true,
		}),
		...notes.map((line, row) =>
			text(line, MARGIN_PX, notesPx + row * LINE_PX + TEXT_PX / 2, {
				anchor: "start",
			}),
		),
	].join("");
}

function shapeSvg(shape: Shape, { xPx, yPx, scale }: Frame, look: string) {
	if ("corners" in shape)
		return `<polygon points="${shape.corners.map(([x, y]: Point) => `${num(xPx(x))},${num(yPx(y))}`).join(" ")}" ${look}/>`;
	const [x, y] = shape.center;
	return `<ellipse cx="${num(xPx(x))}" cy="${num(yPx(y))}" rx="${num((shape.aM / 2) * scale)}" ry="${num((shape.bM / 2) * scale)}" ${look}/>`;
}

interface TextLook {
	anchor?: "start" | "middle";
	bold?: boolean;
	gray?: boolean;
	upright?: boolean;
}

function text(words: string, x: number, y: number, look: TextLook): string {
	const turn = look.upright
		? ` transform="rotate(-90 ${num(x)} ${num(y)})"`
		: "";
	return `<text x="${num(x)}" y="${num(y)}" dominant-baseline="central" text-anchor="${look.anchor ?? "middle"}"${look.bold ? ' font-weight="bold"' : ""} fill="${look.gray ? "#555" : "#111"}" stroke="#fff" stroke-width="4" paint-order="stroke"${turn}>${escaped(words)}</text>`;
}

const escaped = (words: string): string =>
	words.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");

/** A line with its ends marked, thin lines from the piece to it, and the length in its middle. */
function dimensionSvg(
	{ beside, row, fromM, toM }: Dimension,
	view: PlanView,
	{ xPx, yPx }: Frame,
	tape: (lengthM: number) => string,
): string {
	const out = FIRST_PX + row * ROW_PX;
	const level = beside === "front" || beside === "back";
	const edge =
		beside === "front"
			? yPx(0)
			: beside === "back"
				? yPx(view.bM)
				: beside === "left"
					? xPx(0)
					: xPx(view.aM);
	const sign = beside === "front" || beside === "right" ? 1 : -1;
	const at = edge + sign * out;
	const [start, end] = level ? [xPx(fromM), xPx(toM)] : [yPx(fromM), yPx(toM)];
	const line = (
		x1: number,
		y1: number,
		x2: number,
		y2: number,
		look: string,
	) =>
		level
			? `<line x1="${num(x1)}" y1="${num(y1)}" x2="${num(x2)}" y2="${num(y2)}" ${look}/>`
			: `<line x1="${num(y1)}" y1="${num(x1)}" x2="${num(y2)}" y2="${num(x2)}" ${look}/>`;
	const thin = 'stroke="#999" stroke-width="0.6"';
	const ink = 'stroke="#222" stroke-width="1"';
	const tick = (place: number) =>
		line(place - 3, at + 3, place + 3, at - 3, ink);
	const middle = (start + end) / 2;
	return `<g class="dimension">${[
		line(start, edge + sign * 3, start, at + sign * 3, thin),
		line(end, edge + sign * 3, end, at + sign * 3, thin),
		line(start, at, end, at, `class="measure" ${ink}`),
		tick(start),
		tick(end),
		level
			? text(tape(toM - fromM), middle, at, {})
			: text(tape(toM - fromM), at, middle, { upright: true }),
	].join("")}</g>`;
}
