/** Loads by quick rules, for lists too long to try all, and as a start for shorter ones. */
import { withRounding } from "./rounding";
import { sum } from "./sum";

interface Placed {
	i: number;
	mass: number;
}

const heaviestFirst = (massesKg: readonly number[]): Placed[] =>
	massesKg
		.map((mass, i) => ({ i, mass }))
		.sort((a, b) => b.mass - a.mass || a.i - b.i);

/** Levels of loads, with the least of each two, each four and so on: the first one wanted is found in a few steps. */
function levelTree(loads: number) {
	let leaves = 1;
	while (leaves < loads) leaves *= 2;
	const least = new Float64Array(2 * leaves).fill(Number.POSITIVE_INFINITY);
	const at = (node: number) => least[node] as number;
	const renew = (node: number) => {
		least[node] = Math.min(at(2 * node), at(2 * node + 1));
	};
	least.fill(0, leaves, leaves + loads);
	for (let node = leaves - 1; node > 0; node -= 1) renew(node);
	return {
		lightest: () => at(1),
		/** The first load whose level is wanted; one must be, and with a level all lower ones. */
		first(wanted: (level: number) => boolean): number {
			let node = 1;
			while (node < leaves) node = 2 * node + (wanted(at(2 * node)) ? 0 : 1);
			return node - leaves;
		},
		add(load: number, mass: number): void {
			let node = leaves + load;
			least[node] = at(node) + mass;
			for (node >>= 1; node > 0; node >>= 1) renew(node);
		},
	};
}

/** The load of each casting when each in turn goes into the first load that has room. */
function firstFitOf(castings: readonly Placed[], limitKg: number): number[] {
	const tree = levelTree(castings.length);
	const most = withRounding(limitKg);
	const loadOf: number[] = [];
	for (const { i, mass } of castings) {
		const load = tree.first((level) => level + mass <= most);
		tree.add(load, mass);
		loadOf[i] = load;
	}
	return loadOf;
}

/** The load of each casting when the heaviest goes first, into the first load that has room; each fits in one. */
export const firstFit = (
	massesKg: readonly number[],
	limitKg: number,
): number[] => firstFitOf(heaviestFirst(massesKg), limitKg);

/** Each into the lightest of so many loads. */
function lightestOf(castings: readonly Placed[], loads: number): number[] {
	const tree = levelTree(loads);
	const loadOf: number[] = [];
	for (const { i, mass } of castings) {
		const lightest = tree.lightest();
		const load = tree.first((level) => level <= lightest);
		tree.add(load, mass);
		loadOf[i] = load;
	}
	return loadOf;
}

/** Each into the fullest load that has room: by looking at all, so only where there are few. */
function bestFit(massesKg: readonly number[], limitKg: number): number[] {
	const levels: number[] = [];
	const loadOf: number[] = [];
	for (const { i, mass } of heaviestFirst(massesKg)) {
		let chosen = levels.length;
		for (const [load, level] of levels.entries())
			if (
				level + mass <= withRounding(limitKg) &&
				level > (levels[chosen] ?? Number.NEGATIVE_INFINITY)
			)
				chosen = load;
		levels[chosen] = (levels[chosen] ?? 0) + mass;
		loadOf[i] = chosen;
	}
	return loadOf;
}

const BEST_FIT_UP_TO = 500;

export const loadsIn = (loadOf: readonly number[]): number =>
	loadOf.reduce((most, load) => Math.max(most, load + 1), 0);

/** The fewer loads of first fit and best fit, heaviest first; of long lists by first fit. */
export function bestKnown(
	massesKg: readonly number[],
	capacityKg: number,
): number[] {
	const first = firstFit(massesKg, capacityKg);
	if (massesKg.length > BEST_FIT_UP_TO) return first;
	const best = bestFit(massesKg, capacityKg);
	return loadsIn(best) < loadsIn(first) ? best : first;
}

/** Mass of the heaviest load, kg. */
export function heaviestKg(
	massesKg: readonly number[],
	loadOf: readonly number[],
): number {
	const levels = Array<number>(loadsIn(loadOf)).fill(0);
	for (const [i, load] of loadOf.entries())
		levels[load] = (levels[load] ?? 0) + (massesKg[i] ?? 0);
	return levels.reduce((most, level) => Math.max(most, level), 0);
}

/**
 * As many loads or fewer, the heaviest lighter where a quick rule finds such.
 *
 * Each casting into the lightest load, or first fit into ever lighter loads.
 *
 * @source MULTIFIT: Coffman, Garey and Johnson, SIAM Journal on Computing 7 (1978).
 */
export function evenOut(
	massesKg: readonly number[],
	known: readonly number[],
	capacityKg: number,
): readonly number[] {
	const loads = loadsIn(known);
	const castings = heaviestFirst(massesKg);
	const level = lightestOf(castings, loads);
	let best =
		heaviestKg(massesKg, level) < heaviestKg(massesKg, known) ? level : known;
	let low = Math.max(sum(massesKg) / loads, castings[0]?.mass ?? 0);
	let high = Math.min(capacityKg, heaviestKg(massesKg, best));
	for (let halvings = 0; halvings < 20 && low < high; halvings += 1) {
		const middle = (low + high) / 2;
		const tried = firstFitOf(castings, middle);
		if (loadsIn(tried) > loads) low = middle;
		else {
			high = middle;
			if (heaviestKg(massesKg, tried) < heaviestKg(massesKg, best))
				best = tried;
		}
	}
	return best;
}
