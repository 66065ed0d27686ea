import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { checksTable, functionTable, withPart } from "../../src/build/table";
import { registry } from "../../src/functions/index";
import { readmeWithTables } from "./tables";

describe("README", () => {
	test("has the tables of today: `npm run readme` writes them", async () => {
		const document = readFileSync(
			join(import.meta.dirname, "../../README.md"),
			"utf8",
		);
		expect(document).toBe(await readmeWithTables(document));
	});
});

describe("the table of functions", () => {
	test("names every function, its arguments and an example with `;`", () => {
		const text = functionTable(registry);
		for (const { name, params, example } of registry) {
			const line = text.split("\n").find((row) => row.includes(`\`${name}(`));
			for (const param of Object.keys(params)) expect(line).toContain(param);
			const shown = `=${name}(${example.shown.join("; ")})`;
			expect(line).toContain(shown.replace(/\|/g, "\\|"));
		}
	});
});

describe("the table of checks", () => {
	const check = {
		function: "HALVED",
		source: "A | B",
		status: "confirmed",
		cases: 3,
	};
	test.each([
		[0.00412, "0.41%"],
		[1e-12, "none"],
		[0, "none"],
		[undefined, "same"],
	])("a difference of %s reads %s", (largestDifference, shown) => {
		expect(checksTable([{ ...check, largestDifference }])).toContain(
			`| \`HALVED\` | A \\| B | confirmed | 3 | ${shown} |`,
		);
	});
});

describe("a part of a document", () => {
	test("is replaced between its markers, and nothing else", () => {
		const document = "a\n<!-- x:start -->\nold\n<!-- x:end -->\nb\n";
		expect(withPart(document, "x", "$1 new")).toBe(
			"a\n<!-- x:start -->\n$1 new\n<!-- x:end -->\nb\n",
		);
	});

	test("must be there", () => {
		expect(() => withPart("a", "x", "new")).toThrow("x:start");
	});
});
