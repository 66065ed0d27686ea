import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { callFunction } from "../../src/functions/call";
import { CASTINGS, PLAN_NUMBER } from "../../src/functions/card";

describe("CASTINGS", () => {
	test("a piece as often as its quantity says, none of 0, a blank row none", () => {
		expect(
			callFunction(CASTINGS, [
				[["Shelf"], [""], ["Bench"], ["Step"]],
				[[2], [""], [0], [1]],
				[[18], [""], [40], [9.5]],
			]),
		).toEqual([
			["Shelf", 18],
			["Shelf", 18],
			["Step", 9.5],
		]);
	});

	test.each<[unknown[], string]>([
		[
			[
				[["a"], ["b"]],
				[[1], [1.5]],
				[[5], [5]],
			],
			"row 2: quantities must be a whole number, 0 or more, got 1.5",
		],
		// The unit is whatever the masses are in, so none is named.
		[["a", 1, 0], "masses must be above 0, got 0"],
		[
			["a", 2001, 5],
			"quantities must be 2000 castings or less together, got 2001",
		],
	])("refuses %j", (args, sentence) => {
		expect(() => callFunction(CASTINGS, args)).toThrow(
			new InputError(sentence),
		);
	});
});

describe("PLAN_NUMBER", () => {
	const tones = [
		["white", 3, 0],
		["sand", 1, 0.02],
	];
	const number = (
		rows: unknown = tones,
		pigments: unknown = "umber",
		parts: unknown = [[50], [50]],
		binder: unknown = 0.5,
	) => callFunction(PLAN_NUMBER, [rows, pigments, parts, binder]);

	test("stays where only capitals, weights of the same shares or batch size differ", () => {
		const same = [
			["WHITE", 0.75, 0],
			["sand", 0.25, 0.02],
		];
		expect(number(same, "Umber", [[1], [1]])).toBe(number());
	});

	test.each<[string, Parameters<typeof number>]>([
		["a share", [[tones[0], ["sand", 1.1, 0.02]]]],
		["a dose", [[tones[0], ["sand", 1, 0.021]]]],
		["a name", [[tones[0], ["dune", 1, 0.02]]]],
		["a pigment", [tones, "ocher"]],
		["the mix", [tones, "umber", [[50], [51]]]],
		["its binder", [tones, "umber", [[50], [50]], 0.51]],
	])("changes with %s", (_, given) => {
		expect(number(...given)).not.toBe(number());
	});

	test("no share at all is refused", () => {
		expect(() => number([["white", 0, 0]])).toThrow(
			new InputError("tones must have a share above 0, got only 0"),
		);
	});
});
