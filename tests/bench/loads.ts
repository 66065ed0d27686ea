import { milliseconds, ms, numbers, type Row, times } from "./row";
import { built } from "./script";

const CAPACITY = 100;

/** Castings of 18 to 50 in a mixer of 100: two to five a load, so that packing matters. */
function castings(count: number): [name: string, mass: number][] {
	const next = numbers(count);
	return Array.from({ length: count }, (_, i) => [
		`piece ${i + 1}`,
		18 + 32 * next(),
	]);
}

/** Loads when the heaviest casting goes first, into the first load with room. */
function firstFitDecreasing(masses: readonly number[]): number {
	const loads: number[] = [];
	for (const mass of [...masses].sort((a, b) => b - a)) {
		const room = loads.findIndex((load) => load + mass <= CAPACITY);
		if (room < 0) loads.push(mass);
		else loads[room] = (loads[room] ?? 0) + mass;
	}
	return loads.length;
}

const sum = (masses: readonly number[]): number =>
	masses.reduce((total, mass) => total + mass, 0);

/**
 * Fewest loads that there could be: Martello and Toth's bound L2, Knapsack Problems (1990), section 8.3.
 *
 * For any small mass k: castings above capacity − k are alone, those above half share no load, and what is left
 * fills the room beside them.
 */
function lowerBound(masses: readonly number[]): number {
	const bounds = [0, ...masses.filter((mass) => 2 * mass <= CAPACITY)].map(
		(k) => {
			const alone = masses.filter((mass) => mass > CAPACITY - k);
			const half = masses.filter(
				(mass) => mass <= CAPACITY - k && 2 * mass > CAPACITY,
			);
			const small = masses.filter((mass) => 2 * mass <= CAPACITY && mass >= k);
			const room = half.length * CAPACITY - sum(half);
			const over = Math.ceil((sum(small) - room) / CAPACITY - 1e-9);
			return alone.length + half.length + Math.max(0, over);
		},
	);
	return Math.max(...bounds);
}

function against(loads: number, masses: readonly number[]): string {
	const [bound, simple] = [lowerBound(masses), firstFitDecreasing(masses)];
	return `${loads} loads, ${times(loads, bound)} the bound of ${bound}, ${times(loads, simple)} first-fit-decreasing's ${simple}`;
}

/** MIXER_LOADS as the list grows, against what could be best and what is simple. */
export function mixerRows(): Row[] {
	const call = built();
	let first = Number.NaN;
	return [12, 40, 200, 10_000].map((count) => {
		const list = castings(count);
		const masses = list.map(([, mass]) => mass);
		const answer = call("MIXER_LOADS", [list, CAPACITY]) as number[][];
		const loads = Math.max(...answer.map(([load]) => load ?? 0));
		const took = milliseconds(() => call("MIXER_LOADS", [list, CAPACITY]), 9);
		if (Number.isNaN(first)) first = took;
		return {
			what: `MIXER_LOADS, ${count} castings`,
			figure: ms(took),
			beside: `${times(took, first)} 12 castings, ${times(count, 12)} as many; ${against(loads, masses)}`,
		};
	});
}
