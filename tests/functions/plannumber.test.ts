import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { callFunction } from "../../src/functions/call";
import { PLAN_NUMBER } from "../../src/functions/plannumber";

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
