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

/** The fewest calls of `setColumnWidths` that lead to these widths: a stretch is set first, and parts of it once more. */
export function widthRuns(widths: Widths): WidthRun[] {
	const known = widths.flatMap((width, at) =>
		width === undefined ? [] : [{ at: at + 1, width }],
	);
	// what is as wide as a fresh column needs no call
	const stretches = [{ at: 1, width: FRESH }, ...known].filter(
		({ width }, index, all) => width !== all[index - 1]?.width,
	);
	const ends = stretches.map(
		(_, index) => (stretches[index + 1]?.at ?? widths.length + 1) - 1,
	);
	const found = new Map<string, WidthRun[]>();
	/** The calls for some stretches; the first of them begins at the first. */
	function fewest(from: number, to: number): WidthRun[] {
		const own = stretches[from];
		if (!own || from > to) return [];
		const key = `${from} ${to}`;
		const earlier = found.get(key);
		if (earlier) return earlier;
		const { at: first, width } = own;
		const count = (ends[from] ?? first) - first + 1;
		let best = [{ first, count, width }, ...fewest(from + 1, to)];
		for (let like = from + 2; like <= to; like++) {
			const [over, ...rest] = fewest(like, to);
			if (over?.width !== width) continue;
			const whole = { first, count: over.first + over.count - first, width };
			const way = [whole, ...fewest(from + 1, like - 1), ...rest];
			if (way.length < best.length) best = way;
		}
		found.set(key, best);
		return best;
	}
	return fewest(0, stretches.length - 1).slice(1);
}
