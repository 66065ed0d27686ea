import type { Folded } from "./fold";

/** How much of the unfolded mix a pixel reaches across, and the direction in the picture in which it does so most. */
export interface Stretch {
	perPixelM: number;
	right: number;
	down: number;
}

/** Of a pixel, from where its four neighbors were: the larger singular value of the change, and its direction. */
export function stretchAt(
	{ places: { x, y }, widthPx }: Pick<Folded, "places" | "widthPx">,
	i: number,
	stretch: Stretch,
): void {
	const column = i % widthPx;
	const left = column > 0 ? i - 1 : i;
	const right = column < widthPx - 1 ? i + 1 : i;
	const above = i >= widthPx ? i - widthPx : i;
	const below = i + widthPx < x.length ? i + widthPx : i;
	const perColumn = right - left || 1;
	const perRow = (below - above) / widthPx || 1;
	const xu = ((x[right] as number) - (x[left] as number)) / perColumn;
	const yu = ((y[right] as number) - (y[left] as number)) / perColumn;
	const xv = ((x[below] as number) - (x[above] as number)) / perRow;
	const yv = ((y[below] as number) - (y[above] as number)) / perRow;
	const uu = xu * xu + yu * yu;
	const vv = xv * xv + yv * yv;
	const uv = xu * xv + yu * yv;
	const half = (uu - vv) / 2;
	const root = Math.sqrt(half * half + uv * uv);
	const most = (uu + vv) / 2 + root;
	const u = half >= 0 ? half + root : uv;
	const v = half >= 0 ? uv : root - half;
	const length = Math.sqrt(u * u + v * v) || 1;
	stretch.perPixelM = Math.sqrt(most);
	stretch.right = u / length;
	stretch.down = v / length;
}
