/** The ways to fill one bin, and when it is no use to try. */
import { type Selection, type Sums, sumsOf } from "./subsets";

/** What sums of a few hundred masses may be off by, as a share. */
export const TINY = 1e-12;

/** Counts down what is looked at, so that an answer is given in time and the same on every machine. */
export interface Effort {
	left: number;
}

/** Selections for one bin to go through; of more, the fullest. */
const MOST_SELECTIONS = 3000;
/** What a selection costs beside. */
const SELECTION_EFFORT = 5;

export interface Question {
	/** Heaviest first. */
	masses: readonly number[];
	limit: number;
	effort: Effort;
	/** Leftovers that are known not to fit. */
	failed: Set<string>;
	sure: boolean;
}

/**
 * The ways to fill the first bin, fullest first.
 *
 * What stays free in it must be spare, and nothing that is left may fit on top. An empty bin takes the heaviest thing.
 */
export function* selections(
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
	effort.left -= sums.work;
	const room = limit - level - must;
	const low = room - spare - TINY * limit;
	if (level === 0) {
		// Every bin holds at most the fullest selection there is.
		const fullest = Math.max(sums.most(limit), must + sums.most(room));
		const unfilled = (limit - fullest) * (others.length + 1);
		if (unfilled > spare + TINY * limit) return;
	}
	for (const selection of fullestFirst(question, sums, low, room)) {
		const some = selection.counts();
		const left = free.filter(({ count }, at) => (some[at] ?? 0) < count);
		const lightest = left[left.length - 1]?.mass ?? Number.POSITIVE_INFINITY;
		if (selection.sum + lightest <= room) continue;
		const chosen = counts.map((_, i): number => (i === first ? 1 : 0));
		for (const [at, { i }] of free.entries())
			chosen[i] = (chosen[i] ?? 0) + (some[at] ?? 0);
		yield chosen;
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
export function countsFit(
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
