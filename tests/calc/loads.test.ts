import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { firstFit } from "../../src/calc/firstfit";
import { mixerLoads } from "../../src/calc/loads";
import { OPTIMA } from "./optima";
import { castingsOf, expectBestLoads, levels, loadOf } from "./subsets";

/** Every way to put castings into loads numbered by their first casting, earliest loads first. */
function* assignments(
	count: number,
	sofar: number[] = [],
): Generator<number[]> {
	if (sofar.length === count) {
		yield sofar;
		return;
	}
	const next = Math.max(0, ...sofar) + 1;
	for (let load = 1; load <= next; load += 1)
		yield* assignments(count, [...sofar, load]);
}

/** Fewest loads, then the lightest heaviest load, then list order: by trying all. */
function byBruteForce(masses: readonly number[], capacity: number): number[] {
	let best: { loads: number[]; count: number; heaviest: number } | undefined;
	for (const loads of assignments(masses.length)) {
		const sums = levels(masses, loads);
		const heaviest = Math.max(...sums);
		if (heaviest > capacity) continue;
		const count = sums.length;
		if (
			!best ||
			count < best.count ||
			(count === best.count && heaviest < best.heaviest)
		)
			best = { loads, count, heaviest };
	}
	return best?.loads ?? [];
}

/** Heaviest first, each into the first load that has room: by looking at all loads. */
function plainFirstFit(masses: readonly number[], limit: number): number[] {
	const sums: number[] = [];
	const loads: number[] = [];
	const heaviestFirst = [...masses.entries()].sort((a, b) => b[1] - a[1]);
	for (const [i, mass] of heaviestFirst) {
		const room = sums.findIndex((sum) => sum + mass <= limit * (1 + 1e-9));
		const load = room < 0 ? sums.length : room;
		sums[load] = (sums[load] ?? 0) + mass;
		loads[i] = load;
	}
	return loads;
}

const firstFitDecreasing = (
	masses: readonly number[],
	capacity: number,
): number => Math.max(...plainFirstFit(masses, capacity)) + 1;

test("first fit is the plain one, however long the list", () => {
	fc.assert(
		fc.property(
			fc.array(
				fc.oneof(
					fc.integer({ min: 0, max: 30 }),
					fc.double({ min: 0.1, max: 30, noNaN: true }),
				),
				{ minLength: 1, maxLength: 300, size: "max" },
			),
			fc.double({ min: 30, max: 90, noNaN: true }),
			(masses, limit) => {
				expect(firstFit(masses, limit)).toEqual(plainFirstFit(masses, limit));
			},
		),
		{ numRuns: 500, seed: 5 },
	);
});

