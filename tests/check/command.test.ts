import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { browserTests } from "./browser-tests";

const read = (file: string): string =>
	readFileSync(join(import.meta.dirname, "../..", file), "utf8");

test("the machine that checks runs what a person is told to run", () => {
	const [, told] =
		/^ {4}(npm ci.* npm test)$/m.exec(read("DEVELOPERS.md")) ?? [];
	expect(told).toBeDefined();
	expect(read(".ci/run").trimEnd().split("\n").at(-1)).toBe(told);
});

test("every script that a document names is there", () => {
	const { scripts } = JSON.parse(read("package.json"));
	const named = [
		...`${read("README.md")}${read("DEVELOPERS.md")}`.matchAll(
			/npm run (?:-s )?([a-z:]+)/g,
		),
	];
	expect(named.length).toBeGreaterThan(0);
	for (const [, name = ""] of named)
		expect(Object.keys(scripts)).toContain(name);
});

test("the tests that need a browser are found by what they import", async () => {
	const found = await browserTests();
	expect(found.length).toBeGreaterThan(0);
	expect(found).not.toContain("tests/check/command.test.ts");
});
