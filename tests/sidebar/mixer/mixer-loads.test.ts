import { expect, test } from "vitest";
import type { JobFile, PourInput } from "../../../src/job/jobfile";
import { loadsAtMixer } from "../../../src/sidebar/mixer/mixer-loads";
import { pour, stateWith } from "./card";

/** The first of two loads with these weights on its card. */
function load(typed: Partial<PourInput> = {}, job: Partial<JobFile> = {}) {
	const state = stateWith({ pours: [pour(1, typed), pour(2)], ...job });
	const [first] = loadsAtMixer(state);
	if (!first) throw new Error("There is no load");
	return first;
}

const lines = (typed: Partial<PourInput> = {}) =>
	load(typed).steps.map(
		({ does, what, amount, scale }) =>
			`${does} ${what} ${amount} ${scale.unit}`,
	);

test("weigh out, keep a reserve, then the plan", () => {
	// Worked in card.ts.
	expect(lines()).toEqual([
		"Weigh Dry mix 88 kg",
		"Weigh Water 22 kg",
		"Pull off reserve, undosed 10 kg",
		"Add Umber 500 g",
		"Pull off light 75.4 kg",
		"Add Umber 375 g",
		"Keep dark 25.5 kg",
	]);
	expect(load().problems).toEqual([]);
	expect(load().card.castings).toEqual(["Shelf 1"]);
});

test("too much of an ingredient raises all that follows before the script has said so", () => {
	// By hand: 96.8 / 88 = 1.1; 22 × 1.1 = 24.2; 10 × 1.1 = 11; the rest, 110, takes 1.1 times everything.
	expect(lines({ weighed: { "Dry mix": 96.8 } })).toEqual([
		"Weigh Dry mix 96.8 kg",
		"Weigh Water 24.2 kg",
		"Pull off reserve, undosed 11 kg",
		"Add Umber 550 g",
		"Pull off light 82.9 kg",
		"Add Umber 412.5 g",
		"Keep dark 28.1 kg",
	]);
});

test("what is short of an ingredient that was weighed before is a problem", () => {
	// 24.2 − 22
	expect(load({ weighed: { Water: 22, "Dry mix": 96.8 } }).problems).toContain(
		"Water: 2.2 kg more",
	);
});

test("what was pulled off as the reserve is what the plan begins without", () => {
	// By hand: 110 − 12 = 98 kg: × 50% × 1% = 490 g
	expect(lines({ steps: { 0: 12 } })[3]).toBe("Add Umber 490 g");
});

test("a weight corrects the next amounts, and says how far the tone is off", () => {
	const { steps: all } = load({ steps: { 1: 525 } });
	// By hand: 525 g for 500 g is 5% too strong; of 75 kg, 5% more undosed mix brings it back: 3.75 kg.
	expect(all[4]?.remark).toBe(
		"5% too strong: fold in 3.8 kg of the reserve to bring it back",
	);
	// 75 × (1 + 50% × 1.05%) = 75.394; 25 × 50% × (4% − 1.05%) = 368.75 g
	expect(all[4]?.amount).toBe(75.4);
	expect(all[5]?.amount).toBe(368.8);
});

test("what is asked is what the scale can show, with grams for each kilogram beside it", () => {
	const [, , , add, , second, keep] = load().steps;
	// 500 g / 100 kg; 375 g / 25 kg
	// Tared, k = 2, the mix weighed twice: hypot(0.0816 / 500, √2 · 0.0816 / 100), the mix scale in tenths of a kilogram.
	expect(add?.hint).toBe("5 g for each kg in it; ±0.12% (k = 2)");
	// Three weighings of the mix: hypot(0.0816 / 375, √3 · 0.0816 / 25).
	expect(second?.hint).toBe("15 g for each kg in it; ±0.57% (k = 2)");
	expect(keep?.hint).toBe("About 0.2 kg of it sticks.");
});

test("in pounds, pigment in grams", () => {
	const { job, studio } = stateWith();
	const { settings } = studio;
	const [first] = loadsAtMixer({
		studio: { ...studio, settings: { ...settings, mixer_capacity: 300 } },
		// 43.3 in × 39.4 in × 1.6 in: the same parts of another mass.
		job: {
			...job,
			units: "us",
			pieces: [{ ...job.pieces[0], a: "43.3", b: "39.4", thickness: "1.6" }],
			pours: [],
		},
	});
	const [dry, water, , add] = first?.steps ?? [];
	// 43.3 × 39.4 × 1.6 in³ × 16.387064 cm³ × 2.5 g = 111.83 kg = 246.5 lb: 4/5 and 1/5 of it
	expect(dry).toMatchObject({ amount: 197.2, scale: { unit: "lb" } });
	expect(water).toMatchObject({ amount: 49.3, scale: { unit: "lb" } });
	// 246.5 lb × 10/11 = 224.1 lb = 101.65 kg: × 50% × 1%
	expect(add?.scale.unit).toBe("g");
	expect(add?.amount).toBeCloseTo(508.3, 0);
});

test("a word on the card is told and does not stop the load", () => {
	const {
		steps: all,
		problems,
		refusal,
	} = load({
		weighed: { "Dry mix": "a bag" },
	});
	expect(problems.join()).toContain(
		'the weight of Dry mix must be a number, or a text like "920 g", got "a bag"',
	);
	expect(all).toHaveLength(7);
	expect(all[0]?.weighed).toBe("a bag");
	expect(refusal).toBe("");
	const beside = load({ steps: { 1: "lots" } });
	expect(beside.problems.join()).toContain(
		'step 1 must be a number, got "lots"',
	);
	expect(beside.steps).toHaveLength(7);
});

test("more than there is leaves the plan unsaid and says why", () => {
	const { refusal, problems } = load({ steps: { 1: 500, 2: 200 } });
	expect(refusal).toContain("weighed is more than there is");
	expect(problems.join()).toContain("weighed is more than there is");
});

test("without tones it is not known yet how much water their pigment brings", () => {
	const { steps, problems, waits } = load({}, { tones: [] });
	expect(steps).toEqual([]);
	expect(problems).toEqual([]);
	expect(waits).toBe("not known yet: name the tones, and give each its share");
});

test("one plain tone has its ingredients, its reserve, and stays in the mixer", () => {
	const { steps, problems } = load(
		{},
		{ tones: [{ name: "plain", share: 1 }] },
	);
	expect(steps.map(({ id }) => id)).toEqual([
		"weighed Dry mix",
		"weighed Water",
		"step 0",
		"step 1",
	]);
	expect(problems).toEqual([]);
});

test("weights of another plan, and a tone over its limit, are problems", () => {
	const { problems } = load(
		{ steps: { 1: 500 }, planNumber: 1234 },
		{
			tones: [
				{ name: "light", share: 0.75, doses: { Umber: 0.01 } },
				// 6% of cement, which is 80% of binder: at most 4.8% of binder.
				{ name: "dark", share: 0.25, doses: { Umber: 0.05 } },
			],
		},
	);
	expect(problems.join()).toContain("begun with plan 1234");
	expect(problems).toContain("dark is over its pigment limit");
});
