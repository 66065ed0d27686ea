import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { vesselChains } from "../../src/calc/chains";
import { type PlanRow, pullOffRows } from "../../src/calc/pulloff";
import { pullOffSteps, type Step } from "../../src/calc/steps";
import { sum } from "../../src/calc/sum";
import type { Tone } from "../../src/calc/tones";

/** Few distinct values, so that tones are often comparable, equal, or of equal share. */
const tonesOf = (most: number) =>
	fc
		.record({
			pigments: fc.integer({ min: 1, max: 3 }),
			rows: fc.array(
				fc.record({
					share: fc.integer({ min: 1, max: 5 }),
					doses: fc.array(fc.integer({ min: 0, max: 4 }), {
						minLength: 3,
						maxLength: 3,
					}),
				}),
				{ minLength: 1, maxLength: most },
			),
		})
		.map(({ pigments, rows }) =>
			rows.map(
				({ share, doses }, i): Tone => ({
					name: `tone ${i}`,
					share,
					doses: doses.slice(0, pigments).map((dose) => dose / 100),
				}),
			),
		);

const batch = { massKg: 87.3, binderShare: 0.55 };

const planOf = (
	tones: readonly Tone[],
	weighedKg: readonly (number | undefined)[] = [],
): PlanRow[] =>
	pullOffRows({
		...batch,
		tones,
		steps: pullOffSteps(tones),
		weighedKg,
		refused: ({ row }) => new Error(`row ${row}`),
	});

const madeFrom = (a: Tone, b: Tone): boolean =>
	a.doses.every((dose, p) => dose <= (b.doses[p] ?? 0));

/** Every way to part some things into groups. */
function partitions(things: readonly number[]): number[][][] {
	const [first, ...rest] = things;
	if (first === undefined) return [[]];
	return partitions(rest).flatMap((groups) => [
		[[first], ...groups],
		...groups.map((group, i) => [
			[first, ...group],
			...groups.filter((_, j) => j !== i),
		]),
	]);
}

/** Weights of the vessels, heaviest first, of every way to dose the tones in some vessels. */
function coversByBruteForce(tones: readonly Tone[]): number[][] {
	const isChain = (group: readonly number[]) =>
		group.every((i) =>
			group.every((j) => {
				const a = tones[i];
				const b = tones[j];
				return a && b && (madeFrom(a, b) || madeFrom(b, a));
			}),
		);
	return partitions(tones.map((_, i) => i))
		.filter((groups) => groups.every(isChain))
		.map((groups) =>
			groups
				.map((group) => sum(group.map((i) => tones[i]?.share ?? 0)))
				.sort((a, b) => b - a),
		);
}

/** Fewest vessels first, then the heavier one at the first difference. */
function byRule(a: readonly number[], b: readonly number[]): number {
	if (a.length !== b.length) return a.length - b.length;
	const i = a.findIndex((weight, at) => weight !== b[at]);
	return i < 0 ? 0 : (b[i] ?? 0) - (a[i] ?? 0);
}

describe("vessels", { timeout: 60_000 }, () => {
	test("are the fewest, the heaviest first, as brute force finds them", () => {
		fc.assert(
			fc.property(tonesOf(6), (tones) => {
				const best = coversByBruteForce(tones).sort(byRule)[0] ?? [];
				const weights = vesselChains(tones).map((chain) =>
					sum(chain.map((i) => tones[i]?.share ?? 0)),
				);
				expect(weights).toEqual(best);
			}),
			{ numRuns: 500, seed: 1 },
		);
	});

	test("hold every tone once, each made from the one before it", () => {
		fc.assert(
			fc.property(tonesOf(14), (tones) => {
				const chains = vesselChains(tones);
				expect(chains.flat().sort((a, b) => a - b)).toEqual(
					tones.map((_, i) => i),
				);
				for (const chain of chains)
					for (const [i, tone] of chain.entries()) {
						const next = tones[chain[i + 1] ?? tone];
						expect(next && madeFrom(tones[tone] as Tone, next)).toBe(true);
					}
			}),
			{ seed: 2 },
		);
	});

	test("go to the earlier tone where shares are equal", () => {
		const tone = (name: string, doses: number[]): Tone => ({
			name,
			share: 1,
			doses,
		});
		expect(
			vesselChains([tone("red", [0.01, 0]), tone("black", [0, 0.01])]),
		).toEqual([[0], [1]]);
	});

	test("keep tones whose doses differ by rounding in table order", () => {
		const doses = [[0.3], [0.1 + 0.2], [0.1]];
		const tones = doses.map((dose, i) => ({
			name: `${i}`,
			share: 1,
			doses: dose,
		}));
		expect(vesselChains(tones)).toEqual([[2, 0, 1]]);
		expect(pullOffSteps(tones).map(({ kind }) => kind)).toEqual([
			"add",
			"pull off",
			"add",
			"pull off",
			"keep",
		]);
	});
});

