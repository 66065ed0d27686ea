import { describe, expect, test } from "vitest";
import { circles } from "./architecture/circles";
import { written } from "./architecture/files";
import { type Floor, imports, violations } from "./architecture/imports";
import { ENGINE_PRIVATE, privateReach } from "./architecture/private";

/** Who may import whom: every import points down. Packages are those a floor stands on. */
const TABLE: Record<string, Floor> = {
	"src/calc": { packages: /^culori(\/fn)?$/ },
	"src/job": { folders: ["src/calc"] },
	"src/functions": { folders: ["src/calc", "src/job"] },
	templates: { folders: ["src/job"] },
	"src/sheets": {
		folders: ["src/functions", "templates", "src/job", "src/calc"],
	},
	"src/sidebar": {
		folders: ["src/calc", "src/job", "src/functions"],
		types: ["src/sheets/messages"],
		packages: /^preact(\/|$)/,
	},
	"src/desk": {
		packages: /^(node:|@univerjs\/|esbuild$|playwright-core$|acorn$)/,
	},
	"src/build": {
		folders: ["src/functions", "src/job"],
		packages: /^(node:|esbuild$|acorn$)/,
	},
};

const files = written();
const sources = files.filter(({ file }) =>
	/^(src|templates)\/.*\.(ts|tsx|js|mjs)$/.test(file),
);

describe("imports", () => {
	test("there are some to look at", () => {
		const found = sources.flatMap(({ text }) => imports(text));
		expect(found.length).toBeGreaterThan(20);
	});

	test("all point down", () => {
		expect(sources.flatMap((source) => violations(source, TABLE))).toEqual([]);
	});

	test.each([
		["src/calc/mix.ts", 'import { x } from "../job/reading/units";'],
		["src/calc/mix.ts", 'import { readFileSync } from "node:fs";'],
		[
			"src/functions/mix.ts",
			'import {\n\ta,\n\tb,\n} from "../sheets/front/menu";',
		],
		["src/functions/mix.ts", 'export * from "../../templates/plan";'],
		["templates/tones.ts", 'import { tab } from "../src/functions/mix";'],
		["templates/tones.ts", 'import type { A } from "../src/calc/tones";'],
		["src/sheets/menu.ts", 'export { a } from "../desk/serve";'],
		["src/sidebar/main.tsx", 'import type { A } from "../sheets/front/menu";'],
		["src/sidebar/main.tsx", 'import { a } from "../sheets/messages";'],
		["src/desk/serve.ts", 'import type { A } from "../calc/tones";'],
		["src/desk/page/grid.ts", 'import "../../build/main";'],
		["src/desk/job.ts", 'const a = await import("../sheets/entries");'],
		["src/build/main.ts", 'import { a } from "../calc/tones";'],
		["src/other/a.ts", 'import { a } from "./b";'],
	])("in %s, %s is refused", (file, text) => {
		expect(violations({ file, text }, TABLE)).toHaveLength(1);
	});

	test.each([
		["src/functions/mix.ts", 'import { a } from "../calc/mix";'],
		["templates/tones.ts", 'import type { Tab } from "./plan";'],
		["src/sidebar/main.tsx", 'import type { A } from "../sheets/messages";'],
		["src/sheets/menu.ts", '// import { a } from "../desk/serve";'],
	])("in %s, %s is fine", (file, text) => {
		expect(violations({ file, text }, TABLE)).toEqual([]);
	});
});

describe("circles of files that import each other", () => {
	test("there are none", () => {
		expect(circles(sources)).toEqual([]);
	});

	test("are found, through types, folders and more than two files", () => {
		const files = [
			{ file: "src/a.ts", text: 'import { b } from "./b";' },
			{ file: "src/b.ts", text: 'import type { C } from "./c";' },
			{ file: "src/c/index.ts", text: 'export * from "../a";' },
			{ file: "src/d.ts", text: 'import { a } from "./a";' },
			{ file: "src/e.tsx", text: 'import { e } from "./e";' },
		];
		expect(circles(files)).toEqual([
			"src/a.ts > src/b.ts > src/c/index.ts > src/a.ts",
			"src/e.tsx > src/e.tsx",
		]);
	});
});

describe("private parts of the engine", () => {
	test("are in one file of the desk", () => {
		expect(sources.flatMap(privateReach)).toEqual([]);
	});

	test("are there", () => {
		const file = sources.find(({ file }) => file === ENGINE_PRIVATE);
		expect(file && privateReach({ ...file, file: "src/desk/a.ts" })).toContain(
			"src/desk/a.ts has .__getInjector",
		);
	});

	test.each([
		'import { a } from "@univerjs/core/lib/es/a";',
		'import type { A } from "@univerjs/engine-formula/src/a";',
		"const a = engine as unknown as Inner;",
		"const a = engine as never;",
		"engine._queue = [];",
		'engine["_queue"] = [];',
		"engine\n\t.__getInjector();",
	])("%s is refused", (text) => {
		expect(privateReach({ file: "src/desk/a.ts", text })).toHaveLength(1);
	});

	test.each([
		'import "@univerjs/sheets/facade";',
		'import texts from "@univerjs/preset-sheets-note/locales/en-US";',
		"const { enabled: _, ...rest } = beside;",
	])("%s is fine", (text) => {
		expect(privateReach({ file: "src/desk/a.ts", text })).toEqual([]);
	});
});

describe("names", () => {
	test("say what a file knows", () => {
		const vague = /(^|\/)(utils?|helpers?|common|core|misc|shared)(\.|\/)/i;
		expect(
			files.map(({ file }) => file).filter((file) => vague.test(file)),
		).toEqual([]);
	});

	test("only the sheets folder names SpreadsheetApp, and the desk that stands in for it", () => {
		const naming = sources
			.filter(({ text }) => /\bSpreadsheetApp\./.test(text))
			.map(({ file }) => file)
			.filter((file) => !/^src\/(sheets|desk)\//.test(file));
		expect(naming).toEqual([]);
	});
});
