import { describe, expect, test } from "vitest";
import { callFunction } from "../../src/functions/call";
import {
	DOSE_UNCERTAINTY,
	MIX_TO_LIGHTEN,
	PIGMENT_GRAMS,
	PIGMENT_HEADROOM,
	PIGMENT_TO_DEEPEN,
	PULL_OFF_PLAN,
	TONE_WEIGHTS,
} from "../../src/functions/tones";

const close = (got: unknown, expected: unknown): void => {
	if (Array.isArray(expected)) {
		expect(got).toHaveLength(expected.length);
		for (const [i, cell] of expected.entries())
			close((got as unknown[])[i], cell);
	} else if (typeof expected === "number")
		expect(got as number).toBeCloseTo(expected, 9);
	else expect(got).toBe(expected);
};

/** White, sand and ochre can be made one from the other; slate needs a bucket of its own. */
const tones = [
	["slate", 10, 0, 0.02],
	["ochre", 20, 0.03, 0],
	["white", 40, 0, 0],
	["sand", 30, 0.01, 0],
];
const pigments = [["yellow", "black"]];
const plan = (weighed?: unknown, units?: string, mass = 100) =>
	callFunction(PULL_OFF_PLAN, [tones, pigments, mass, 0.5, weighed, units]);

describe("PULL_OFF_PLAN", () => {
	test("worked by hand, metric", () => {
		// 100 kg, half of it binder. Mixer: white 40, sand 30, ochre 20 of 100; bucket A: slate 10.
		close(plan(), [
			[1, "mixer", "pull off", "bucket A", 10, "kg", 0, 90, ""],
			[2, "mixer", "pull off", "white", 40, "kg", 0, 50, ""],
			// 50 kg × 0.5 × 1% = 250 g
			[3, "mixer", "add", "yellow", 250, "g", 0.01, 50, ""],
			// 30 kg × (1 + 0.5 × 1%) = 30.15 kg
			[4, "mixer", "pull off", "sand", 30.15, "kg", 0.01, 20, ""],
			// 20 kg × 0.5 × (3% − 1%) = 200 g
			[5, "mixer", "add", "yellow", 200, "g", 0.03, 20, ""],
			// 20 kg × (1 + 0.5 × 3%) = 20.3 kg
			[6, "mixer", "keep", "ochre", 20.3, "kg", 0.03, 20, ""],
			// 10 kg × 0.5 × 2% = 100 g; 10 kg × 1.01 = 10.1 kg
			[7, "bucket A", "add", "black", 100, "g", 0.02, 10, ""],
			[8, "bucket A", "keep", "slate", 10.1, "kg", 0.02, 10, ""],
		]);
	});

	test("worked by hand, US", () => {
		// The same in pounds; pigment stays in grams: 1 lb = 453.59237 g.
		close(plan(undefined, "us"), [
			[1, "mixer", "pull off", "bucket A", 10, "lb", 0, 90, ""],
			[2, "mixer", "pull off", "white", 40, "lb", 0, 50, ""],
			// 0.25 lb × 453.59237 g/lb
			[3, "mixer", "add", "yellow", 113.3980925, "g", 0.01, 50, ""],
			[4, "mixer", "pull off", "sand", 30.15, "lb", 0.01, 20, ""],
			// 0.2 lb
			[5, "mixer", "add", "yellow", 90.718474, "g", 0.03, 20, ""],
			[6, "mixer", "keep", "ochre", 20.3, "lb", 0.03, 20, ""],
			// 0.1 lb
			[7, "bucket A", "add", "black", 45.359237, "g", 0.02, 10, ""],
			[8, "bucket A", "keep", "slate", 10.1, "lb", 0.02, 10, ""],
		]);
	});

	test("worked by hand, with 12 kg pulled off in place of 10 and 300 g added", () => {
		const sand = 88 / 3;
		const dose = 0.3 / (0.5 * (440 / 9));
		close(plan([[12], [""], [300]]), [
			[1, "mixer", "pull off", "bucket A", 10, "kg", 0, 88, ""],
			// White has 40 of the 90 shares that are left: 88 kg × 4/9 = 39.11 kg; 440/9 = 48.89 kg stay
			[2, "mixer", "pull off", "white", 352 / 9, "kg", 0, 440 / 9, ""],
			// 48.89 kg × 0.5 × 1% = 244.4 g; with 300 g: 0.3 / 24.44 = 1.227%
			[3, "mixer", "add", "yellow", 2200 / 9, "g", dose, 440 / 9, ""],
			// 3/5 of 48.89 kg = 29.33 kg; × (1 + 0.5 × 1.227%) = 29.51 kg; 1.227/1 = 22.7% too strong;
			// 29.33 kg × 0.22727 = 6.667 kg bring it back
			[
				4,
				"mixer",
				"pull off",
				"sand",
				sand * (1 + 0.5 * dose),
				"kg",
				dose,
				176 / 9,
				"22.7% too strong: fold in 6.667 kg of undosed mix to bring it back",
			],
			// 19.56 kg × 0.5 × (3% − 1.227%) = 173.3 g
			[5, "mixer", "add", "yellow", 520 / 3, "g", 0.03, 176 / 9, ""],
			[6, "mixer", "keep", "ochre", (176 / 9) * 1.015, "kg", 0.03, 176 / 9, ""],
			// 12 kg × 0.5 × 2% = 120 g
			[7, "bucket A", "add", "black", 120, "g", 0.02, 12, ""],
			[8, "bucket A", "keep", "slate", 12.12, "kg", 0.02, 12, ""],
		]);
	});

	test("too much pigment: the next addition is 0 and stays, and the last tone is told how to come back", () => {
		// 750 g in 25 kg of binder is 3% at once; typed 1000 g is 4%.
		const rows = plan([[""], [""], [1000]]) as unknown[][];
		close(rows[4], [5, "mixer", "add", "yellow", 0, "g", 0.04, 20, ""]);
		// 4% / 3% − 1 = 33.3%; 20 kg × 1/3 = 6.667 kg
		expect(rows[5]?.[8]).toBe(
			"33.3% too strong: fold in 6.667 kg of undosed mix to bring it back",
		);
	});

	test("0 is nothing done: the tone is weak, and the next addition brings all", () => {
		const rows = plan([[""], [""], [0]]) as unknown[][];
		expect(rows[3]?.[8]).toBe("100% too weak");
		// 20 kg × 0.5 × 3% = 300 g
		close(rows[4]?.[4], 300);
	});

	test("a bucket that was never filled asks for nothing", () => {
		const rows = plan([[0]]) as unknown[][];
		close(rows.slice(6), [
			[7, "bucket A", "add", "black", 0, "g", 0, 0, ""],
			[
				8,
				"bucket A",
				"keep",
				"slate",
				0,
				"kg",
				0,
				0,
				"nothing is left in bucket A",
			],
		]);
	});

	test("what is typed beside keep changes nothing", () => {
		const typed = ["", "", "", "", "", 3];
		expect(plan(typed.map((cell) => [cell]))).toEqual(plan());
	});

	test("within 1% there is no remark, and several pigments are named", () => {
		const two = [["slate", 1, 0.01, 0.02]];
		const rows = (typed: number[]) =>
			callFunction(PULL_OFF_PLAN, [
				two,
				pigments,
				100,
				0.5,
				typed.map((cell) => [cell]),
			]) as unknown[][];
		expect(rows([504.9, 1009])[2]?.[8]).toBe("");
		// 505/500 = 1010/1000 = 1.01: exactly 1% is not more than 1%
		expect(rows([505, 1010])[2]?.[8]).toBe("");
		// 550/500 = 10% too strong, 900/1000 = 10% too weak; 100 kg × 0.1
		expect(rows([550, 900])[2]?.[8]).toBe(
			"yellow 10% too strong, black 10% too weak: fold in 10 kg of undosed mix to bring it back",
		);
	});

	test("a tone of share 0 has no row", () => {
		const rows = callFunction(PULL_OFF_PLAN, [
			[...tones, ["lime", 0, 0.001, 0.001]],
			pigments,
			100,
			0.5,
		]);
		expect(rows).toEqual(plan());
	});

	test.each([
		[
			[[""], [60], [""], [41]],
			"row 4: weighed is more than there is, got 41 kg: 30.15 kg is left in the mixer",
		],
		// 30 kg × (1 + 50% × 1%) = 30.15 kg are left; the two must not read alike
		[
			[[""], [60], [""], [30.1500001]],
			"row 4: weighed is more than there is, got 30.1500001 kg: 30.15 kg is left in the mixer",
		],
		[
			[[-1]],
			"row 1: weighed must be 0 or more, got -1 kg (100 kg is left in the mixer)",
		],
		[[["x"]], 'weighed must be a number, got "x"'],
		[
			[[0], [""], [""], [""], [""], [""], [5]],
			"row 7: weighed must be 0, got 5 g (0 kg is left in bucket A)",
		],
		[
			[[1], [1], [1], [1], [1], [1], [1], [1], [""], [2]],
			"row 10: weighed must be blank below the last step, row 8, got 2: nothing is left to weigh",
		],
	])("refuses what cannot have been weighed: %j", (weighed, message) => {
		expect(() => plan(weighed)).toThrow(message);
	});

	test("more tones than one batch is dosed into are refused", () => {
		const tones = Array.from({ length: 41 }, (_, i) => [`tone ${i}`, 1, 0.01]);
		expect(() =>
			callFunction(PULL_OFF_PLAN, [tones, [["p"]], 100, 0.5]),
		).toThrow("tones must be at most 40 rows for a plan, got 41");
	});

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
	test("a row a tone, beside it, blank rows kept", () => {
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

describe("DOSE_UNCERTAINTY", () => {
	test("two weighings of the mix count √2 times", () => {
		// Only the mix: √2 × √2 × 1/√12 / 1 = √(1/3); the pigment's own part is 1e-6 of it.
		expect(callFunction(DOSE_UNCERTAINTY, [1e6, 1, 1, 1, 2])).toBeCloseTo(
			Math.sqrt(1 / 3),
			9,
		);
	});
	test("the mix scale in pounds changes nothing, since it is a ratio", () => {
		close(
			callFunction(DOSE_UNCERTAINTY, [2, 0.1, 10, 0.1, 1, "us"]),
			callFunction(DOSE_UNCERTAINTY, [2, 0.1, 10, 0.1, 1, "metric"]),
		);
	});
	test("half a weighing is refused", () => {
		expect(() => callFunction(DOSE_UNCERTAINTY, [2, 0.1, 9, 1, 1.5])).toThrow(
			"weighings must be a whole number, 1 or more, got 1.5",
		);
	});
});

describe("PIGMENT_HEADROOM", () => {
	test("a row a tone; only pigments in it count; blank is 10%; over is negative", () => {
		close(
			callFunction(PIGMENT_HEADROOM, [
				[
					[0.02, 0.02],
					[0.07, 0],
					["", ""],
					[0, 0.05],
				],
				[["", 0.06]],
			]),
			// 6% − 4%; 10% − 7%; a blank row; 6% − 5%
			[[0.02], [0.03], [""], [0.01]],
		);
	});
	test("a maker's 15% is still 10%", () => {
		close(callFunction(PIGMENT_HEADROOM, [[[0.12]], [[0.15]]]), -0.02);
	});
	test("doses of binder are more of cement", () => {
		// 4% of binder that is half cement is 8% of cement
		close(callFunction(PIGMENT_HEADROOM, [[[0.04]], [[""]], 0.5]), 0.02);
	});
	test.each([
		[[[[0.1, 0.1]], [[0.1, 0.1, 0.1]]], "doses has 2 columns and maxima has 3"],
		[[[[0.1, 0.1]], [[0.1], [0.1]]], "maxima must be one row, got 2"],
	])("refuses other shapes", (args, message) => {
		expect(() => callFunction(PIGMENT_HEADROOM, args)).toThrow(message);
	});
});
