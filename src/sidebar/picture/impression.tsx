/** The picture itself, and what it says of itself below. */
import { useLayoutEffect } from "preact/hooks";
import type { Veins } from "../../calc/veins";
import { paint } from "./paint";

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
