import { describe, expect, test } from "vitest";
import { callFunction } from "../../src/functions/call";
import { PULL_OFF_PLAN } from "../../src/functions/pulloff";
import { close } from "./close";

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
});
