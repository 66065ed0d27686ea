/** The fewest vessels for cumulative dosing: a minimum cover of the tones by chains under "every dose ≤". */
import { type Order, orderOf, width } from "./order";
import { sum } from "./sum";
import type { Tone } from "./tones";

/** Shares nearer than this are equal, and so are sums of them. */
const SAME_SHARE = 1e-9;
/** Steps looked at in comparing covers of equal weight: enough for every table of eight tones. */
const MOST_STEPS = 40_000;

/**
 * The tones of each vessel as places in the table, in the order they are dosed; the mixer's first.
 *
 * The fewest vessels; among those covers the heaviest first chain, then the heaviest second and so on; then table
 * order. With many tones of equal share the covers compared are limited; the number of vessels is always the least.
 */
export function vesselChains(tones: readonly Tone[]): number[][] {
	const total = sum(tones.map(({ share }) => share));
	const search = {
		order: orderOf(tones),
		shares: tones.map(({ share }) => share / total),
		known: new Map<string, number[][]>(),
		steps: MOST_STEPS,
	};
	const all = tones.map((_, i) => i);
	return heaviestCover(search, all, width(search.order, all));
}

interface Search {
	order: Order;
	shares: readonly number[];
	known: Map<string, number[][]>;
	steps: number;
}

function heaviestCover(
	search: Search,
	left: readonly number[],
	vessels: number,
): number[][] {
	if (vessels === left.length) return aloneByShare(search, left);
	const key = left.join();
	const known = search.known.get(key);
	if (known) return known;
	let best: number[][] | undefined;
	for (const chain of heaviestChains(search, left, vessels)) {
		if (best && search.steps <= 0) break;
		const rest = left.filter((i) => !chain.includes(i));
		const cover = [chain, ...heaviestCover(search, rest, vessels - 1)];
		if (!best || heavier(search, cover, best)) best = cover;
	}
	search.known.set(key, best ?? []);
	return best ?? [];
}

/** Tones none of which can be made from another. */
const aloneByShare = (
	{ shares }: Search,
	left: readonly number[],
): number[][] =>
	[...left]
		.sort((a, b) => {
			const more = (shares[b] ?? 0) - (shares[a] ?? 0);
			return Math.abs(more) > SAME_SHARE ? more : a - b;
		})
		.map((tone) => [tone]);

function heavier(
	{ shares }: Search,
	cover: readonly number[][],
	than: readonly number[][],
): boolean {
	const weight = (chain: readonly number[] = []) =>
		sum(chain.map((i) => shares[i] ?? 0));
	for (const [i, chain] of cover.entries()) {
		const more = weight(chain) - weight(than[i]);
		if (Math.abs(more) > SAME_SHARE) return more > 0;
	}
	return false;
}

interface Best {
	weight: number;
	/** Where the heaviest chains go on from here, in table order; nowhere at their end. */
	next: number[];
}

/** The heaviest chains that leave a rest for one vessel less, in table order. */
function heaviestChains(
	search: Search,
	left: readonly number[],
	vessels: number,
): Iterable<number[]> {
	const may = stepsThatMeetAll(search, left, vessels);
	const downwards = [...left].sort(
		(a, b) => search.order.place(b) - search.order.place(a),
	);
	const best = new Map<number, Best>();
	for (const i of downwards) {
		const next = left.filter(
			(j) => best.has(j) && search.order.before(i, j) && may(i, j),
		);
		const after = heaviestOf(best, next);
		if (next.length > 0 || may(i, undefined))
			best.set(i, {
				weight: (search.shares[i] ?? 0) + after.weight,
				next: after.next,
			});
	}
	const starts = left.filter((i) => best.has(i) && may(undefined, i));
	return paths(best, heaviestOf(best, starts).next);
}

function heaviestOf(
	best: ReadonlyMap<number, Best>,
	tones: readonly number[],
): Best {
	const weight = Math.max(0, ...tones.map((i) => best.get(i)?.weight ?? 0));
	const next = tones.filter(
		(i) => (best.get(i)?.weight ?? 0) >= weight - SAME_SHARE,
	);
	return { weight, next };
}

/**
 * Whether a chain may go from one tone straight to another, or begin (from nowhere) or end (to nowhere) at one.
 *
 * What a chain leaves needs one vessel less just when the chain meets every largest set of tones that cannot be made from
 * one another. It misses such a set just when, between two neighbors, the tones that are neither up to the first
 * nor from the second on still hold one of that size.
 */
function stepsThatMeetAll(
	search: Search,
	left: readonly number[],
	vessels: number,
): (from: number | undefined, to: number | undefined) => boolean {
	const upTo = (i: number, to: number) =>
		i === to || search.order.before(i, to);
	return (from, to) => {
		const between = left.filter(
			(i) =>
				(from === undefined || !upTo(i, from)) &&
				(to === undefined || !upTo(to, i)),
		);
		search.steps -= 1 + (between.length / 10) ** 2;
		return between.length < vessels || width(search.order, between) < vessels;
	};
}

function* paths(
	best: ReadonlyMap<number, Best>,
	starts: readonly number[],
): Generator<number[]> {
	for (const start of starts) {
		const next = best.get(start)?.next ?? [];
		if (next.length === 0) yield [start];
		for (const rest of paths(best, next)) yield [start, ...rest];
	}
}
