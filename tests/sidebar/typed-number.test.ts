import { describe, expect, test } from "vitest";
import { numberOrText, percentOrText } from "../../src/sidebar/typed-number";

describe("a number field", () => {
	test.each([
		["2440", 2440],
		[" 2.5 ", 2.5],
		["2,5", 2.5],
		[".5", 0.5],
		["-20", -20],
		["−20", -20],
	])("%j is %d", (typed, number) => {
		expect(numberOrText(typed)).toBe(number);
	});

	// Left to the function's reader, which says what is wrong or reads a length.
	test.each(["", "two", "2,440", "1,000", "8' 1/2\"", "3/4", "1e3", "2 m"])(
		"%j stays text",
		(typed) => {
			expect(numberOrText(typed)).toBe(typed);
		},
	);
});

describe("a field that shows %", () => {
	test.each([
		["4", 0.04],
		["4%", 0.04],
		["4 %", 0.04],
		["2,5%", 0.025],
		["0.5", 0.005],
		["55", 0.55],
		["7", 0.07],
		["100", 1],
	])("%j is %d", (typed, share) => {
		expect(percentOrText(typed)).toBe(share);
	});

	test.each(["", "%", "four", "4%%"])("%j stays text", (typed) => {
		expect(percentOrText(typed)).toBe(typed);
	});
});
