import { expect, test } from "vitest";
import { onScale } from "../../../src/calc/weighing";
import {
	isFar,
	scaleReading,
	weightShown,
} from "../../../src/sidebar/mixer/scale-reading";

test.each([
	["12.4", 12, 12.4],
	["12,4", 12, 12.4],
	[" 12,40 kg", 12, 12.4],
	["500g", 500, 500],
	[".5", 0.5, 0.5],
	["12.", 12, 12],
	["0", 5, 0],
	["1 250", 1250, 1250],
	// one and a quarter, or twelve hundred and fifty: whichever was asked for
	["1,250", 1.2, 1.25],
	["1,250", 1200, 1250],
	["1.250", 1300, 1250],
])("%j where %d was asked for is %d", (typed, asked, weight) => {
	expect(scaleReading(typed, asked)).toBe(weight);
});

test("nothing typed is no weight", () => {
	expect(scaleReading("  ", 5)).toBeUndefined();
});

test.each([
	["twelve", '"twelve" is not a weight'],
	["-3", '"-3" is not a weight'],
	["1,2,3", "is not a weight"],
	["=HYPERLINK(1)", "is not a weight"],
	["1,250", '"1,250" can be read in two ways: type 1250 or 1.25'],
])("%j where 40 was asked for is refused", (typed, told) => {
	expect(() => scaleReading(typed, 40)).toThrow(told);
});

test.each([
	[110, 100, false],
	[110.1, 100, true],
	[89, 100, true],
	[5, 0, true],
])("%d for %d is far: %s", (reading, asked, far) => {
	expect(isFar(reading, asked)).toBe(far);
});

// By hand: 12.34 / 0.05 = 246.8, so 247 × 0.05 = 12.35; 1234.4 to 5 is 1235.
test.each([
	[12.34, 0.05, 12.35, "12.35 kg"],
	[12.34, 0.1, 12.3, "12.3 kg"],
	[1234.4, 5, 1235, "1\u202f235 kg"],
	[0.3, 0.1, 0.3, "0.3 kg"],
])("%d on a scale of %d is %d", (weight, division, shown, text) => {
	const scale = { division, unit: "kg" };
	expect(onScale(weight, division)).toBe(shown);
	expect(weightShown(shown, scale, ",")).toBe(text);
});

test("what was read finer than the division is shown as it was read", () => {
	const scale = { division: 0.1, unit: "kg" };
	expect(weightShown(12.345, scale, ";")).toBe("12,345 kg");
});
