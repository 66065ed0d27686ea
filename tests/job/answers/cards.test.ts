/** The slab's card by hand: plain arithmetic on the mix's parts, shares and settings, nothing of `src/`. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Basis, basisOf } from "../../../src/job/answers/basis";
import {
	type CardAnswer,
	cardAnswers,
} from "../../../src/job/answers/card/cardanswers";
import { cardJson } from "../../../src/job/answers/card/cardjson";
import { planCheck } from "../../../src/job/answers/card/planfit";
import type { CardStep } from "../../../src/job/answers/card/stepline";
import type { JobFile, PourInput } from "../../../src/job/jobfile";
import guesthouse from "../../../templates/demo/guesthouse.json";
import { starterStudio } from "../../../templates/starterstudio";
import { BATCH, BINDER, onScale, PARTS, slab } from "../../sheets/onejob";
import { known, poured, ROWS, slabCore, studio, withDampSand } from "./slabjob";

const CEMENT = "White cement";
const EACH = [46, 8, 46, 15.5, 0.9, 0.7, 0.35];

// Deep: 25% of the mix, 4% of binder, wetted with half a gram of water a gram. That water stays out of the mixer.
const WET = 1.5;
const HELD = BATCH * 0.25 * 0.04 * BINDER * 0.5;
const MIXED = BATCH - HELD;
const RESERVE = onScale(MIXED * 0.03, 0.02);
const TONED = MIXED - RESERVE;
/** All of the binder is in what is mixed. */
const BINDER_MIXED = (BINDER * BATCH) / MIXED;

function cardOf(basis: Basis, load = 1): CardAnswer {
	const card = cardAnswers(basis)[load - 1];
	if (!card) throw new Error(`There is no load ${load}`);
	return card;
}
/** How far off a dose may be, by hand. */
const uncertainty = (step: CardStep | undefined): number =>
	Math.hypot(
		(2 * Math.SQRT2 * 0.1) / Math.sqrt(12) / (step?.amount ?? 0),
		(Math.sqrt(3) * 2 * Math.SQRT2 * 0.02) / Math.sqrt(12) / (TONED / 4),
	);
const stepsOf = (basis: Basis): readonly CardStep[] =>
	known(cardOf(basis).steps);
const ingredient = (index: number): string => String(ROWS[index]?.ingredient);

const PLAN = known(cardOf(slabCore()).plan);

