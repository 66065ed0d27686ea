import { describe, expect, test } from "vitest";
import { callFunction } from "../../src/functions/call";
import { PULL_OFF_PLAN } from "../../src/functions/pulloff";
import {
	MIX_TO_LIGHTEN,
	PIGMENT_GRAMS,
	PIGMENT_TO_DEEPEN,
	TONE_WEIGHTS,
} from "../../src/functions/tones";
import { close } from "./close";

describe("the table of tones", () => {
	test.each([
		[
			"two tones of one name",
			[
				["a", 1, 0.1],
				["A ", 1, 0.2],
			],
			[["p"]],
			"tones must each have a name of their own",
		],
		[
			"two pigments of one name",
			[["a", 1, 0.1, 0]],
			[["p", "P"]],
			"pigments must each have a name of their own",
		],
		[
			"too few columns",
			[["a", 1, 0.1]],
			[["p", "q"]],
			"tones has 1 columns of doses and pigments has 2 names",
		],
		[
			"a dose without a pigment",
			[["a", 1, 0.1, 0.2]],
			[["p"]],
			"tones has a dose in column 4, but pigments has only 1 name",
		],
		[
			"no share at all",
			[["a", 0, 0.1]],
			[["p"]],
			"share must be above 0 for at least one tone",
		],
		[
			"a negative share",
			[["a", -1, 0.1]],
			[["p"]],
			"share must be 0 or more, got -1",
		],
		[
			"a name of several lines as one line",
			[
				["a\nb", 1, 0.1],
				["a\nb", 1, 0.2],
			],
			[["p"]],
			'tones must each have a name of their own, got "a b" as number 1 and 2',
		],
		[
			"a dose typed in percent",
			[["a", 1, 4]],
			[["p"]],
			"between 0% and 100%, got 400% (type 4% or 0.04)",
		],
	])("refuses %s", (_, rows, names, message) => {
		expect(() => callFunction(PULL_OFF_PLAN, [rows, names, 100, 0.5])).toThrow(
			message,
		);
		expect(() => callFunction(TONE_WEIGHTS, [rows, names, 100, 0.5])).toThrow(
			message,
		);
	});
});

describe("TONE_WEIGHTS", () => {
	test("one row per tone, beside it, blank rows kept", () => {
		close(
			callFunction(TONE_WEIGHTS, [
				[
					["white", 1, "", ""],
					["", "", "", ""],
					["slate", 3, 0.01, 0.03],
					["off", 0, 0.5, ""],
					["", "", "", ""],
				],
				[["yellow", "black"]],
				200,
				0.25,
			]),
			[
				// 200 kg × 1/4
				[50, 50, 0, 0],
				["", "", "", ""],
				// 150 kg × 0.25 = 37.5 kg of binder: 1% is 375 g, 3% is 1125 g; 150 + 1.5 kg
				[150, 151.5, 375, 1125],
				[0, 0, 0, 0],
			],
		);
	});

	test("in pounds, pigment in grams", () => {
		// 100 lb × 0.5 × 2% = 1 lb
		close(callFunction(TONE_WEIGHTS, [[["a", 1, 0.02]], "p", 100, 0.5, "us"]), [
			[100, 101, 453.59237],
		]);
	});
});

describe("PIGMENT_GRAMS", () => {
	test("100 lb with half binder at 2% is one pound of pigment", () => {
		close(callFunction(PIGMENT_GRAMS, [100, 0.5, 0.02, "us"]), 453.59237);
	});
	test("a column of doses", () => {
		close(callFunction(PIGMENT_GRAMS, [10, 0.5, [[0.01], [""], [0.02]]]), [
			[50],
			[""],
			[100],
		]);
	});
});

describe("PIGMENT_TO_DEEPEN and MIX_TO_LIGHTEN", () => {
	test("deepen, then lighten, returns", () => {
		// 20.2 kg at 2% with half binder is 20 kg undosed.
		const grams = callFunction(PIGMENT_TO_DEEPEN, [20.2, 0.5, 0.02, 0.05]);
		close(grams, 300);
		const deeper = 20.2 + 0.3;
		// 20 kg × (5/2 − 1) = 30 kg: 50 kg undosed with 0.5 kg of pigment, 2% of 25 kg
		close(callFunction(MIX_TO_LIGHTEN, [deeper, 0.5, 0.05, 0.02]), 30);
	});
	test("equal doses need nothing", () => {
		close(callFunction(PIGMENT_TO_DEEPEN, [20, 0.5, 0.02, 0.02]), 0);
		close(callFunction(MIX_TO_LIGHTEN, [20, 0.5, 0.02, 0.02]), 0);
	});
	test("in pounds", () => {
		// 101 lb at 2% is 100 lb undosed; 1% of 50 lb is half a pound
		close(
			callFunction(PIGMENT_TO_DEEPEN, [101, 0.5, 0.02, 0.03, "us"]),
			226.796185,
		);
		close(callFunction(MIX_TO_LIGHTEN, [102, 0.5, 0.04, 0.02, "us"]), 100);
	});
	test.each([
		[
			PIGMENT_TO_DEEPEN,
			[20, 0.5, 0.03, 0.02],
			"dose_wanted must be 3% (dose_now) or more, got 2%",
		],
		[
			MIX_TO_LIGHTEN,
			[20, 0.5, 0.02, 0.03],
			"dose_wanted must be 2% (dose_now) or less, got 3%",
		],
		[PIGMENT_TO_DEEPEN, [20, 0.5, 0, 0], "dose_wanted must be above 0%"],
		[MIX_TO_LIGHTEN, [20, 0.5, 0.02, 0], "dose_wanted must be above 0%"],
	])("refuses the wrong way", (fn, args, message) => {
		expect(() => callFunction(fn, args)).toThrow(message);
	});
});
