/** Whether things fit in a number of bins, and how. */
import {
	countsFit,
	type Effort,
	type Question,
	selections,
	TINY,
} from "./filling";
import type { Kind } from "./halves";
import { withRounding } from "./rounding";

/** What one bin costs beside the sums looked at. */
const BIN_EFFORT = 50;

interface Packing {
	/** How many of each kind, a bin each; undefined when none was found. */
	bins: number[][] | undefined;
	/** Whether that is proved. */
	sure: boolean;
}

interface Bins {
	/** Heaviest first. */
	kinds: readonly Kind[];
	/** What is in each bin already. */
	levels: readonly number[];
	limit: number;
	effort: Effort;
}

/** How the things go into bins, if they fit. */
export function packing(bins: Bins): Packing {
	for (const spread of [0.05, 0.005]) {
		const kinds = alike(bins.kinds, spread);
		if (kinds.length > bins.kinds.length / 2) continue;
		const easier = exactPacking({ ...bins, kinds });
		if (!easier.bins && easier.sure) return easier;
	}
	return exactPacking(bins);
}

/** Fewer kinds: those that differ by less than a share, all as light as the lightest. If these do not fit, none do. */
function alike(kinds: readonly Kind[], spread: number): Kind[] {
	const fewer: Kind[] = [];
	for (const { mass, count } of [...kinds].reverse()) {
		const last = fewer[fewer.length - 1];
		if (last && mass <= last.mass * (1 + spread)) last.count += count;
		else fewer.push({ mass, count });
	}
	return fewer.reverse();
}

function exactPacking({ kinds, levels, limit, effort }: Bins): Packing {
	const question: Question = {
		masses: kinds.map(({ mass }) => mass),
		limit: withRounding(limit),
		effort,
		failed: new Set(),
		sure: true,
	};
	const fullest = levels
		.map((_, bin) => bin)
		.sort((a, b) => (levels[b] ?? 0) - (levels[a] ?? 0));
	const filled = fill(
		question,
		kinds.map(({ count }) => count),
		fullest.map((bin) => levels[bin] ?? 0),
	);
	if (!filled) return { bins: undefined, sure: question.sure };
	const nothing = kinds.map(() => 0);
	return {
		bins: levels.map((_, bin) => filled[fullest.indexOf(bin)] ?? nothing),
		sure: true,
	};
}

/** Fills the first bin in every way that may do, then the others. */
function fill(
	question: Question,
	counts: readonly number[],
	levels: readonly number[],
): number[][] | undefined {
	const { limit, failed, effort, masses } = question;
	const [level, ...others] = levels;
	const first = counts.findIndex((count) => count > 0);
	if (first < 0) return [];
	if (level === undefined) return undefined;
	if (effort.left <= 0) {
		question.sure = false;
		return undefined;
	}
	let spare = 0;
	for (const each of levels) spare += limit - each;
	for (const [i, count] of counts.entries()) spare -= count * (masses[i] ?? 0);
	if (spare < -TINY * limit) return undefined;
	effort.left -= BIN_EFFORT + 3 * levels.length;
	if (!countsFit(question, counts, levels.length)) return undefined;
	const key = `${others.length}:${counts.join()}`;
	if (failed.has(key)) return undefined;
	for (const chosen of selections(question, counts, levels, spare)) {
		const left = counts.map((count, i) => count - (chosen[i] ?? 0));
		const rest = fill(question, left, others);
		if (rest) return [chosen, ...rest];
	}
	if (effort.left > 0) failed.add(key);
	return undefined;
}
