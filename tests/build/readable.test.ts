/** The files that go to Google can be read by a stranger. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { PRODUCT } from "../../src/build/bundle";

const read = (file: string): string =>
	readFileSync(join(PRODUCT.root, "dist", file), "utf8");

const code = read("Code.js");

describe("from a function's name to its arithmetic", () => {
	test("the stub, the declaration, the formula: each names the next", () => {
		expect(code).toMatch(
			/^function PIGMENT_GRAMS\(mass, binder_share, dose, units\) \{ return tonefold_\.call\("PIGMENT_GRAMS"/m,
		);
		expect(code).toMatch(
			/PIGMENT_GRAMS = sheetFunction\(\{\s+name: "PIGMENT_GRAMS",[\s\S]*?compute: [^\n]* pigmentKg\(\{ massKg: /,
		);
		expect(code).toMatch(
			/\/\/ src\/calc\/tones\.ts\n\s+var pigmentKg = \(\{\s+massKg,\s+binderShare\w*(: \w+)?,\s+dose\s+\}\) => massKg \* binderShare\w* \* dose;/,
		);
	});

	test("each module is announced by its path", () => {
		for (const path of ["calc/mix", "functions/call", "sheets/entries"])
			expect(code).toContain(`\n\t// src/${path}.ts\n`);
		expect(read("Templates.js")).toContain(
			"\n\t// templates/card/cardtab.ts\n",
		);
		expect(read("Panel.html")).toContain("\n\t// src/sidebar/panel.tsx\n");
	});
});

describe.each(["Code.js", "Templates.js", "Panel.html"])("%s", (file) => {
	const text = read(file);
	const lines = text.split("\n").map((line) => line.trim());
	const over = (length: number) => lines.filter((line) => line.length > length);

	test("is written in lines, most of them short", () => {
		expect(lines.length).toBeGreaterThan(text.length / 50);
		expect(over(100).length).toBeLessThan(lines.length / 10);
	});

	test("has no line over 500 letters but the formula of a cell", () => {
		expect(over(500).filter((line) => !/^['"`]=.*['"`],?$/.test(line))).toEqual(
			[],
		);
	});

	test("holds nothing that is packed", () => {
		expect(text.match(/[A-Za-z0-9+/=]{60,}/g)).toBeNull();
		expect(text.match(/\batob\b|DecompressionStream|ungzip/g)).toBeNull();
	});
});
