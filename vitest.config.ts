import { availableParallelism } from "node:os";
import { basename } from "node:path";
import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";

/** Tests that drive a browser. */
const BROWSER = ["tests/{desk/page,sidebar}/**/*.test.{ts,tsx}"];

/** Tests that start no workbook. */
const PLAIN = [
	"tests/{architecture,build,calc,check,functions,job/*,published,readme}/**/*.test.{ts,tsx}",
	"tests/{architecture,wording,templates}.test.ts",
];

/** Runs that try everything, for minutes: `npm run test:all` has them too. */
const EXHAUSTIVE = "tests/**/*.all.test.{ts,tsx}";
const everything = process.env.TONEFOLD_TESTS === "all";

/** Kinds of tests in the order they are begun. */
const KINDS = ["browser", "workbook", "plain"];

/** Files that take half a minute and more, the longest first: begun last, one would run on alone. */
const LONG = ["killed", "kinds", "columns", "small", "fuzz", "reopening"];

/** A process goes on with a file of its own kind only, so one kind follows another; the longest files of each are begun first. */
class KindByKind extends BaseSequencer {
	override async sort(files: TestSpecification[]) {
		const rank = ({ project, moduleId }: TestSpecification) => {
			const long = LONG.indexOf(basename(moduleId).split(".")[0] ?? "");
			return 100 * KINDS.indexOf(project.name) - (long < 0 ? 0 : 50 - long);
		};
		return (await super.sort(files)).sort((a, b) => rank(a) - rank(b));
	}
}

export default defineConfig({
	test: {
		sequence: { sequencer: KindByKind },
		pool: "forks",
		// Files of a kind share a process and what it has loaded; each leaves nothing behind.
		isolate: false,
		// The default leaves one core of two idle.
		maxWorkers: availableParallelism(),
		// Young objects get more room than Node's 16 MB: a tenth of the work of writing a workbook was clearing it.
		execArgv: ["--max-semi-space-size=64"],
		// What waits for its turn on a busy machine is not wrong.
		testTimeout: 180_000,
		hookTimeout: 180_000,
		expect: { poll: { timeout: 30_000 } },
		exclude: everything ? [] : [EXHAUSTIVE],
		projects: [
			{
				extends: true,
				test: {
					name: "browser",
					include: BROWSER,
					globalSetup: "tests/run/setup.ts",
				},
			},
			{
				extends: true,
				test: {
					name: "workbook",
					include: ["tests/**/*.test.{ts,tsx}"],
					exclude: [...BROWSER, ...PLAIN],
					server: { deps: { external: [/@univerjs/] } },
				},
			},
			{ extends: true, test: { name: "plain", include: PLAIN } },
		],
	},
});
