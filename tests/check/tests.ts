import { readFileSync, rmSync } from "node:fs";
import { run } from "./steps";
import { type Report, type Tally, tally } from "./tally";

const REPORT = "artifacts/tests.json";

/** Tests that drive the page: nothing to run them with where there is no browser. */
const PAGE_TESTS = "tests/desk/page/**";

/** Runs the tests, all or those whose file names hold one of the words. */
export function ranTests(
	browser: string | undefined,
	words: readonly string[],
): Tally {
	rmSync(REPORT, { force: true });
	const { passed } = run([
		"Tests",
		"vitest",
		[
			"run",
			"--reporter=dot",
			"--reporter=json",
			`--outputFile.json=${REPORT}`,
			...(browser ? [] : ["--exclude", PAGE_TESTS]),
			...words,
		],
	]);
	return tally(readReport(), passed);
}

function readReport(): Report | undefined {
	try {
		return JSON.parse(readFileSync(REPORT, "utf8"));
	} catch {
		return undefined;
	}
}
