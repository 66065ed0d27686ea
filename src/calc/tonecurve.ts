/** What a camera's tone curve did, told by the gray patches of a card. */
import { channelsOf } from "./color";
import type { Patch } from "./photofit";

/** From the photo's linear light to the scene's. */
export type Curve = (light: number) => number;

/** Patches of less chroma are gray: common practice, no source. */
const GRAY_CHROMA = 5;
const FEWEST_GRAYS = 4;

/** The curve of each channel through at least four grays, monotone in ln light; undefined with fewer. */
export function grayCurves(patches: readonly Patch[]): Curve[] | undefined {
	const grays = patches.filter(
		({ lab: { a, b } }) => Math.hypot(a, b) < GRAY_CHROMA,
	);
	if (grays.length < FEWEST_GRAYS) return undefined;
	return [0, 1, 2].map((channel) =>
		curveThrough(
			grays.map(({ lab, rgb }) => ({
				x: Math.log(rgb[channel] ?? 0),
				y: Math.log(channelsOf(lab)[1]),
			})),
		),
	);
}

interface Point {
	x: number;
	y: number;
}

/** Straight pieces between the points, made to rise; beyond the ends as straight as the whole is. */
function curveThrough(points: readonly Point[]): Curve {
	const rising = pooled([...points].sort((a, b) => a.x - b.x));
	const first = rising[0] as Point;
	const last = rising[rising.length - 1] as Point;
	const slope = last.x > first.x ? (last.y - first.y) / (last.x - first.x) : 1;
	return (light) => {
		const x = Math.log(light);
		if (x <= first.x) return Math.exp(first.y + slope * (x - first.x));
		if (x >= last.x) return Math.exp(last.y + slope * (x - last.x));
		const at = rising.findIndex((point) => point.x >= x);
		const [low, high] = [rising[at - 1] ?? first, rising[at] ?? last];
		const part = (x - low.x) / (high.x - low.x);
		return Math.exp(low.y + part * (high.y - low.y));
	};
}

/**
 * Points that fall are pooled into their mean.
 *
 * @source pool-adjacent-violators: Ayer et al., Annals of Mathematical Statistics 26 (1955).
 */
function pooled(points: readonly Point[]): Point[] {
	const blocks: { sumX: number; sumY: number; count: number }[] = [];
	for (const { x, y } of points) {
		blocks.push({ sumX: x, sumY: y, count: 1 });
		for (;;) {
			const [before, own] = blocks.slice(-2);
			if (!before || !own || before === own) break;
			const rises =
				own.sumY / own.count > before.sumY / before.count &&
				own.sumX / own.count > before.sumX / before.count;
			if (rises) break;
			blocks.splice(-2, 2, {
				sumX: before.sumX + own.sumX,
				sumY: before.sumY + own.sumY,
				count: before.count + own.count,
			});
		}
	}
	return blocks.map(({ sumX, sumY, count }) => ({
		x: sumX / count,
		y: sumY / count,
	}));
}
