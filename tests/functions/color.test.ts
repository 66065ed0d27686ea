import { describe, expect, test } from "vitest";
import { callFunction } from "../../src/functions/call";
import {
	COLOR_DIFFERENCE,
	DOSE_FOR_COLOR,
	FAR_COLOR,
	TONE_COLOR,
} from "../../src/functions/color";

describe("colors as typed", () => {
	// One color in all its spellings: no difference to itself.
	test.each([
		"52.1, 8.0, 14.2",
		"52.1,8,14.2",
		" 52.1 ,  8.0 , 14.2 ",
		"52.1; 8.0; 14.2",
		"52,1; 8,0; 14,2",
	])("%s", (typed) => {
		expect(callFunction(COLOR_DIFFERENCE, [typed, "52.1, 8.0, 14.2"])).toBe(0);
	});

	test("signs, also the typographic one, and capitals", () => {
		expect(callFunction(COLOR_DIFFERENCE, ["50, -1, +2", "50, −1, 2"])).toBe(0);
		expect(callFunction(COLOR_DIFFERENCE, ["#B5A99A", "#b5a99a"])).toBe(0);
		expect(callFunction(COLOR_DIFFERENCE, ["#FF0000", " #ff0000 "])).toBe(0);
	});

	test.each([
		["52.1, 8.0", 'a must be #rrggbb or "L*, a*, b*"'],
		["52,1, 8,0, 14,2", 'got "52,1, 8,0, 14,2"'],
		["red", 'got "red"'],
		["#12345", 'got "#12345"'],
		[52, "got 52"],
		[true, "got TRUE"],
		["101, 0, 0", "a: L* must be between 0 and 100, got 101"],
		["50, 300, 0", "a: a* and b* must be between -200 and 200, got 300 and 0"],
		["#N/A", "a is an error cell (#N/A)"],
		["", "a is blank"],
	])("refuses %s", (typed, message) => {
		expect(() => callFunction(COLOR_DIFFERENCE, [typed, "#ffffff"])).toThrow(
			message as string,
		);
	});
});

const doses = [[0], [0.02], [0.06]];
const colors = [["60, 2, 10"], ["50, 3, 12"], ["42, 4, 12"]];

describe("TONE_COLOR", () => {
	test("the undosed swatch is met, whatever its place", () => {
		expect(
			callFunction(TONE_COLOR, [
				doses,
				[["#b5a99a"], ["#8a7a6a"], ["#5a4a40"]],
				0,
			]),
		).toBe("#b5a99a");
	});

	test("a column of doses answers a column, blank rows kept", () => {
		const one = (dose: number) =>
			callFunction(TONE_COLOR, [doses, colors, dose]);
		expect(
			callFunction(TONE_COLOR, [doses, colors, [[0.01], [""], [0.03], [""]]]),
		).toEqual([[one(0.01)], [""], [one(0.03)]]);
	});

	test("a row is a dose of each pigment; blank is none", () => {
		const two = [
			[0, 0],
			[0.02, ""],
			[0.06, 0],
			["", 0.03],
			[0, 0.06],
			[0.02, 0.02],
		];
		const all = [...colors, ["55, 10, 20"], ["50, 14, 26"], ["20, 0, 0"]];
		expect(callFunction(TONE_COLOR, [two, all, [[0.03, ""]]])).toBe(
			callFunction(TONE_COLOR, [doses, colors, 0.03]),
		);
		expect(callFunction(TONE_COLOR, [two, all, [[0.03, 0.03]]])).toMatch(
			/^#[0-9a-f]{6}$/,
		);
	});

	test.each([
		[
			doses,
			colors,
			0.07,
			"dose must be at most 6%, the strongest swatch of the pigment in column 1, got 7%",
		],
		[doses, colors, [[0.01], [0.07]], "row 2: dose must be at most 6%"],
		[
			doses,
			colors,
			[[0.01, 0.02]],
			"dose must have as many columns as doses, 1, got 2",
		],
		[
			[[0.02], [0.02]],
			colors.slice(0, 2),
			0.02,
			"at least two different doses",
		],
		[doses, colors.slice(0, 2), 0.02, "row 3: colors is blank beside a dose"],
		[doses.slice(0, 2), colors, 0.02, "row 3: doses is blank beside a color"],
		[
			doses,
			[["60, 2, 10"], ["x"], ["42, 4, 12"]],
			0.02,
			'row 2: colors must be #rrggbb or "L*, a*, b*"',
		],
	])("refuses %j, %j, %j", (doses, colors, dose, message) => {
		expect(() => callFunction(TONE_COLOR, [doses, colors, dose])).toThrow(
			message,
		);
	});
});

describe("DOSE_FOR_COLOR", () => {
	test("a column of colors answers a row each, the same as one by one", () => {
		const wanted = ["52, 3, 12", "47, 4, 12"];
		expect(
			callFunction(DOSE_FOR_COLOR, [doses, colors, wanted.map((lab) => [lab])]),
		).toEqual(
			wanted.map((lab) =>
				[callFunction(DOSE_FOR_COLOR, [doses, colors, lab])].flat(2),
			),
		);
	});

	test("is the dose that TONE_COLOR turns into that color, but for its rounding to 8 bits", () => {
		for (const dose of [0.01, 0.02, 0.04]) {
			const color = callFunction(TONE_COLOR, [doses, colors, dose]);
			const [[found, leftover, low, high] = []] = callFunction(DOSE_FOR_COLOR, [
				doses,
				colors,
				color,
			]) as number[][];
			expect(found).toBeCloseTo(dose, 3);
			expect(leftover).toBeLessThan(0.5);
			expect(low).toBeLessThan(dose);
			expect(high).toBeGreaterThan(dose);
		}
	});

	test.each([
		[
			doses,
			colors,
			"20, 4, 12",
			"color is stronger than the strongest swatch, 6%",
		],
		[
			[
				[0, 0],
				[0.02, 0],
			],
			colors.slice(0, 2),
			"50, 3, 12",
			"doses must be one column, of one pigment, got 2 columns",
		],
		[[[0.02]], [["50, 3, 12"]], "50, 3, 12", "at least two different doses"],
	])("refuses %j, %j, %j", (doses, colors, color, message) => {
		expect(() => callFunction(DOSE_FOR_COLOR, [doses, colors, color])).toThrow(
			message,
		);
	});
});

describe("FAR_COLOR", () => {
	test("refuses shares that are all 0, and other sizes", () => {
		const two = [["#000000"], ["#ffffff"]];
		expect(() => callFunction(FAR_COLOR, [two, [[0], [0]]])).toThrow(
			"shares must be above 0 for at least one color",
		);
		expect(() => callFunction(FAR_COLOR, [two, [[1], [1], [1]]])).toThrow(
			"colors has 2 rows and shares has 3",
		);
	});
	test("shares are weights", () => {
		const two = [["#102030"], ["#d0c0b0"]];
		expect(callFunction(FAR_COLOR, [two, [[1], [3]]])).toBe(
			callFunction(FAR_COLOR, [two, [[0.25], [0.75]]]),
		);
	});
});
