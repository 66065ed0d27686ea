import fc from "fast-check";
import { expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { number } from "../../src/functions/arguments";
import { type SheetFunction, sheetFunction } from "../../src/functions/declare";
import { registry } from "../../src/functions/index";
import { calls } from "./calls";
import { complaint } from "./verdict";

/** 100,000 calls and more together; those whose arithmetic is long have fewer. */
const RUNS = 2200;
const RUNS_OF: Record<string, number> = {
	MIXER_LOADS: 600,
	PULL_OFF_PLAN: 1000,
	DOSE_FOR_COLOR: 400,
	PIGMENTS_FOR_COLOR: 400,
	RECIPE_AFTER_CAST: 400,
	TONE_COLOR: 1000,
};
const runsOf = ({ name }: SheetFunction): number => RUNS_OF[name] ?? RUNS;

/** Fresh every time, unless told: what one run has not found, the next may. */
const SEED = process.env.TONEFOLD_SEED
	? Number(process.env.TONEFOLD_SEED)
	: undefined;

test("more than a hundred thousand calls are made", () => {
	expect(
		registry.reduce((sum, fn) => sum + runsOf(fn), 0),
	).toBeGreaterThanOrEqual(100_000);
});

test.each(registry.map((fn) => [fn.name, fn] as const))(
	"%s answers finite numbers, texts or one sentence, within a second, whatever it is given",
	(_, fn) => {
		fc.assert(
			fc.property(calls(fn), (call) => {
				expect(complaint(call)).toBeUndefined();
			}),
			{ numRuns: runsOf(fn), seed: SEED, endOnFailure: true },
		);
	},
);

const wrong = (compute: () => unknown): SheetFunction =>
	sheetFunction({
		name: "WRONG",
		group: "",
		summary: "",
		params: { a: number("") },
		answer: { text: "" },
		example: { shown: ["1"], values: [1], answer: 1, working: "" },
		source: "",
		compute,
	});

const refuse = (sentence: string) => () => {
	throw new InputError(sentence);
};

test.each([
	["a bug", () => (undefined as unknown as { a: number }).a, /not a sentence/],
	["several lines", refuse("a must be\nabove 0"), /several lines/],
	["no number", refuse("a must be above 0, got NaN"), /no person says/],
	["an object", refuse("a is [object Object]"), /no person says/],
	["a long sentence", refuse(`a is ${"x".repeat(500)}`), /signs long/],
	["hardly a word", refuse("no"), /no sentence/],
	[
		"no end",
		() => {
			const before = process.cpuUsage();
			while (process.cpuUsage(before).user < 1.1e6);
			return 1;
		},
		/took \d+ ms/,
	],
])("%s is found", (_, compute, sentence) => {
	expect(complaint({ fn: wrong(compute), args: [1] })).toMatch(sentence);
});

test("what a person typed may stand in a sentence", () => {
	const fn = wrong(refuse('a must be a number, got "NaN of undefined"'));
	expect(complaint({ fn, args: [1] })).toBeUndefined();
});
