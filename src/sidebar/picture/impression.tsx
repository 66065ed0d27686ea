/** The picture itself on a canvas, coarse at once and fine when nothing moves, and what it says of itself below. */
import { useLayoutEffect } from "preact/hooks";
import { foldedPiece } from "../../calc/stone/fold";
import {
	type Paint,
	type Painted,
	paintHalved,
	paintPlain,
	paintStone,
} from "../../calc/stone/paint";
import type { DrawnPiece } from "./drawn-piece";

interface Props {
	drawn: DrawnPiece;
	paint: Paint;
	name: string;
	told: readonly string[];
	shares: readonly string[];
	/** Where the canvas is found from outside. */
	place: { current: HTMLCanvasElement | null };
}

/** Two pixels of the picture a pixel of the panel: fine on sharp screens. */
const FINE_PX = 560;
/** The Quote's before it is halved. */
const PRINTED_PX = 1600;
/** A control that moves again within this time is not waited for. */
const STILL_MS = 150;

export function Impression(props: Props) {
	const { drawn, paint, place, name, told, shares } = props;
	const painted = paint.colors.join();
	const { mirrored } = paint;
	// with its caption, not a moment later
	useLayoutEffect(() => {
		const canvas = place.current;
		if (!canvas) return;
		const colors = painted.split(",");
		draw(canvas, paintPlain(drawn.coarse, { colors, mirrored }), FINE_PX);
		const fine = setTimeout(() => {
			const folded = foldedPiece({ ...drawn.how, widthPx: FINE_PX });
			draw(canvas, paintStone(folded, { colors, mirrored }), FINE_PX);
			canvas.dataset.drawn = "fine";
		}, STILL_MS);
		canvas.dataset.drawn = "coarse";
		return () => clearTimeout(fine);
	}, [drawn, painted, mirrored, place]);
	const { colors } = paint;
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

/** Fills a canvas of this longer side. */
function draw(
	canvas: HTMLCanvasElement,
	painted: Painted,
	longerPx: number,
): void {
	const { widthPx, heightPx } = painted;
	const scale = longerPx / Math.max(widthPx, heightPx);
	canvas.width = Math.round(scale * widthPx);
	canvas.height = Math.round(scale * heightPx);
	canvas
		.getContext("2d")
		?.drawImage(canvasOf(painted), 0, 0, canvas.width, canvas.height);
}

function canvasOf({ pixels, widthPx, heightPx }: Painted): HTMLCanvasElement {
	const canvas = document.createElement("canvas");
	canvas.width = widthPx;
	canvas.height = heightPx;
	canvas
		.getContext("2d")
		?.putImageData(new ImageData(pixels, widthPx, heightPx), 0, 0);
	return canvas;
}

/** The picture for the Quote: drawn at double size and halved, as a PNG (`data:image/png;base64,…`). */
export function printedPng({ how }: DrawnPiece, paint: Paint): string {
	const folded = foldedPiece({ ...how, widthPx: PRINTED_PX });
	return canvasOf(paintHalved(folded, paint)).toDataURL("image/png");
}
