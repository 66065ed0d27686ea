import { expect, test } from "vitest";
import type { MixerLoad, MixerState } from "../../../src/sheets/messages";
import { stepsOf } from "../../../src/sidebar/mixer/steps";
import { CARD, load } from "./card";

const FIRST = load(1);

const steps = (now: Partial<MixerLoad> = {}, state: MixerState = CARD) =>
	stepsOf(state, FIRST, { ...FIRST, ...now });

const lines = (now: Partial<MixerLoad> = {}) =>
	steps(now).steps.map(
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
});

test("too much of an ingredient raises all that follows before the script has said so", () => {
	// By hand: 96.8 / 88 = 1.1; 22 × 1.1 = 24.2; 10 × 1.1 = 11; the rest, 110, takes 1.1 times everything.
	expect(lines({ mixed: [96.8, ""] })).toEqual([
		"Weigh Dry mix 96.8 kg",
		"Weigh Water 24.2 kg",
		"Pull off reserve, undosed 11 kg",
		"Add Umber 550 g",
		"Pull off light 82.9 kg",
		"Add Umber 412.5 g",
		"Keep dark 28.1 kg",
	]);
});

test("what was pulled off as the reserve is what the plan begins without", () => {
	// By hand: 110 − 12 = 98 kg: × 50% × 1% = 490 g
	expect(lines({ reserveWeighed: 12 })[3]).toBe("Add Umber 490 g");
});

test("a weight corrects the next amounts, and says how far the tone is off", () => {
	const { steps: all } = steps({ weights: [525] });
	// By hand: 525 g for 500 g is 5% too strong; of 75 kg, 5% more undosed mix brings it back: 3.75 kg.
	expect(all[4]?.remark).toBe(
		"5% too strong: fold in 3.75 kg of undosed mix to bring it back",
	);
	// 75 × (1 + 50% × 1.05%) = 75.394; 25 × 50% × (4% − 1.05%) = 368.75 g
	expect(all[4]?.amount).toBe(75.4);
	expect(all[5]?.amount).toBe(368.8);
});

test("what is asked is what the scale can show, with grams for each kilogram beside it", () => {
	const [, , , add, , second] = steps().steps;
	// 500 g / 100 kg; 375 g / 25 kg
	expect(add?.hint).toBe("Wetted, with its water: 5 g for each kg in it");
	expect(second?.hint).toBe("Wetted, with its water: 15 g for each kg in it");
});

test("a word on the card is told and does not stop the load", () => {
	const { steps: all, mistake } = steps({ mixed: ["a bag", ""] });
	expect(mistake).toContain('"a bag" for Dry mix');
	expect(all).toHaveLength(7);
	expect(steps({ weights: ["lots"] }).mistake).toContain('"lots" at step 1');
});

test("more than there is leaves the plan unsaid and says why", () => {
	expect(steps({ weights: [500, 200] }).mistake).toContain(
		"weighed is more than there is",
	);
});

test("without tones there is the weigh-out alone", () => {
	const { steps: all, mistake } = steps({}, { ...CARD, tones: [] });
	expect(all.map(({ id }) => id)).toEqual(["mixed1", "mixed2", "reserve"]);
	expect(mistake).toBe("");
});
