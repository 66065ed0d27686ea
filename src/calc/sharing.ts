/** Which castings share a load: the fewest loads, then the lightest heaviest, then list order. */
import { packing } from "./bins";
import type { Effort } from "./filling";
import { bestKnown, evenOut, heaviestKg, loadsIn } from "./firstfit";
import type { Kind } from "./halves";
import { withRounding } from "./rounding";
import { sumsOf } from "./subsets";
import { sum } from "./sum";

/**
 * Sums looked at for each of three questions: how many loads, how heavy, in which order. About half a second at most.
 *
 * That lists of 24 castings are answered within it is no theorem: tests compare them with every subset.
 */
const EFFORT = { fewest: 2.5e6, lightest: 4e6, order: 5e5 };

/** The load of each casting, from 0; each of them fits in one. */
export function sharedLoads(
	massesKg: readonly number[],
	capacityKg: number,
): readonly number[] {
	if (massesKg.length === 0) return [];
	const kinds = kindsOf(massesKg);
	const sums = sumsOf(kinds);
	const known = bestKnown(massesKg, capacityKg);
	if (!sums) return evenOut(massesKg, known, capacityKg);
	const fewest = fewestLoads(massesKg, kinds, known, capacityKg);
	const lightest = lightestLoads(massesKg, kinds, fewest);
	return inListOrder(massesKg, lightest);
}

function kindsOf(massesKg: readonly number[]): Kind[] {
	const counts = new Map<number, number>();
	for (const mass of massesKg) counts.set(mass, (counts.get(mass) ?? 0) + 1);
	return [...counts]
		.map(([mass, count]) => ({ mass, count }))
		.sort((a, b) => b.mass - a.mass);
}

/** Which casting is in which load, from how many of each mass are; equal castings in list order. */
function assigned(
	massesKg: readonly number[],
	kinds: readonly Kind[],
	bins: readonly (readonly number[])[],
): number[] {
	const left = bins.map((counts) => [...counts]);
	const loadOf = kinds.map(() => 0);
	return massesKg.map((mass) => {
		const kind = kinds.findIndex((each) => each.mass === mass);
		const leftIn = (load: number) => left[load]?.[kind] ?? 0;
		let load = loadOf[kind] ?? 0;
		while (load < left.length && leftIn(load) === 0) load += 1;
		const counts = left[load];
		if (counts) counts[kind] = leftIn(load) - 1;
		loadOf[kind] = load;
		return load;
	});
}

function fewestLoads(
	massesKg: readonly number[],
	kinds: readonly Kind[],
	known: readonly number[],
	capacityKg: number,
): readonly number[] {
	const effort: Effort = { left: EFFORT.fewest };
	const most = withRounding(capacityKg);
	const alone = massesKg.filter((mass) => 2 * mass > most).length;
	const least = Math.max(Math.ceil(sum(massesKg) / most), alone);
	for (let loads = least; loads < loadsIn(known); loads += 1) {
		if (effort.left <= 0) break;
		const levels = Array<number>(loads).fill(0);
		const { bins } = packing({ kinds, levels, limit: capacityKg, effort });
		if (bins) return assigned(massesKg, kinds, bins);
	}
	return known;
}

/** As many loads, the heaviest as light as can be: by halving what is open between a proof and an example. */
function lightestLoads(
	massesKg: readonly number[],
	kinds: readonly Kind[],
	found: readonly number[],
): readonly number[] {
	const effort: Effort = { left: EFFORT.lightest };
	const loads = loadsIn(found);
	const levels = Array<number>(loads).fill(0);
	const sums = sumsOf(kinds);
	let best = evenOut(massesKg, found, heaviestKg(massesKg, found));
	let low = Math.max(sum(massesKg) / loads, kinds[0]?.mass ?? 0);
	const below = (limit: number) =>
		sums?.most(limit) ?? Number.NEGATIVE_INFINITY;
	while (effort.left > 0) {
		const high = heaviestKg(massesKg, best);
		const next = below(high * (1 - 2e-9));
		if (high <= low || next < low * (1 - 1e-12)) break;
		const halfway = (low + next) / 2;
		const limit = below(halfway);
		if (limit < low * (1 - 1e-12)) {
			low = Math.min(next, halfway * (1 + 1e-9));
			continue;
		}
		// No hard question takes what easier ones need.
		const part: Effort = { left: Math.min(effort.left, EFFORT.lightest / 6) };
		effort.left -= part.left;
		const { bins } = packing({ kinds, levels, limit, effort: part });
		effort.left += part.left;
		if (bins) best = assigned(massesKg, kinds, bins);
		else low = limit * (1 + 2e-9);
	}
	return best;
}

/** Loads no heavier, each casting in turn in the earliest load that leaves the others a place. */
function inListOrder(
	massesKg: readonly number[],
	found: readonly number[],
): readonly number[] {
	const effort: Effort = { left: EFFORT.order };
	const limit = heaviestKg(massesKg, found);
	const loads = loadsIn(found);
	const levels = Array<number>(loads).fill(0);
	const left = kindsOf(massesKg);
	let best = numberedByFirst(found);
	for (const [i, mass] of massesKg.entries()) {
		if (effort.left <= 0) break;
		for (const kind of left) if (kind.mass === mass) kind.count -= 1;
		const kinds = left.filter(({ count }) => count > 0);
		effort.left -= (best[i] ?? 0) / 10;
		for (let load = 0; load < (best[i] ?? 0); load += 1) {
			if (effort.left <= 0) break;
			if ((levels[load] ?? 0) + mass > withRounding(limit)) continue;
			const tried = levels.map((level, at) =>
				at === load ? level + mass : level,
			);
			const { bins } = packing({ kinds, levels: tried, limit, effort });
			if (!bins) continue;
			const rest = assigned(massesKg.slice(i + 1), kinds, bins);
			best = numberedByFirst([...best.slice(0, i), load, ...rest]);
			break;
		}
		const load = best[i] ?? 0;
		levels[load] = (levels[load] ?? 0) + mass;
	}
	return best;
}

function numberedByFirst(loadOf: readonly number[]): number[] {
	const numbers = new Map<number, number>();
	return loadOf.map((load) => {
		const number = numbers.get(load) ?? numbers.size;
		numbers.set(load, number);
		return number;
	});
}