type Give = Extract<Step, { tone: number }>;
const isGive = (step: Step): step is Give => "tone" in step;

/** What the plan's own numbers say was put in each vessel: a second account, kept by mass. */
function ledger(
	tones: readonly Tone[],
	rows: readonly PlanRow[],
	weighedKg: readonly (number | undefined)[],
) {
	const vessels = new Map<number, { mixKg: number; pigmentKg: number[] }>();
	const vessel = (n: number) => {
		const empty = { mixKg: 0, pigmentKg: [0, 0, 0] };
		const found = vessels.get(n) ?? empty;
		vessels.set(n, found);
		return found;
	};
	vessel(0).mixKg = batch.massKg;
	const given: { tone: number; mixKg: number; pigmentKg: number[] }[] = [];
	for (const [i, { step, amountKg }] of rows.entries()) {
		const doneKg = weighedKg[i] ?? amountKg;
		const from = vessel(step.vessel);
		const wholeKg = from.mixKg + sum(from.pigmentKg);
		if (step.kind === "add") {
			from.pigmentKg[step.pigment] =
				(from.pigmentKg[step.pigment] ?? 0) + doneKg;
			continue;
		}
		const part = step.kind === "keep" ? 1 : wholeKg > 0 ? doneKg / wholeKg : 0;
		const out = {
			mixKg: from.mixKg * part,
			pigmentKg: from.pigmentKg.map((kg) => kg * part),
		};
		from.mixKg -= out.mixKg;
		from.pigmentKg = from.pigmentKg.map(
			(kg, p) => kg - (out.pigmentKg[p] ?? 0),
		);
		if (step.kind === "fill") vessel(step.bucket).mixKg += out.mixKg;
		else given.push({ tone: step.tone, ...out });
	}
	expect(given.map(({ tone }) => tone).sort((a, b) => a - b)).toEqual(
		tones.map((_, i) => i),
	);
	return given;
}

/** Deviations of up to a fifth from what the plan says, at some of its rows. */
const deviations = fc.array(
	fc.option(fc.double({ min: 0.8, max: 1.2, noNaN: true }), {
		nil: undefined,
	}),
	{ maxLength: 40 },
);

/** What was weighed when some rows were off by a factor; a pull leaves something. */
function weighedBy(
	tones: readonly Tone[],
	factors: readonly (number | undefined)[],
): (number | undefined)[] {
	const weighed: (number | undefined)[] = [];
	for (const [i, step] of pullOffSteps(tones).entries()) {
		const factor = factors[i];
		const amountKg = planOf(tones, weighed)[i]?.amountKg ?? 0;
		const most =
			step.kind === "add" ? amountKg * 2 : amountKg / leaves(step) / 1.01;
		weighed.push(
			factor === undefined ? undefined : Math.min(amountKg * factor, most),
		);
	}
	return weighed;
}

const leaves = (step: Exclude<Step, { kind: "add" }>): number =>
	step.part / (step.part + step.later);

