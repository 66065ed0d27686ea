/** Columns side by side of one width; `first` counts from 1. */
export interface WidthRun {
	first: number;
	count: number;
	width: number;
}

/** Width of a column of a new tab. */
const FRESH = 100;

/** Runs of equal widths, without those that are `already` so. */
function runs(widths: readonly number[], already: number): WidthRun[] {
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
export function widthRuns(widths: readonly number[]): WidthRun[] {
	const ways = [...new Set(widths)].map((width) => [
		{ first: 1, count: widths.length, width },
		...runs(widths, width),
	]);
	return ways.reduce(
		(best, way) => (way.length < best.length ? way : best),
		runs(widths, FRESH),
	);
}