describe("mixer loads", { timeout: 60_000 }, () => {
	test("are those of brute force for up to 8 castings", () => {
		fc.assert(
			fc.property(
				fc.array(fc.integer({ min: 1, max: 30 }), {
					minLength: 1,
					maxLength: 8,
				}),
				fc.integer({ min: 30, max: 70 }),
				(masses, capacity) => {
					const rows = mixerLoads(castingsOf(masses), capacity);
					expect(loadOf(rows)).toEqual(byBruteForce(masses, capacity));
				},
			),
			{ numRuns: 400, seed: 1 },
		);
	});

	test("are those of brute force where masses are no round numbers", () => {
		fc.assert(
			fc.property(
				fc.array(fc.double({ min: 1, max: 30, noNaN: true }), {
					minLength: 1,
					maxLength: 7,
				}),
				(masses) => {
					const best = byBruteForce(masses, 45);
					const found = loadOf(mixerLoads(castingsOf(masses), 45));
					const heaviest = (loads: number[]) =>
						Math.max(...levels(masses, loads));
					expect(Math.max(...found)).toBe(Math.max(...best));
					expect(heaviest(found) / heaviest(best)).toBeCloseTo(1, 8);
				},
			),
			{ numRuns: 300, seed: 2 },
		);
	});

	/** Masses in grams, so that one gram less is the next lighter load that there could be. */
	test.each([
		[16, 18, 50, 100, 12],
		[16, 5, 20, 60, 12],
		[16, 1, 100, 150, 12],
		[16, 30, 70, 100, 12],
	])(
		"of %i castings of %i to %i kg in a mixer of %i are the fewest, the heaviest the lightest, by every subset",
		(count, least, most, capacityKg, numRuns) => {
			const gram = fc.integer({ min: least * 1000, max: most * 1000 });
			fc.assert(
				fc.property(
					fc.array(gram, { minLength: count, maxLength: count }),
					(masses) => expectBestLoads(masses, capacityKg * 1000),
				),
				{ numRuns, seed: 6 },
			);
		},
	);

	test.each(OPTIMA)(
		"of $masses.length castings, the best of which is known: $loads loads of $heaviest g at most",
		({ masses, capacity, loads, heaviest }) => {
			const sums = levels(
				masses,
				loadOf(mixerLoads(castingsOf(masses), capacity)),
			);
			expect([sums.length, Math.max(...sums)]).toEqual([loads, heaviest]);
			const all = masses.reduce((sum, mass) => sum + mass, 0);
			expect(Math.ceil(all / capacity)).toBe(loads);
		},
	);

	test("never exceed the capacity nor first fit decreasing, up to 200 castings", () => {
		fc.assert(
			fc.property(
				fc.array(fc.double({ min: 0.2, max: 40, noNaN: true }), {
					minLength: 1,
					maxLength: 200,
					size: "max",
				}),
				fc.double({ min: 40, max: 120, noNaN: true }),
				(masses, capacity) => {
					const rows = mixerLoads(castingsOf(masses), capacity);
					expect(loadOf(rows)).toHaveLength(masses.length);
					const sums = levels(masses, loadOf(rows));
					expect(Math.max(...sums)).toBeLessThanOrEqual(
						capacity * (1 + 1.0001e-9),
					);
					expect(sums.length).toBeLessThanOrEqual(
						firstFitDecreasing(masses, capacity),
					);
				},
			),
			{ numRuns: 500, seed: 3 },
		);
	}, 120_000);

	/** Loads known to fill up exactly: any fewer, or a lighter heaviest load, is impossible. */
	test.each([3, 4, 6, 8])(
		"24 castings cut from %i full loads are found again",
		(count) => {
			fc.assert(
				fc.property(
					fc.array(
						fc.array(fc.integer({ min: 1, max: 1000 }), {
							minLength: 24 / count,
							maxLength: 24 / count,
						}),
						{ minLength: count, maxLength: count },
					),
					fc.infiniteStream(fc.nat()),
					(loads, shuffle) => {
						const masses = loads.flatMap((parts) => {
							const whole = parts.reduce((sum, part) => sum + part, 0);
							return parts.map((part) => (part / whole) * 50);
						});
						const order = masses
							.map((mass) => ({ mass, key: shuffle.next().value }))
							.sort((a, b) => a.key - b.key)
							.map(({ mass }) => mass);
						const rows = mixerLoads(castingsOf(order), 50);
						expect(Math.max(...rows.map(({ load }) => load))).toBe(count);
					},
				),
				{ numRuns: 10, seed: 4 },
			);
		},
	);

	test("24 castings in the capacity's halves and thirds", () => {
		// Bin packing where heaviest first needs one load more: 6 × (45 + 35 + 20), 3 × (50 + 50).
		const masses = [
			...Array(6).fill([45, 35, 20]).flat(),
			...Array(3).fill([50, 50]).flat(),
		];
		const rows = mixerLoads(castingsOf(masses), 100);
		expect(Math.max(...rows.map(({ load }) => load))).toBe(9);
	});

	test("a casting above the capacity takes equal loads of its own, in its place", () => {
		// 130 kg in loads of 60: ⌈130/60⌉ = 3 of 43.33 kg, which nothing shares
		const rows = mixerLoads(
			[
				{ name: "a", massKg: 20 },
				{ name: "long", massKg: 130 },
				{ name: "b", massKg: 30 },
				{ name: "c", massKg: 40 },
			],
			60,
		);
		expect(
			rows.map(({ load, name, massKg, capacityShare }) => [
				load,
				name,
				Number(massKg.toFixed(6)),
				Number(capacityShare.toFixed(6)),
			]),
		).toEqual([
			[1, "a", 20, 0.833333],
			[1, "b", 30, 0.833333],
			[2, "long", 43.333333, 0.722222],
			[3, "long", 43.333333, 0.722222],
			[4, "long", 43.333333, 0.722222],
			[5, "c", 40, 0.666667],
		]);
	});

	test("a mass that is the capacity but for rounding fits, twice the capacity takes two", () => {
		expect(
			mixerLoads([{ name: "a", massKg: 60 * (1 + 5e-10) }], 60),
		).toHaveLength(1);
		expect(
			mixerLoads([{ name: "a", massKg: 120 * (1 + 5e-10) }], 60),
		).toHaveLength(2);
		expect(mixerLoads(castingsOf([0.1, 0.2, 0.3 + 1e-12]), 0.6)).toHaveLength(
			3,
		);
	});

	test.each([
		["all equal", (i: number) => 7 + 0 * i],
		["nearly equal", (i: number) => 10 + 0.01 * Math.sin(i * i)],
		["two sizes", (i: number) => (i % 2 ? 10 : 6) + 0.01 * Math.sin(i * i)],
		["doubling", (i: number) => 2 ** (i % 6) / 2],
		["four sizes", (i: number) => [3.1, 4.7, 5.9, 7.3][i % 4] ?? 0],
		["any", (i: number) => 5 + 4.9 * Math.sin(i * i)],
	])("%s: an answer in time for 24, 40 and 200 castings", (_, mass) => {
		for (const count of [24, 40, 200]) {
			const masses = Array.from({ length: count }, (_, i) => mass(i));
			const start = process.cpuUsage();
			mixerLoads(castingsOf(masses), 33);
			expect(process.cpuUsage(start).user / 1e6).toBeLessThan(2);
		}
	});

	test.each([
		["any", (i: number) => 20 + 19 * Math.sin(i * i)],
		["more than half", (i: number) => 45 + 14 * Math.sin(i * i)],
		["light", (i: number) => 1.1 + Math.sin(i * i)],
		["four sizes", (i: number) => [40, 25, 30, 20][i % 4] ?? 0],
		["two sizes", (i: number) => (i % 2 ? 10.3 : 6.1)],
		["all equal", () => 7],
		["nothing", () => 0],
	])(
		"%s: 10,000 castings within a second, as well as by first fit",
		(_, mass) => {
			const masses = Array.from({ length: 10_000 }, (_, i) => mass(i));
			const start = process.cpuUsage();
			const rows = mixerLoads(castingsOf(masses), 60);
			expect(process.cpuUsage(start).user / 1e6).toBeLessThan(1);
			const sums = levels(masses, loadOf(rows));
			expect(Math.max(...sums)).toBeLessThanOrEqual(60 * (1 + 1e-9));
			expect(sums.length).toBeLessThanOrEqual(firstFitDecreasing(masses, 60));
			const order = rows.map(({ load, name }) => load * 10_000 + Number(name));
			expect(order).toEqual([...order].sort((a, b) => a - b));
			const firsts = sums.map((_, load) =>
				rows.findIndex((row) => row.load === load + 1),
			);
			const names = firsts.map((at) => Number(rows[at]?.name));
			expect(names).toEqual([...names].sort((a, b) => a - b));
		},
	);
});
