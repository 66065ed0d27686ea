import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";

/** Tests that start no workbook: they keep no state, so they can share a process and what it has loaded. */
const PLAIN = [
	"tests/{architecture,build,calc,check,functions,published,readme,sidebar}/**/*.test.{ts,tsx}",
	"tests/{architecture,wording,templates}.test.ts",
];

/** Minutes each, the longest first: begun last, one of them would keep one core busy and leave the other idle. */
const LONG = ["/sheets/faults/", "/desk/page/", "/sidebar/"];

class LongFirst extends BaseSequencer {
	override async sort(files: TestSpecification[]) {
		const rank = ({ moduleId }: TestSpecification) => {
			const place = LONG.findIndex((folder) => moduleId.includes(folder));
			return place < 0 ? LONG.length : place;
		};
		return (await super.sort(files)).sort((a, b) => rank(a) - rank(b));
	}
}

export default defineConfig({
	test: {
		sequence: { sequencer: LongFirst },
		pool: "forks",
		// The default leaves one core of two idle.
		maxWorkers: availableParallelism(),
		testTimeout: 60_000,
		hookTimeout: 60_000,
		projects: [
			{
				extends: true,
				test: { name: "plain", include: PLAIN, isolate: false },
			},
			{
				extends: true,
				test: {
					// One workbook may live in a process at a time, so each file has its own.
					name: "workbook",
					include: ["tests/**/*.test.{ts,tsx}"],
					exclude: PLAIN,
					server: { deps: { external: [/@univerjs/] } },
				},
			},
		],
	},
});
