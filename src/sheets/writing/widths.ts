/** Columns side by side; `first` counts from 1. */
interface Run {
	first: number;
	count: number;
}

interface WidthRun extends Run {
	width: number;
}

/** A width for each column, undefined for one that is out of sight. */
type Widths = readonly (number | undefined)[];

/** Width of a column of a new tab. */
const FRESH = 100;

/** Runs of columns that are out of sight. */
export const hiddenRuns = (widths: Widths): Run[] =>
	runsOf(widths.map((width) => (width === undefined ? 0 : undefined)));

/** Runs of equal values; a column without a value belongs to none. */
function runsOf(values: Widths): WidthRun[] {
	const runs: WidthRun[] = [];
	values.forEach((width, at) => {
		if (width === undefined) return;
		const last = runs[runs.length - 1];
		if (last?.width === width && last.first + last.count === at + 1)
			last.count += 1;
		else runs.push({ first: at + 1, count: 1, width });
	});
	return runs;
}

/**
 * The fewest calls of `setColumnWidths` that lead to these widths, of two ways: each run by itself, or all columns to
 * one width and then the runs of the others.
 */
export function widthRuns(widths: Widths): WidthRun[] {
	const without = (already: number) =>
		runsOf(widths.map((width) => (width === already ? undefined : width)));
	const ways = runsOf(widths).map(({ width }) => [
		{ first: 1, count: widths.length, width },
		...without(width),
	]);
	return ways.reduce(
		(best, way) => (way.length < best.length ? way : best),
		without(FRESH),
	);
}
