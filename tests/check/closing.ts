import type { Ran } from "./steps";
import type { Tally } from "./tally";

export interface Outcome {
	steps: readonly Ran[];
	/** Undefined when they were not run, for want of something built. */
	tests: Tally | undefined;
	browser: string | undefined;
	browserNeeded: boolean;
	seconds: number;
}

interface Closing {
	lines: string[];
	passed: boolean;
}

/** What was checked, in plain words; the last line counts the tests and steps that passed and failed. */
export function closing(outcome: Outcome): Closing {
	const { steps, tests, browser, browserNeeded, seconds } = outcome;
	const goodSteps = steps.filter(({ passed }) => passed).length;
	const failures = [
		steps.length - goodSteps,
		tests ? tests.failed + tests.notRun : 1,
		tests && !browser && browserNeeded ? 1 : 0,
	];
	const failed = failures.reduce((sum, count) => sum + count, 0);
	const passed = goodSteps + (tests?.passed ?? 0);
	return {
		lines: [
			"",
			`Checked in ${seconds.toFixed(0)} s:`,
			...steps.map((step) => `  ${step.title}: ${word(step.passed)}`),
			`  ${testsLine(tests)}`,
			`  ${browserLine(outcome)}`,
			"",
			`${passed} passed, ${failed} failed`,
		],
		passed: failed === 0,
	};
}

const word = (passed: boolean): string => (passed ? "passed" : "FAILED");

function testsLine(tests: Tally | undefined): string {
	if (!tests) return "Tests: NOT RUN, since there is nothing built to run";
	const notRun = tests.notRun ? `, ${tests.notRun} SKIPPED` : "";
	return `Tests: ${tests.passed} passed, ${tests.failed} failed${notRun}`;
}

function browserLine({ tests, browser, browserNeeded }: Outcome): string {
	if (!tests) return "Page in a browser: NOT RUN";
	if (browser) return "Page in a browser: run in Chromium, counted above";
	return browserNeeded
		? "Page in a browser: FAILED, no browser found, and none could be installed"
		: "Page in a browser: NOT CHECKED, no browser found, and none could be installed";
}