describe("pull-off plan", { timeout: 60_000 }, () => {
	test("every tone gets the doses and the share asked for", () => {
		fc.assert(
			fc.property(tonesOf(8), (tones) => {
				const total = sum(tones.map(({ share }) => share));
				for (const { tone, mixKg, pigmentKg } of ledger(
					tones,
					planOf(tones),
					[],
				)) {
					const wanted = tones[tone] as Tone;
					expect(mixKg).toBeCloseTo((batch.massKg * wanted.share) / total, 9);
					for (const [p, dose] of wanted.doses.entries())
						expect(
							(pigmentKg[p] ?? 0) / (mixKg * batch.binderShare),
						).toBeCloseTo(dose, 10);
				}
			}),
			{ seed: 3 },
		);
	});

	test("with weighed deviations, mass is kept and later additions make up what they can", () => {
		fc.assert(
			fc.property(tonesOf(8), deviations, (tones, factors) => {
				const weighed = weighedBy(tones, factors);
				const rows = planOf(tones, weighed);
				const given = ledger(tones, rows, weighed);
				const addedKg = sum(
					rows.map(({ step, amountKg }, i) =>
						step.kind === "add" ? (weighed[i] ?? amountKg) : 0,
					),
				);
				const outKg = sum(
					given.map(({ mixKg, pigmentKg }) => mixKg + sum(pigmentKg)),
				);
				expect(
					Math.abs(outKg - batch.massKg - addedKg) / batch.massKg,
				).toBeLessThan(1e-9);
				reachesWhatItCan(tones, rows, weighed, given);
			}),
			{ numRuns: 300, seed: 4 },
		);
	});

	/** A dose is the one asked for wherever its addition went as planned and the vessel was not above it already. */
	function reachesWhatItCan(
		tones: readonly Tone[],
		rows: readonly PlanRow[],
		weighed: readonly (number | undefined)[],
		given: ReturnType<typeof ledger>,
	): void {
		for (const { tone, mixKg, pigmentKg } of given) {
			const last = rows.findIndex(
				({ step }) => isGive(step) && step.tone === tone,
			);
			const wanted = tones[tone] as Tone;
			for (const [p, dose] of wanted.doses.entries()) {
				const reached = (pigmentKg[p] ?? 0) / (mixKg * batch.binderShare);
				const add = rows
					.slice(0, last)
					.map(
						({ step }) =>
							step.kind === "add" &&
							step.vessel === rows[last]?.step.vessel &&
							step.pigment === p,
					)
					.lastIndexOf(true);
				if (add < 0) expect(reached).toBeCloseTo(dose, 10);
				else if (weighed[add] === undefined && (rows[add]?.amountKg ?? 0) > 0)
					expect(reached).toBeCloseTo(dose, 10);
				else if (weighed[add] === undefined)
					expect(reached).toBeGreaterThanOrEqual(dose - 1e-12);
			}
		}
	}

	test("weighing exactly what the plan says changes nothing", () => {
		fc.assert(
			fc.property(tonesOf(8), (tones) => {
				const plan = planOf(tones);
				const again = planOf(
					tones,
					plan.map(({ amountKg }) => amountKg),
				);
				for (const [i, row] of plan.entries()) {
					expect(again[i]?.amountKg).toBeCloseTo(row.amountKg, 10);
					expect(again[i]?.misses).toEqual([]);
				}
			}),
			{ seed: 5 },
		);
	});

	test("a row depends only on the rows above it", () => {
		fc.assert(
			fc.property(tonesOf(8), fc.nat(), (tones, n) => {
				const plan = planOf(tones);
				const at = n % plan.length;
				const weighed = plan.map((row, i) =>
					i === at ? row.amountKg / 2 : undefined,
				);
				const again = planOf(tones, weighed);
				expect(again.slice(0, at)).toEqual(plan.slice(0, at));
				expect(again[at]?.amountKg).toBe(plan[at]?.amountKg);
				expect(again.map(({ step }) => step)).toEqual(
					plan.map(({ step }) => step),
				);
			}),
			{ seed: 6 },
		);
	});

	test("twenty tones are planned at once", () => {
		const tones = Array.from({ length: 20 }, (_, i) => ({
			name: `${i}`,
			share: 1,
			doses: [i / 100, (19 - i) / 100],
		}));
		const start = performance.now();
		expect(planOf(tones)).toHaveLength(19 + 20 + 38);
		expect(performance.now() - start).toBeLessThan(1000);
	});
});
