import { expect, test } from "vitest";
import { failureOf } from "../../src/sidebar/failure";
import { numberShown, percentShown, roughly } from "../../src/sidebar/shown";

// Messages as reported by users of other add-ons and on Google's own pages.
test.each([
	[
		"ScriptError: We're sorry, a server error occurred while reading from storage. Error code PERMISSION_DENIED.",
		"Several accounts",
		"no",
	],
	[
		"ScriptError: Authorization is required to perform that action.",
		"Several accounts",
		"no",
	],
	["NetworkError: Connection failure due to HTTP 0", "connection", "unknown"],
	[
		"We're sorry, a server error occurred. Please wait a bit and try again.",
		"Google's server",
		"unknown",
	],
	["Exceeded maximum execution time", "longer", "unknown"],
	["Script function not found: createJob", "older", "no"],
	["Error: pieces is blank", "pieces is blank.", "told"],
	["ScriptError: Exception: A1 is not blank", "A1 is not blank.", "told"],
	["Error: Not written. Try again. (busy.)", "again. (busy.)", "told"],
	["", "without saying why", "told"],
])("%j is told as %j, %s", (message, text, outcome) => {
	const failure = failureOf(new Error(message));
	expect(failure.text).toContain(text);
	expect(failure.text).not.toMatch(/^\w*(Error|Exception):/);
	expect(failure.text).toMatch(/[^.)][.][)]?$/);
	expect(failure.outcome).toBe(outcome);
});

test.each([
	[12480.5, 1, ",", "12\u202f480.5"],
	[12480.5, 1, ";", "12\u202f480,5"],
	[1234567, 0, ",", "1\u202f234\u202f567"],
	[0.02, 2, ",", "0.02"],
	[-3, 0, ",", "−3"],
	[-0.001, 1, ",", "0.0"],
])("%d with %d decimals in a file of %j", (value, decimals, sep, shown) => {
	expect(numberShown(value, decimals, sep)).toBe(shown);
});

test.each([
	[193.6, "194"],
	[19.36, "19.4"],
	[1.936, "1.94"],
	[0, "0"],
])("%d roughly", (value, shown) => {
	expect(roughly(value, ",")).toBe(shown);
});

test("a share as a percentage has no noise of binary numbers", () => {
	expect(percentShown(0.07, ",")).toBe("7%");
	expect(percentShown(0.035, ";")).toBe("3,5%");
});
