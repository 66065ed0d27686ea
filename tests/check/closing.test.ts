import { describe, expect, test } from "vitest";
import { closing, type Outcome } from "./closing";
import { type Report, tally } from "./tally";

const REPORT: Report = {
	numPassedTests: 7,
	numFailedTests: 0,
	numPendingTests: 0,
	numTodoTests: 0,
	testResults: [{ status: "passed", assertionResults: [{ status: "passed" }] }],
};
const GOOD: Outcome = {
	steps: [
		{ title: "Types", passed: true },
		{ title: "Build", passed: true },
	],
	tests: { passed: 7, failed: 0, notRun: 0 },
	browser: "chromium",
	browserNeeded: true,
	seconds: 1,
};

describe("counting tests", () => {
	test.each([
		["all is well", REPORT, true, { passed: 7, failed: 0, notRun: 0 }],
		[
			"there is no report",
			undefined,
			true,
			{ passed: 0, failed: 1, notRun: 0 },
		],
		["the run ended badly", REPORT, false, { passed: 7, failed: 1, notRun: 0 }],
		[
			"tests failed",
			{
				...REPORT,
				numFailedTests: 2,
				testResults: [
					{ status: "failed", assertionResults: [{ status: "failed" }] },
				],
			},
			false,
			{ passed: 7, failed: 2, notRun: 0 },
		],
		[
			"a file could not be read",
			{ ...REPORT, testResults: [{ status: "failed", assertionResults: [] }] },
			false,
			{ passed: 7, failed: 1, notRun: 0 },
		],
		[
			"some were not run",
			{ ...REPORT, numPendingTests: 2, numTodoTests: 1 },
			true,
			{ passed: 7, failed: 0, notRun: 3 },
		],
	])("when %s", (_, report, endedWell, expected) => {
		expect(tally(report, endedWell)).toEqual(expected);
	});
});

describe("the last line", () => {
	test.each<[string, Partial<Outcome>, string]>([
		["all is well", {}, "9 passed, 0 failed"],
		[
			"a step failed",
			{ steps: [{ title: "Types", passed: false }] },
			"7 passed, 1 failed",
		],
		[
			"a test failed",
			{ tests: { passed: 6, failed: 1, notRun: 0 } },
			"8 passed, 1 failed",
		],
		[
			"a test was skipped",
			{ tests: { passed: 7, failed: 0, notRun: 1 } },
			"9 passed, 1 failed",
		],
		["nothing was built", { tests: undefined }, "2 passed, 1 failed"],
		[
			"a needed browser is missing",
			{ browser: undefined },
			"9 passed, 1 failed",
		],
		[
			"a browser is missing that is not needed",
			{ browser: undefined, browserNeeded: false },
			"9 passed, 0 failed",
		],
	])("when %s", (_, change, last) => {
		const { lines, passed } = closing({ ...GOOD, ...change });
		expect(lines.at(-1)).toBe(last);
		expect(passed).toBe(last.endsWith(" 0 failed"));
	});

	test("says plainly that the page was not checked", () => {
		const { lines } = closing({
			...GOOD,
			browser: undefined,
			browserNeeded: false,
		});
		expect(lines.join("\n")).toContain("NOT CHECKED, no browser found");
	});
});
