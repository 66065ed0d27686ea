/** Whether things fit in a number of bins, and how. */
import { type Kind, type Selection, type Sums, sumsOf } from "./subsets";

/** Fits = up to the limit and this much of it. */
const ROUNDING = 1e-9;

export const withRounding = (limit: number): number => limit * (1 + ROUNDING);

/** What sums of a few hundred masses may be off by, as a share. */
const TINY = 1e-12;

/** Counts down what is looked at, so that an answer is given in time and the same on every machine. */
export interface Effort {
	left: number;
}

/** What one bin costs beside the sums looked at. */
const BIN_EFFORT = 50;
/** Selections for one bin to go through; of more, the fullest. */
const MOST_SELECTIONS = 3000;
/** What a selection costs beside. */
const SELECTION_EFFORT = 5;

interface Question {
	/** Heaviest first. */
	masses: readonly number[];
	limit: number;
	effort: Effort;
	/** Leftovers that are known not to fit. */
	failed: Set<string>;
	sure: boolean;
}

export interface Packing {
	/** How many of each kind, a bin each; undefined when none was found. */
	bins: number[][] | undefined;
	/** Whether that is proved. */
	sure: boolean;
}

export interface Bins {
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
	effort.left -= BIN_EFFORT + levels.length;
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

/**
 * The ways to fill the first bin, fullest first.
 *
 * What stays free in it must be spare, and nothing that is left may fit on top. An empty bin takes the heaviest thing.
 */
function* selections(
	question: Question,
	counts: readonly number[],
	[level = 0, ...others]: readonly number[],
	spare: number,
): Generator<number[]> {
	const { masses, limit, effort } = question;
	const first = level === 0 ? counts.findIndex((count) => count > 0) : -1;
	const must = masses[first] ?? 0;
	const free = counts.flatMap((count, i) => {
		const rest = count - (i === first ? 1 : 0);
		return rest > 0 ? [{ i, mass: masses[i] ?? 0, count: rest }] : [];
	});
	const sums = sumsOf(free);
	if (!sums) {
		question.sure = false;
		return;
	}
	effort.left -= sums.size;
	const room = limit - level - must;
	const low = room - spare - TINY * limit;
	if (level === 0) {
		// Every bin holds at most the fullest selection there is.
		const fullest = Math.max(sums.most(limit), must + sums.most(room));
		const free = (limit - fullest) * (others.length + 1);
		if (free > spare + TINY * limit) return;
	}
	for (const selection of fullestFirst(question, sums, low, room)) {
		const some = selection.counts();
		const chosen: number[] = counts.map((_, i) => (i === first ? 1 : 0));
		let lightestLeft = Number.POSITIVE_INFINITY;
		for (const [at, { i, mass, count }] of free.entries()) {
			const taken = some[at] ?? 0;
			chosen[i] = (chosen[i] ?? 0) + taken;
			if (taken < count) lightestLeft = mass;
		}
		if (selection.sum + lightestLeft > room) yield chosen;
	}
}

function fullestFirst(
	question: Question,
	sums: Sums,
	low: number,
	high: number,
): Selection[] {
	const { effort } = question;
	let from = low;
	let found = sums.between(from, high, MOST_SELECTIONS);
	while (!found && high - from > TINY * high) {
		question.sure = false;
		from = high - (high - from) / 4;
		found = sums.between(from, high, MOST_SELECTIONS);
		effort.left -= MOST_SELECTIONS * SELECTION_EFFORT;
	}
	effort.left -= (found?.length ?? 0) * SELECTION_EFFORT;
	return (found ?? []).sort((a, b) => b.sum - a.sum);
}

/**
 * False when too many bins would need many things each.
 *
 * If no bin can hold more than c things, at least n − bins (c − 1) of them hold c, together no less than the lightest.
 */
function countsFit(
	{ masses, limit }: Question,
	counts: readonly number[],
	bins: number,
): boolean {
	let things = 0;
	for (const count of counts) things += count;
	let each = 0;
	let sum = 0;
	const lightest = { kind: counts.length - 1, used: 0 };
	const next = (): number => {
		while (lightest.kind >= 0 && lightest.used === counts[lightest.kind]) {
			lightest.kind -= 1;
			lightest.used = 0;
		}
		lightest.used += 1;
		return masses[lightest.kind] ?? Number.POSITIVE_INFINITY;
	};
	let mass = next();
	while (sum + mass <= limit) {
		sum += mass;
		each += 1;
		mass = next();
	}
	const full = things - bins * (each - 1);
	if (full > bins) return false;
	for (let n = each; n < full * each; n += 1) {
		sum += mass;
		mass = next();
	}
	return full <= 0 || sum <= full * limit;
}
