/** Columns side by side of one width; `first` counts from 1. */
export interface WidthRun {
	first: number;
	count: number;
	width: number;
}

/** Width of a column of a new tab. */
const FRESH = 100;

/** Runs of equal widths, without those that are `already` so. */
export function widthRuns(
	widths: readonly (number | undefined)[],
	already = FRESH,
): WidthRun[] {
	const found: WidthRun[] = [];
	widths.forEach((width, index) => {
		const last = found[found.length - 1];
		if (width === undefined || width === already) return;
		if (last?.width === width && last.first + last.count === index + 1)
			last.count += 1;
		else found.push({ first: index + 1, count: 1, width });
	});
	return found;
}

/** The width that all columns of new tabs are given first, so that the fewest calls remain; undefined for none. */
export function commonWidth(
	tabs: readonly (readonly (number | undefined)[])[],
): number | undefined {
	const calls = (width: number): number =>
		tabs.reduce((sum, widths) => sum + widthRuns(widths, width).length, 0);
	const [best = FRESH] = [
		...new Set([FRESH, ...tabs.flat().flatMap((width) => width ?? [])]),
	]
		.map((width) => ({ width, cost: calls(width) + (width === FRESH ? 0 : 1) }))
		.sort((a, b) => a.cost - b.cost)
		.map(({ width }) => width);
	return best === FRESH ? undefined : best;
}