describe("weigh-out", () => {
	test("parts of the batch, less the water that comes with pigment", () => {
		const card = cardOf(slabCore());
		expect(known(card.waterHeld)).toBeCloseTo(HELD, 9);
		expect(known(card.total)).toBeCloseTo(MIXED, 9);
		known(card.weighOut).forEach(({ mass, shown, weighed }, i) => {
			const expected =
				(BATCH * (EACH[i] ?? 0)) / PARTS - (EACH[i] === 15.5 ? HELD : 0);
			expect(mass).toBeCloseTo(expected, 9);
			// Tared, k = 2: 2 · √2 · 20 g / √12 are 16 g. Of 0.89 kg of reducer that is more than a third of 3%, of 1.4 and 0.7
			// kg of fiber more than a third of 2%: these go on the gram scale.
			expect(shown).toBeCloseTo(
				onScale(expected, expected < 1.5 ? 0.0001 : 0.02),
				9,
			);
			expect(weighed).toBeNull();
		});
	});

	test("whole bags and the rest", () => {
		// Cement in bags of 25 kg.
		const cement = onScale((BATCH * 46) / PARTS, 0.02);
		const bags = Math.floor(cement / 25);
		expect(bags).toBe(1);
		expect(known(cardOf(slabCore()).weighOut)[0]?.say.say).toBe(
			`1 of 25 kg + ${Number((cement - 25).toFixed(3))} kg`,
		);
	});

	test("too much of one raises the others, and what is there already is said", () => {
		const sand = ((BATCH * 46) / PARTS) * 1.1;
		const cement = (BATCH * 46) / PARTS;
		const card = cardOf(
			poured({
				load: 1,
				weighed: { [ingredient(2)]: sand, [ingredient(0)]: cement },
			}),
		);
		const [first] = known(card.weighOut);
		expect(first?.mass).toBeCloseTo(cement * 1.1, 9);
		expect(first?.say).toEqual({
			state: "look",
			say: `Look: ${Number((cement * 0.1).toFixed(2))} kg more`,
		});
		expect(known(card.total)).toBeCloseTo(MIXED * 1.1, 9);
		expect(known(card.reserve)).toBeCloseTo(
			onScale(MIXED * 1.1 * 0.03, 0.02),
			9,
		);
	});

	test("a batch that was raised beyond the mixer is a look", () => {
		const twice = (BATCH * 46 * 2) / PARTS;
		const card = cardOf(
			poured({ load: 1, weighed: { [CEMENT]: twice }, planNumber: PLAN }),
		);
		expect(MIXED * 2).toBeGreaterThan(150);
		expect(card.check.say).toBe(
			`Look: White cement: ${Number((twice / 2).toFixed(2))} kg too much: take it out and type what is left. Raising the others would make ${Number((MIXED * 2).toFixed(2))} kg, and the mixer takes 150 kg`,
		);
	});

	test("damp sand weighs more, and its water counts", () => {
		const damp = withDampSand({ moisture: 0.05, absorption: 0.01 });
		const lines = known(cardOf(slabCore({}, damp)).weighOut);
		const sand = (BATCH * 46) / PARTS;
		// ACI 211.1: 5% more on the scale, 4% of it free water.
		expect(lines[2]?.mass).toBeCloseTo(sand * 1.05, 9);
		expect(lines[3]?.mass).toBeCloseTo(
			(BATCH * 15.5) / PARTS - HELD - sand * 0.04,
			9,
		);
	});

	test("no mix has water to give beyond its own", () => {
		const wet = withDampSand({ moisture: 0.5 });
		const card = cardOf(slabCore({}, wet));
		expect(card.water.waterCheck.say).toBe(
			"Look: pigment, damp material and ice bring more water than the mix has",
		);
		expect(cardJson(card)).toMatchObject({
			weighOut: null,
			steps: null,
			total: null,
			state: "look",
		});
	});
});

describe("water and ice", () => {
	const SOLIDS = (BATCH * (PARTS - 15.5 - waterOfReducer())) / PARTS;
	const WATER = BATCH - SOLIDS - HELD;

	/** The reducer counts as water where the studio says so. */
	function waterOfReducer(): number {
		return EACH.reduce(
			(total, part, i) =>
				part !== 15.5 && ROWS[i]?.group === "water" ? total + part : total,
			0,
		);
	}
	const inDegrees = (dryTemperature: number, waterTemperature?: number) =>
		waterTemperature === undefined
			? { load: 1, dryTemperature }
			: { load: 1, dryTemperature, waterTemperature };

	test("water that brings the mix to 20 °C", () => {
		// ACI 305R: [T (0.22 S + W) − 0.22 S Ts] / W.
		const { water } = cardOf(poured(inDegrees(24)));
		expect(known(water.waterC)).toBeCloseTo(
			(20 * (0.22 * SOLIDS + WATER) - 0.22 * SOLIDS * 24) / WATER,
			9,
		);
	});

	test("colder than freezing is ice, hotter than 60 °C warm solids", () => {
		const sayOf = (dry: number) => cardOf(poured(inDegrees(dry))).water.waterC;
		expect(sayOf(45)).toEqual({ look: "colder than freezing: cool with ice" });
		expect(sayOf(-20)).toEqual({
			look: "hotter than 60 °C (140 °F): warm the solids",
		});
		expect(cardOf(slabCore()).water.waterC).toEqual({
			missing: "type the temperature of the dry material",
		});
	});

	test("ice in place of water", () => {
		const pour: PourInput = { ...inDegrees(30, 22), ice: "yes" };
		const card = cardOf(poured(pour));
		// [0.22 S Ts + W Tw − T (0.22 S + W)] / (Tw + 80)
		const ice =
			(0.22 * SOLIDS * 30 + WATER * 22 - 20 * (0.22 * SOLIDS + WATER)) /
			(22 + 80);
		const lines = known(card.weighOut);
		expect(lines[7]).toMatchObject({ name: "Ice, crushed", weighed: null });
		expect(lines[7]?.mass).toBeCloseTo(ice, 9);
		expect(lines[3]?.mass).toBeCloseTo((BATCH * 15.5) / PARTS - HELD - ice, 9);
		expect(known(card.water.mixC)).toBeCloseTo(20, 9);
		expect(known(card.total)).toBeCloseTo(MIXED, 9);
		expect(cardOf(poured({ load: 1, ice: "yes" })).weighOut).toEqual({
			missing: "type the temperature of the dry material",
		});
	});

	test("a mix warmer than wanted is a look", () => {
		const { water } = cardOf(poured(inDegrees(30, 25)));
		expect(known(water.mixC)).toBeCloseTo(
			(0.22 * SOLIDS * 30 + WATER * 25) / (0.22 * SOLIDS + WATER),
			9,
		);
		expect(water.warmth.say).toBe("Look: warmer than wanted");
		expect(cardOf(poured({ ...inDegrees(20, 140) })).water.mixC).toMatchObject({
			look: expect.stringContaining("water is at"),
		});
	});
});

