import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";

/** Tests that start no workbook: they keep no state, so they can share a process and what it has loaded. */
const PLAIN = [
	"tests/{architecture,build,calc,check,functions,published,readme,sidebar}/**/*.test.{ts,tsx}",
	"tests/{architecture,wording,templates}.test.ts",
];

export default defineConfig({
	test: {
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
