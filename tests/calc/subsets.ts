/** Mixer loads read back from the answer, and the fewest loads found by trying every subset. */
import { expect } from "vitest";
import { type LoadRow, mixerLoads } from "../../src/calc/loads";

export const castingsOf = (masses: readonly number[]) =>
	masses.map((massKg, i) => ({ name: `${i}`, massKg }));

/** The load of each casting, in list order. */
export const loadOf = (rows: readonly LoadRow[]): number[] =>
	[...rows]
		.sort((a, b) => Number(a.name) - Number(b.name))
		.map(({ load }) => load);

export function levels(
	masses: readonly number[],
	loads: readonly number[],
): number[] {
	const sums: number[] = [];
	for (const [i, load] of loads.entries())
		sums[load - 1] = (sums[load - 1] ?? 0) + (masses[i] ?? 0);
	return sums;
}

/**
 * The fewest loads of whole masses, by every subset of them: the fewest loads that hold it, and what is in the last.
 *
 * @source Bellman (1962), Held and Karp (1962): the state a subset leaves is all that the rest depends on.
 */
export function fewestByAllSubsets(
	masses: readonly number[],
	capacity: number,
): number {
	const subsets = 2 ** masses.length;
	const loads = new Uint8Array(subsets).fill(255);
	const last = new Int32Array(subsets);
	loads[0] = 0;
	last[0] = capacity;
	for (let subset = 0; subset < subsets; subset += 1)
		for (let i = 0; i < masses.length; i += 1) {
			const more = subset | (1 << i);
			if (more === subset) continue;
			const mass = masses[i] as number;
			const level = (last[subset] as number) + mass;
			const fits = level <= capacity;
			const count = (loads[subset] as number) + (fits ? 0 : 1);
			const known = loads[more] as number;
			const now = fits ? level : mass;
			if (count > known || (count === known && now >= (last[more] as number)))
				continue;
			loads[more] = count;
			last[more] = now;
		}
	return loads[subsets - 1] as number;
}

/** That the loads of these whole masses are the fewest, and no heaviest load could be a unit lighter. */
export function expectBestLoads(
	masses: readonly number[],
	capacity: number,
): void {
	const sums = levels(masses, loadOf(mixerLoads(castingsOf(masses), capacity)));
	const [loads, heaviest] = [sums.length, Math.max(...sums)];
	expect(fewestByAllSubsets(masses, capacity)).toBe(loads);
	expect(fewestByAllSubsets(masses, heaviest - 1)).toBeGreaterThan(loads);
}