describe("the pull-off plan", () => {
	test("reserve, pull off, add, keep", () => {
		const scale = (dose: number) => 1 + BINDER_MIXED * WET * dose;
		const grams = TONED * 0.25 * BINDER_MIXED * 0.04 * 1000;
		const expected = [
			[0, "pull off", "reserve", "mixer", RESERVE, 0.02],
			[1, "pull off", "Plain", "mixer", TONED * 0.75, 0.02],
			[2, "add", "Umber", "mixer", grams * WET, 0.1],
			[3, "keep", "Deep", "mixer", TONED * 0.25 * scale(0.04), 0.02],
		] as const;
		const steps = stepsOf(slabCore());
		expect(steps).toHaveLength(expected.length);
		expected.forEach(([number, act, what, vessel, amount, division], i) => {
			expect(steps[i]).toMatchObject({ number, do: act, what, vessel });
			expect(steps[i]?.amount).toBeCloseTo(amount, 9);
			// 0.3 kg of what is kept sticks.
			expect(steps[i]?.shown).toBeCloseTo(
				onScale(amount - (act === "keep" ? 0.3 : 0), division),
				9,
			);
		});
		expect(steps[2]).toMatchObject({
			unit: "g",
			words: "Add Umber to the mixer",
		});
		expect(steps[2]?.dry).toBeCloseTo(grams, 9);
		expect(steps[2]?.gramsPerLeft).toBeCloseTo(
			BINDER_MIXED * 0.04 * 1000 * WET,
			9,
		);
		expect(steps[3]?.say.say).toBe("to place; 0.3 kg more sticks");
	});

	test("a tone that no other leads to gets a bucket, of every load", () => {
		// Shell 40%, Sand 25% with Umber, Bark 15% with more of it and Black; Slate 20% has more Black than Bark.
		const cards = cardAnswers(basisOf(studio, guesthouse as JobFile));
		expect(cards.map(({ castings }) => castings.length)).toEqual([1, 4]);
		for (const { steps, toToneMass } of cards) {
			const plan = known(steps).filter(({ number }) => number > 0);
			expect(plan.map(({ words }) => words)).toEqual([
				"Fill bucket A from the mixer",
				"Pull off Shell from the mixer",
				"Add Umber to the mixer",
				"Pull off Sand from the mixer",
				"Add Umber to the mixer",
				"Add Black to the mixer",
				"Keep Bark in the mixer",
				"Add Black to bucket A",
				"Keep Slate in bucket A",
			]);
			expect(plan[0]).toMatchObject({ do: "fill", what: "bucket A" });
			expect(plan[0]?.amount).toBeCloseTo(known(toToneMass) * 0.2, 9);
			expect(plan[1]?.amount).toBeCloseTo(known(toToneMass) * 0.4, 9);
			// Umber is 25% × 1.5% and 15% × 4%, in two additions to what the mixer then holds: 40% to 1.5%, 15% from there to 4%.
			const [first, second] = [plan[2]?.dry ?? 0, plan[4]?.dry ?? 0];
			expect(second / first).toBeCloseTo((0.15 * 0.025) / (0.4 * 0.015), 9);
			expect((plan[7]?.dry ?? 0) / first).toBeCloseTo(
				(0.2 * 0.02) / (0.4 * 0.015),
				9,
			);
		}
	});

	test("what was weighed changes what comes after it, in its load alone", () => {
		// 3 kg of reserve, 30 kg of Plain: Umber is for what is left.
		const steps = stepsOf(poured({ load: 1, steps: { 0: 3, 1: 30 } }));
		const left = MIXED - 3 - 30;
		expect(steps.map(({ weighed }) => weighed)).toEqual([3, 30, null, null]);
		expect(steps[2]?.amount).toBeCloseTo(
			left * BINDER_MIXED * 0.04 * 1000 * WET,
			9,
		);
		const other = stepsOf(poured({ load: 2, steps: { 1: 30 } }));
		expect(other[2]?.amount).toBeCloseTo(
			TONED * 0.25 * BINDER_MIXED * 0.04 * 1000 * WET,
			9,
		);
	});

	test("too much pigment is said, and how much mix brings it back", () => {
		const steps = stepsOf(poured({ load: 1, steps: { 1: TONED * 0.75 } }));
		const grams = steps[2]?.amount ?? 0;
		const tooMuch = stepsOf(
			poured({ load: 1, steps: { 1: TONED * 0.75, 2: grams * 1.1 } }),
		);
		expect(tooMuch[3]?.say.say).toBe(
			`Look: 10% too strong: fold in ${Number(onScale(TONED * 0.25 * 0.1, 0.02).toFixed(2))} kg of the reserve to bring it back`,
		);
	});

	test("a weight that cannot be makes the steps of its load a look", () => {
		const two = { ...slab.pieces[0], quantity: 2 };
		for (const [pour, say] of [
			[
				{ load: 1, steps: { 1: -1 } },
				/^Look: step 1: weighed must be 0 or more, got -1 kg/,
			],
			[
				{ load: 1, steps: { 1: 1000 } },
				/^Look: step 1: weighed is more than there is, got 1000 kg/,
			],
			[
				{ load: 1, steps: { 0: 1000 } },
				/^Look: the reserve must be less than there is, got 1000 kg/,
			],
			[
				{ load: 1, steps: { 0: -1 } },
				/^Look: the reserve must be 0 or more, got -1 kg/,
			],
			[
				{ load: 1, steps: { 9: 1 } },
				/^Look: step 9: weighed must be blank below the last step/,
			],
			[
				{ load: 1, steps: { last: 1 } },
				/^Look: a weight is typed for step last/,
			],
			[
				{ load: 1, weighed: { [CEMENT]: -5 } },
				/^Look: the weight of White cement must be 0 or more, got -5/,
			],
			[
				{ load: 1, weighed: { "Ice, crushed": 2 } },
				/^Look: the weight of Ice, crushed must be blank/,
			],
			[
				{ load: 1, weighed: { Gravel: 2 } },
				/^Look: a weight is typed for Gravel, which the mix does not have/,
			],
		] as const) {
			const basis = slabCore({
				pieces: [two],
				pours: [{ ...pour, planNumber: 1 } as PourInput],
			});
			const [wrong, right] = cardAnswers(basis);
			expect(wrong?.steps).toHaveProperty("look");
			expect(cardJson(wrong as CardAnswer).steps).toBeNull();
			expect(known((wrong as CardAnswer).weighOut)[1]?.mass).toBeCloseTo(
				(BATCH * 8) / PARTS,
				9,
			);
			expect(
				known((right as CardAnswer).steps).map(({ what }) => what),
			).toEqual(["reserve", "Plain", "Umber", "Deep"]);
			expect(wrong?.times.timeCheck.say).toMatch(say);
			expect(right?.check).toEqual({ state: "fine", say: "fine" });
		}
	});

	test("a tone named as a bucket is pulled off, not filled", () => {
		const [, first] = stepsOf(
			slabCore({
				tones: [
					{ name: "bucket gray", share: 0.75 },
					{ name: "Deep", share: 0.25, doses: { Umber: 0.04 } },
				],
			}),
		);
		expect(first).toMatchObject({
			do: "pull off",
			words: "Pull off bucket gray from the mixer",
		});
	});

	test("a pigment that the gram scale cannot weigh is a look", () => {
		const coarse = {
			...studio,
			settings: { ...studio.settings, gram_division: 500 },
		};
		const steps = known(cardOf(slabCore({}, coarse)).steps);
		// Tared, k = 2: 2 · √2 · 500 g / √12 of the pigment's grams; the mix, weighed three times, adds next to nothing.
		const grams = TONED * 0.25 * BINDER_MIXED * 0.04 * WET * 1000;
		const off = Math.hypot(
			(2 * Math.SQRT2 * 500) / Math.sqrt(12) / grams,
			(Math.sqrt(3) * 2 * Math.SQRT2 * 0.02) / Math.sqrt(12) / (TONED / 4),
		);
		expect(steps[2]?.doseOff).toBeCloseTo(off, 9);
		expect(steps[2]?.say.say).toBe(
			`Look: too little for the gram scale: ±${Number((off * 100).toPrecision(2))}% (k = 2)`,
		);
		const fine = stepsOf(slabCore())[2];
		expect(fine?.say).toEqual({
			state: "fine",
			say: `with its water; ${Number((grams / WET).toFixed(1))} g dry; ±${Number((uncertainty(fine) * 100).toPrecision(2))}% (k = 2)`,
		});
	});

	test("all that is toned and kept apart is what was mixed, whatever was weighed", () => {
		const undosed = (basis: Basis) => {
			const steps = stepsOf(basis);
			const [reserve, plain, umber] = steps;
			const kept = steps[3];
			return (
				(reserve?.weighed ?? reserve?.amount ?? 0) +
				(plain?.weighed ?? plain?.amount ?? 0) +
				// What is kept holds the pigment that was added.
				(kept?.amount ?? 0) -
				(umber?.weighed ?? umber?.amount ?? 0) / 1000
			);
		};
		fc.assert(
			fc.property(
				fc.double({ min: 0.01, max: 5, noNaN: true }),
				fc.double({ min: 0.1, max: 60, noNaN: true }),
				fc.double({ min: 0.1, max: 2000, noNaN: true }),
				(reserve, plain, umber) => {
					const basis = poured({
						load: 1,
						steps: { 0: reserve, 1: plain, 2: umber },
					});
					expect(undosed(basis)).toBeCloseTo(MIXED, 6);
				},
			),
			{ numRuns: 30 },
		);
		expect(undosed(slabCore())).toBeCloseTo(MIXED, 9);
	});
});

