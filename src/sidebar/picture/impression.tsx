/** The picture itself, tones as pixels of a canvas, and what it says of itself below. */
import { useLayoutEffect } from "preact/hooks";
import { EDGE, OUTSIDE, type Veins } from "../../calc/veins";

/** Of the lines between a basin's faces. */
const EDGE_COLOR = "#26231f";

interface Props {
	seen: Veins;
	/** One a tone. */
	colors: readonly string[];
	/** Where the canvas is found from outside. */
	place: { current: HTMLCanvasElement | null };
	name: string;
	told: readonly string[];
	shares: readonly string[];
}

export function Impression(props: Props) {
	const { seen, colors, place, name, told, shares } = props;
	const painted = colors.join();
	// with its caption, not a moment later: what is put on the Quote is what is told
	useLayoutEffect(() => {
		if (place.current) paint(place.current, seen, painted.split(","));
	}, [seen, painted, place]);
	return (
		<figure>
			<canvas
				ref={place}
				role="img"
				aria-label={`${name}. ${told[0]} Tones: ${shares.join(", ")}.`}
			/>
			<figcaption>
				<ul class="tones-seen">
					{shares.map((share, i) => (
						<li key={share}>
							<span class="chip" style={{ background: colors[i] }} />
							<bdi>{share}</bdi>
						</li>
					))}
				</ul>
				<p>An impression: every pour folds its own way.</p>
				{told.filter(Boolean).map((sentence) => (
					<p class="hint" key={sentence}>
						{sentence}
					</p>
				))}
			</figcaption>
		</figure>
	);
}

const channels = (color: string): number[] =>
	[1, 3, 5].map((at) => Number.parseInt(color.slice(at, at + 2), 16));

/** Red, green, blue and opacity of each pixel; outside the piece all is clear. */
function pixelsOf(
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

function paint(
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
