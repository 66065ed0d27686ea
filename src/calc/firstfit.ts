/** Loads by quick rules, for lists too long to try all, and as a start for shorter ones. */
import { withRounding } from "./bins";
import { sum } from "./tones";

const heaviestFirst = (masses: readonly number[]): number[] =>
	masses
		.map((_, i) => i)
		.sort((a, b) => (masses[b] ?? 0) - (masses[a] ?? 0) || a - b);

type Choose = (levels: readonly number[], mass: number) => number;

/** The load of each casting when each, heaviest first, goes where `choose` says; -1 opens a load. */
function placed(masses: readonly number[], choose: Choose): number[] {
	const levels: number[] = [];
	const loadOf: number[] = [];
	for (const i of heaviestFirst(masses)) {
		const mass = masses[i] ?? 0;
		const chosen = choose(levels, mass);
		const load = chosen < 0 ? levels.push(0) - 1 : chosen;
		levels[load] = (levels[load] ?? 0) + mass;
		loadOf[i] = load;
	}
	return loadOf;
}

const firstFit =
	(limit: number): Choose =>
	(levels, mass) =>
		levels.findIndex((level) => level + mass <= withRounding(limit));

const bestFit =
	(limit: number): Choose =>
	(levels, mass) => {
		const fitting = levels.filter(
			(level) => level + mass <= withRounding(limit),
		);
		return fitting.length ? levels.indexOf(Math.max(...fitting)) : -1;
	};

const lightestOf =
	(loads: number): Choose =>
	(levels) =>
		levels.length < loads ? -1 : levels.indexOf(Math.min(...levels));

const countOf = (loadOf: readonly number[]): number => Math.max(...loadOf) + 1;

/** The fewer loads of first fit and best fit, heaviest first. */
export function bestKnown(
	masses: readonly number[],
	capacityKg: number,
): number[] {
	const first = placed(masses, firstFit(capacityKg));
	const best = placed(masses, bestFit(capacityKg));
	return countOf(best) < countOf(first) ? best : first;
}

function heaviest(
	masses: readonly number[],
	loadOf: readonly number[],
): number {
	const levels = Array<number>(countOf(loadOf)).fill(0);
	for (const [i, load] of loadOf.entries())
		levels[load] = (levels[load] ?? 0) + (masses[i] ?? 0);
	return Math.max(...levels);
}

/**
 * As many loads or fewer, the heaviest lighter where a quick rule finds such.
 *
 * Each casting into the lightest load, or first fit into ever lighter loads.
 *
 * @source MULTIFIT: Coffman, Garey and Johnson, SIAM Journal on Computing 7 (1978).
 */
export function evened(
	masses: readonly number[],
	known: readonly number[],
	capacityKg: number,
): readonly number[] {
	const loads = countOf(known);
	const level = placed(masses, lightestOf(loads));
	let best = heaviest(masses, level) < heaviest(masses, known) ? level : known;
	let low = Math.max(sum(masses) / loads, ...masses);
	let high = Math.min(capacityKg, heaviest(masses, best));
	for (let halvings = 0; halvings < 20 && low < high; halvings += 1) {
		const middle = (low + high) / 2;
		const tried = placed(masses, firstFit(middle));
		if (countOf(tried) > loads) low = middle;
		else {
			high = middle;
			if (heaviest(masses, tried) < heaviest(masses, best)) best = tried;
		}
	}
	return best;
}