test("US: amounts in pounds on a scale of 0.05 lb, pigment in grams", () => {
	const basis = basisOf(starterStudio("us"), {
		...slab,
		units: "us",
		pieces: [
			{
				name: "Slab",
				quantity: 1,
				shape: "rectangle",
				a: "1000 mm",
				b: "1000 mm",
				thickness: "50 mm",
			},
		],
	} as JobFile);
	const pounds = MIXED / 0.45359237;
	const card = cardOf(basis);
	const kept = onScale(pounds * 0.03, 0.05);
	expect(known(card.total)).toBeCloseTo(pounds, 9);
	const [reserve, plain, umber] = known(card.steps);
	expect(reserve?.shown).toBeCloseTo(kept, 9);
	expect(plain?.shown).toBeCloseTo(onScale((pounds - kept) * 0.75, 0.05), 9);
	expect(umber?.amount).toBeCloseTo(
		(pounds - kept) * 453.59237 * 0.25 * BINDER_MIXED * 0.04 * WET,
		6,
	);
});

describe("the plan's number", () => {
	const plan = PLAN;
	const weighed: PourInput = { load: 1, steps: { 1: 30 } };

	test.each([
		[undefined, { load: 1, planNumber: 1234 }, "fine"],
		["none", weighed, "Look: type the plan number"],
		["same", { ...weighed, planNumber: plan }, "fine"],
		["other", { ...weighed, planNumber: plan + 1 }, "Look: weights were typed"],
	])("%s", (fit, pour, say) => {
		const basis = poured(pour);
		expect(cardOf(basis).fit).toBe(fit);
		expect(planCheck(basis).say).toContain(say);
	});

	test("a changed tone makes another plan of what was weighed", () => {
		const basis = slabCore({
			pours: [{ ...weighed, planNumber: plan }],
			tones: [
				{ name: "Plain", share: 0.7 },
				{ name: "Deep", share: 0.3, doses: { Umber: 0.04 } },
			],
		});
		expect(cardOf(basis).fit).toBe("other");
	});
});

