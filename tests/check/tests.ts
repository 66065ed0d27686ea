import { readFileSync, rmSync } from "node:fs";
import { browserTests } from "./browser-tests";
import { run } from "./steps";
import { type Report, type Tally, tally } from "./tally";

const REPORT = "artifacts/tests.json";

/** Runs the tests, all or those whose file names hold one of the words; without a browser not those that drive one. */
export async function ranTests(
	browser: string | undefined,
	words: readonly string[],
): Promise<Tally> {
	const without = browser ? [] : await browserTests();
	rmSync(REPORT, { force: true });
	const { passed } = run([
		"Tests",
		"vitest",
		[
			"run",
			"--reporter=default",
			"--reporter=json",
			`--outputFile.json=${REPORT}`,
			...without.flatMap((file) => ["--exclude", file]),
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
