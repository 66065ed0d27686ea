/** Columns side by side of one width; `first` counts from 1. */
export interface WidthRun {
	first: number;
	count: number;
	width: number;
}

/** Width of a column of a new tab. */
const FRESH = 100;

type Widths = readonly number[];

/** Runs of equal widths, without those that are `already` so. */
function runs(widths: Widths, already: number): WidthRun[] {
	const found: WidthRun[] = [];
	widths.forEach((width, index) => {
		const last = found[found.length - 1];
		if (width === already) return;
		if (last?.width === width && last.first + last.count === index + 1)
			last.count += 1;
		else found.push({ first: index + 1, count: 1, width });
	});
	return found;
}

/**
 * The fewest calls of `setColumnWidths` that lead to these widths, of two ways: each run by itself, or all columns to
 * one width and then the runs of the others.
 */
export function widthRuns(widths: Widths, already = FRESH): WidthRun[] {
	const ways = [...new Set(widths)].map((width) => [
		{ first: 1, count: widths.length, width },
		...runs(widths, width),
	]);
	return ways.reduce(
		(best, way) => (way.length < best.length ? way : best),
		runs(widths, already),
	);
}

/** The width that all columns of new tabs are given first, so that the fewest calls remain; undefined for none. */
export function commonWidth(tabs: readonly Widths[]): number | undefined {
	const calls = (width: number): number =>
		tabs.reduce((sum, widths) => sum + widthRuns(widths, width).length, 0);
	const [best = FRESH] = [...new Set([FRESH, ...tabs.flat()])]
		.map((width) => ({ width, cost: calls(width) + (width === FRESH ? 0 : 1) }))
		.sort((a, b) => a.cost - b.cost)
		.map(({ width }) => width);
	return best === FRESH ? undefined : best;
}
