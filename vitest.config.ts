import { availableParallelism } from "node:os";
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

/** A process goes on with a file of its own kind only, so one kind follows another; the longest file of each is begun first. */
class KindByKind extends BaseSequencer {
	override async sort(files: TestSpecification[]) {
		const rank = ({ project }: TestSpecification) =>
			KINDS.indexOf(project.name);
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
		testTimeout: 60_000,
		hookTimeout: 60_000,
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
