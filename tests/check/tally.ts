/** What is read of the test runner's report. */
export interface Report {
	numPassedTests: number;
	numFailedTests: number;
	numPendingTests: number;
	numTodoTests: number;
	testResults: readonly {
		status: string;
		assertionResults: readonly { status: string }[];
	}[];
}

export interface Tally {
	passed: number;
	failed: number;
	/** Skipped ones: each is a promise that nobody keeps. */
	notRun: number;
}

/**
 * Tests that passed, failed, and were not run.
 *
 * A file that fails as a whole counts as one failure, and so does a run that ends badly for another reason.
 */
export function tally(report: Report | undefined, endedWell: boolean): Tally {
	if (!report) return { passed: 0, failed: 1, notRun: 0 };
	const wholeFiles = report.testResults.filter(
		({ status, assertionResults }) =>
			status === "failed" &&
			!assertionResults.some((test) => test.status === "failed"),
	).length;
	const failed = report.numFailedTests + wholeFiles;
	return {
		passed: report.numPassedTests,
		failed: failed === 0 && !endedWell ? 1 : failed,
		notRun: report.numPendingTests + report.numTodoTests,
	};
}
