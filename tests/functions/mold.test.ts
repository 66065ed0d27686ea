/** Which hand a mold is, worked by drawing the piece and turning it over from left to right. */
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { callFunction } from "../../src/functions/call";
import { MOLD_PLAN } from "../../src/functions/mold";

const L = ["Bar", 1, "L", 2000, 1500, 1400, 900, 30, "", "", ""];
const plan = (
	piece: readonly unknown[],
	lie: readonly unknown[],
	cut: unknown = "",
	units = "metric",
) =>
	(
		callFunction(MOLD_PLAN, [[piece], [lie], cut, units]) as string[][]
	)[0] as string[];

describe("MOLD_PLAN", () => {
	// Face up the L keeps its corner: the notched sides are 2000 − 1400 and 1500 − 900.
	test.each([
		["face up", "back right", "back right", [2000, 600, 1500, 600]],
		["face down", "back right", "back LEFT", [2000, 600, 600, 1500]],
		["face down", "front left", "front RIGHT", [600, 2000, 1500, 600]],
	])("%s, notch at %s: in the mold %s", (face, corner, mold, sides) => {
		const [, notch, outline] = plan(L, [face, corner, ""]);
		expect(notch).toContain(`1400 × 900 at ${mold}`);
		const [front, back, left, right] = sides;
		expect(outline).toBe(
			`front ${front}, back ${back}, left ${left}, right ${right}`,
		);
	});

	test("front and back stay where they are", () => {
		const u = ["U", 1, "U", 2400, 900, 600, 300, 30, "", "", ""];
		expect(plan(u, ["face down", "back", ""])[1]).toBe("600 × 300 at back");
		const deep = ["U", 1, "U", 900, 2400, 600, 300, 30, "", "", ""];
		expect(plan(deep, ["face down", "left", ""])[1]).toBe(
			"600 × 300 at RIGHT (finished: left)",
		);
	});

	test("a drop edge changes sides with the piece", () => {
		const top = ["Top", 1, "rectangle", 900, 500, "", "", 30, 60, 1400, ""];
		expect(plan(top, ["face down", "", "left, front"])[3]).toBe(
			"front and RIGHT (finished: front and left)",
		);
		expect(plan(top, ["face up", "", "front + left"])[3]).toBe(
			"front and left",
		);
		expect(plan(top, ["face down", "", ""])[3]).toMatch(/^Look: where is it/);
	});

	test("what nobody said is asked for, not guessed", () => {
		expect(plan(L, ["", "", ""]).slice(0, 2)).toEqual([
			"Look: type face up or face down under Cast",
			"Look: where is it? Type it under Notch at",
		]);
	});

	test("a piece with a cutout has a hand, one without has none", () => {
		const round = ["Table", 1, "round", 900, "", "", "", 28, "", "", ""];
		expect(plan(round, ["", "", ""])[0]).toBe("the same from both faces");
		expect(plan(round, ["face down", "", ""], " table ")).toEqual([
			"MIRRORED: left and right change sides",
			"",
			"across 900",
			"",
			"Measure from the other side: left is RIGHT",
		]);
	});

	test("inches as on a tape", () => {
		const bar = [
			"Bar",
			1,
			"L",
			"84 1/2",
			"58 1/4",
			59,
			"32 5/8",
			1,
			"",
			"",
			"",
		];
		// 84 1/2 − 59 = 25 1/2; 58 1/4 − 32 5/8 = 25 5/8
		expect(plan(bar, ["face down", "back right", ""], "", "us")[2]).toBe(
			"front 84 1/2, back 25 1/2, left 25 5/8, right 58 1/4",
		);
	});

	test.each([
		[["face down", "back", ""], /notch at must be one of front left/],
		[["upside", "", ""], /face must be face up or face down/],
		[["face down", "", "front"], /drop edge on must be blank/],
	])("%j is refused", (lie, sentence) => {
		expect(() => plan(L, lie)).toThrow(InputError);
		expect(() => plan(L, lie)).toThrow(sentence);
	});

	test("a notch without a shape for it, and sides that are none, are refused", () => {
		const top = ["Top", 1, "rectangle", 900, 500, "", "", 30, 60, 1400, ""];
		expect(() => plan(top, ["face up", "left", ""])).toThrow(
			/notch at must be blank for rectangle/,
		);
		expect(() => plan(top, ["face up", "", "north"])).toThrow(
			/drop edge on must be sides .* got "north"/,
		);
	});

	test("a refused word is shown on one line, and cut where it is long", () => {
		const long = `north\n${"x".repeat(100)}`;
		const edged = ["Top", 1, "rectangle", 900, 500, "", "", 30, 60, 1400, ""];
		for (const refused of [
			() => plan(L, ["face up", long, ""]),
			() => plan(edged, ["face up", "", long]),
		])
			expect(refused).toThrow(/^[^\n]* got "north x{54}…"$/);
	});
});
