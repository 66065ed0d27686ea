/** Tones as pixels of a canvas. */
import { EDGE, OUTSIDE, type Veins } from "../../calc/veins";

/** Of the lines between a basin's faces. */
const EDGE_COLOR = "#26231f";

const channels = (color: string): number[] =>
	[1, 3, 5].map((at) => Number.parseInt(color.slice(at, at + 2), 16));

/** Red, green, blue and opacity of each pixel; outside the piece all is clear. */
export function pixelsOf(
	{ tones }: Veins,
	colors: readonly string[],
): Uint8ClampedArray<ArrayBuffer> {
	const painted = colors.map(channels);
	painted[EDGE] = channels(EDGE_COLOR);
	const pixels = new Uint8ClampedArray(4 * tones.length);
	tones.forEach((tone, i) => {
		if (tone !== OUTSIDE) pixels.set([...(painted[tone] ?? []), 255], 4 * i);
	});
	return pixels;
}

export function paint(
	canvas: HTMLCanvasElement,
	seen: Veins,
	colors: readonly string[],
): void {
	canvas.width = seen.widthPx;
	canvas.height = seen.heightPx;
	const pixels = new ImageData(
		pixelsOf(seen, colors),
		seen.widthPx,
		seen.heightPx,
	);
	canvas.getContext("2d")?.putImageData(pixels, 0, 0);
}