describe("times", () => {
	test("steps left, and the last tone placed past midnight", () => {
		// 45 minutes at 20 °C; three steps of 1.5 minutes, one of them weighed.
		const { times } = cardOf(
			poured({
				load: 1,
				mixTemperature: 20,
				waterInAt: "23:50",
				lastPlacedAt: "0:45",
				steps: { 1: 30 },
			}),
		);
		expect(known(times.workingMinutes)).toBeCloseTo(45, 9);
		expect(known(times.minutesLeft)).toBe(3);
		expect(known(times.placeBy)).toBe("0:35");
		expect(times.placedSay.say).toBe("Look: 55 minutes after water in");
		expect(times.timeCheck.say).toBe("fine");
		expect(times.sinceLoadBefore).toBeUndefined();
	});

	test("steps that take longer than the mix works are a look", () => {
		// ASTM C1074's Arrhenius form with 5000 K: 45 minutes at 20 °C are a minute or two at 100 °C.
		const { times } = cardOf(poured({ load: 1, mixTemperature: 100 }));
		expect(known(times.workingMinutes)).toBeCloseTo(
			45 * Math.exp(5000 * (1 / 373.15 - 1 / 293.15)),
			9,
		);
		expect(times.timeCheck.say).toBe(
			`Look: mixing 6, 3 steps 4.5 and placing 10 take 21 minutes, longer than the mix works (${Math.round(45 * Math.exp(5000 * (1 / 373.15 - 1 / 293.15)))})`,
		);
	});

	test("what is still to do: mixing, the steps, placing", () => {
		const leftOf = (pour: Omit<PourInput, "load">) =>
			known(cardOf(poured({ load: 1, ...pour })).times.minutesLeft);
		// 6 minutes to mix, three steps of 1.5, 10 to place.
		expect(leftOf({})).toBeCloseTo(20.5, 9);
		expect(leftOf({ steps: { 1: 30 } })).toBeCloseTo(13, 9);
		expect(leftOf({ steps: { 1: 30 }, lastPlacedAt: "9:00" })).toBeCloseTo(
			3,
			9,
		);
	});

	test("what is not typed is not known", () => {
		const { times } = cardOf(slabCore());
		expect(times.workingAt.say).toBe("not known yet: type the mix temperature");
		expect(times.placeBy).toHaveProperty("missing");
	});

	test("minutes between two loads", () => {
		const basis = slabCore({
			pieces: [{ ...slab.pieces[0], quantity: 2 }],
			pours: [
				{ load: 1, waterInAt: "9:40" },
				{ load: 2, waterInAt: "10:25" },
			],
		});
		expect(
			known(cardOf(basis, 2).times.sinceLoadBefore ?? { missing: "" }),
		).toBe(45);
	});
});

test("a lay-up that nothing backs, and tones without a share, have no plan", () => {
	const layUp = { placing: "mold lay-up", faceDepth: 10 };
	expect(cardOf(slabCore(layUp)).check.say).toBe(
		"Look: choose the tone that backs it",
	);
	const backed = cardOf(slabCore({ ...layUp, backedWith: "Plain" }));
	// Toned face: 0.05 m³ less a core of 0.98 × 0.98 × 0.04 m; a quarter of it is Deep.
	const [, plain] = known(backed.steps);
	expect(plain?.amount).toBeCloseTo(
		known(backed.toToneMass) * (1 - (0.25 * (0.05 - 0.98 ** 2 * 0.04)) / 0.05),
		9,
	);
	const shareless = cardOf(slabCore({ tones: [{ name: "Plain" }] }));
	expect(shareless.check).toEqual({
		state: "unknown",
		say: "not known yet: the share of Plain",
	});
	const none = cardOf(slabCore({ tones: [{ name: "Plain", share: 0 }] }));
	expect(none.check).toEqual({
		state: "look",
		say: "Look: share must be above 0 for at least one tone, got 0",
	});
});

test("no load, no card", () => {
	expect(cardAnswers(slabCore({ mix: "unheard of" }))).toEqual([]);
});
