/** Mixer loads of many castings against every subset of them: minutes, so `npm run test:all` only. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { OPTIMA } from "./optima";
import { expectBestLoads, fewestByAllSubsets } from "./subsets";

describe("by every subset", { timeout: 600_000 }, () => {
	test.each(OPTIMA)(
		"$masses.length castings take $loads loads of $heaviest g at most, no fewer and no lighter",
		({ masses, capacity, loads, heaviest }) => {
			expect(fewestByAllSubsets(masses, capacity)).toBe(loads);
			expect(fewestByAllSubsets(masses, heaviest)).toBe(loads);
			expect(fewestByAllSubsets(masses, heaviest - 1)).toBeGreaterThan(loads);
		},
	);

	/** Masses in grams, so that one gram less is the next lighter load that there could be. */
	test.each([
		[20, 10, 30, 100, 12],
		[20, 20, 35, 100, 12],
		[24, 18, 50, 100, 4],
	])(
		"the loads of %i castings of %i to %i kg in a mixer of %i are the fewest, the heaviest the lightest",
		(count, least, most, capacityKg, numRuns) => {
			const gram = fc.integer({ min: least * 1000, max: most * 1000 });
			fc.assert(
				fc.property(
					fc.array(gram, { minLength: count, maxLength: count }),
					(masses) => expectBestLoads(masses, capacityKg * 1000),
				),
				{ numRuns, seed: 6, endOnFailure: true },
			);
		},
	);
});
