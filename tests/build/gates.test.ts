import { describe, expect, test } from "vitest";
import { complaints, type Dist } from "../../src/build/gates";

const STUB = `/**
 * Twice a number.
 *
 * @param {2} amount What is doubled, e.g. 2
 * @return twice the number
 * @customfunction
 */
function DOUBLED(amount) {
  return tonefold_.call("DOUBLED", arguments);
}`;
const ENTRY = `/** Builds the menu. */
function onOpen(event) {
  return tonefold_.onOpen(event);
}`;
const BUNDLE = `var tonefold_ = (() => { const call = (name, args) => 2 * args[0]; return { call }; })();`;

const PANEL = `<!DOCTYPE html><html><head><style>p { color: #123; }</style></head>
<body><script>document.title = "http://www.w3.org/2000/svg";</script>
<script type="text/plain" id="workbook">text</script></body></html>`;

const MANIFEST = {
	timeZone: "Etc/UTC",
	runtimeVersion: "V8",
	oauthScopes: [
		"https://www.googleapis.com/auth/spreadsheets.currentonly",
		"https://www.googleapis.com/auth/script.container.ui",
	],
};

const GOOD: Dist = {
	"Code.js": [BUNDLE, STUB, ENTRY].join("\n"),
	"Panel.html": PANEL,
	"appsscript.json": JSON.stringify(MANIFEST),
};

const withCode = (code: string): string[] =>
	complaints({ ...GOOD, "Code.js": code }, ["DOUBLED"]);
const withPanel = (html: string): string[] =>
	complaints({ ...GOOD, "Panel.html": html }, ["DOUBLED"]);
const withManifest = (change: object): string[] =>
	complaints(
		{ ...GOOD, "appsscript.json": JSON.stringify({ ...MANIFEST, ...change }) },
		["DOUBLED"],
	);
/** The good script with a statement more inside its private part. */
const inside = (statement: string): string[] =>
	withCode(GOOD["Code.js"].replace("const call", `${statement}; const call`));

test("three good files pass", () => {
	expect(complaints(GOOD, ["DOUBLED"])).toEqual([]);
});

describe("syntax", () => {
	test.each([
		["a class field", "class A { x = 1 }"],
		["a static field", "class A { static x = 1 }"],
		["a static block", "class A { static { } }"],
		["a private name", "class A { #x() {} }"],
		["a logical assignment", "let a = null; a ??= 1"],
		["a numeric separator", "const a = 1_000"],
		["a flag of later regular expressions", "const a = /b/d"],
		["sets in a regular expression", "const a = /[b--c]/v"],
		["a module", "export {}"],
		["an await outside a function", "await 1"],
	])("%s is refused", (_, statement) => {
		expect(inside(statement)).toEqual([
			expect.stringContaining("not an ES2020 script"),
		]);
	});

	test("a dynamic import is refused", () => {
		expect(inside('const f = () => import("x")')).toEqual([
			"line 1: Apps Script has no import()",
		]);
	});

	test.each([
		"[1].at(-1)",
		"[1].at(0)",
		"Object.hasOwn({}, 'a')",
		"'a'.replaceAll('a', 'b')",
		"[1].with(0, 2)",
	])("%s came too late", (use) => {
		expect(inside(`const f = () => ${use}`)).toEqual([
			expect.stringContaining("came after ES2020"),
		]);
	});
});

describe("globals", () => {
	test.each([
		"setTimeout(f)",
		"new URL('a')",
		"new TextEncoder()",
		"fetch('a')",
		"process.env",
		"window.x",
		"globalThis.x",
		"structuredClone({})",
		"crypto.x",
		"require('a')",
		"eval('1')",
		"UrlFetchApp.fetch('a')",
		"DriveApp.x",
		"new WeakRef({})",
		"'a' in performance",
		"({ a: navigator })",
		"(({ a = atob }) => a)({})",
	])("%s is refused", (use) => {
		expect(inside(`const f = () => ${use}`)).toEqual([
			expect.stringMatching(/^line 1: Apps Script has no \w+$/),
		]);
	});

	test("a name known in one function is unknown in the next", () => {
		const found = inside(
			"const a = () => { const process = 1; return process; }; const b = () => process",
		);
		expect(found).toEqual(["line 1: Apps Script has no process"]);
	});

	test.each([
		"({ process: 1 }).process",
		"((process) => process)(1)",
		"(({ a: { process } }) => process)({ a: {} })",
		"(function process() { return process; })",
		"(() => { for (const process of []) process; })",
		"(() => { try { } catch (process) { process; } })",
		"(() => { if (1) { var process = 1; } return process; })",
		"(() => { switch (1) { case 1: let process; process; } })",
		"(() => { process: for (;;) break process; })",
		"class { process() { return new.target; } }",
		"[...arguments]",
	])("%s uses no global", (use) => {
		expect(inside(`const f = function () { return ${use}; }`)).toEqual([]);
	});
});

describe("loading", () => {
	test.each(["SpreadsheetApp", "PropertiesService"])(
		"%s may not be touched",
		(service) => {
			expect(inside(`const app = ${service}`)).toEqual([
				`touches ${service} when it is loaded`,
			]);
		},
	);

	test("not even asked after", () => {
		expect(inside("const there = typeof HtmlService")).toEqual([
			"touches HtmlService when it is loaded",
		]);
	});

	test("a script that fails when it is loaded is refused", () => {
		expect(inside("null.x")).toEqual([
			expect.stringContaining("fails when it is loaded"),
		]);
	});
});

describe("stubs", () => {
	const stub = (change: (code: string) => string): string[] =>
		withCode([BUNDLE, change(STUB), ENTRY].join("\n"));

	test("every sheet function has one", () => {
		expect(complaints(GOOD, ["DOUBLED", "HALVED"])).toEqual([
			"HALVED: no top-level function",
		]);
	});

	test("none twice", () => {
		expect(stub((code) => `${code}\n${code}`)).toContain(
			"DOUBLED: declared twice",
		);
	});

	test.each([
		["gone", (code: string) => code.slice(code.indexOf("\nfunction"))],
		["a plain comment", (code: string) => code.replace("/**", "/*")],
		[
			"not directly above",
			(code: string) =>
				code.replace("\nfunction", "\nvar tonefold_;\nfunction"),
		],
	])("its comment may not be %s", (_, change) => {
		expect(stub(change)).toEqual(["DOUBLED: no /** */ directly above"]);
	});

	test("it is marked as one", () => {
		expect(stub((code) => code.replace("@customfunction", ""))).toEqual([
			"DOUBLED: no @customfunction",
		]);
	});

	test("it has a summary", () => {
		expect(stub((code) => code.replace("Twice a number.", ""))).toEqual([
			"DOUBLED: no summary",
		]);
	});

	test.each([
		["in brackets", "{2} [amount]"],
		["of another name", "{2} number"],
		["without its sample", "amount"],
		["without a word", "{2} amount\n *"],
	])("an argument %s is refused", (_, tag) => {
		const found = stub((code) =>
			code.replace(/\{2\} amount.*/, tag.endsWith("*") ? tag : `${tag} help`),
		);
		expect(found).toEqual([expect.stringMatching(/^DOUBLED: explains/)]);
	});

	test("an argument more than is explained is refused", () => {
		expect(stub((code) => code.replace("(amount)", "(amount, units)"))).toEqual(
			["DOUBLED: explains (amount), takes (amount,units)"],
		);
	});

	test.each([
		"A1",
		"ABC123",
		"R1C1",
		"TRUE",
		"DOUBLED_",
		"doubled",
		"_X",
		"SUM",
	])("%s is no name for a sheet function", (name) => {
		const code = GOOD["Code.js"].replaceAll("DOUBLED", name);
		expect(complaints({ ...GOOD, "Code.js": code }, [name])).toEqual([
			`${name}: not a name that can be called`,
		]);
	});

	test("a function that is neither is refused", () => {
		expect(
			withCode(`${GOOD["Code.js"]}\n/** Stray. */\nfunction STRAY() {}`),
		).toEqual(["STRAY: not a name that can be called"]);
	});

	test("an entry point has its comment directly above too", () => {
		const code = GOOD["Code.js"].replace("/** Builds the menu. */", "");
		expect(withCode(code)).toEqual(["onOpen: no /** */ directly above"]);
	});

	test("an entry point is not listed among the sheet functions", () => {
		const code = GOOD["Code.js"].replace("menu.", "menu. @customfunction");
		expect(withCode(code)).toEqual(["onOpen: listed as a sheet function"]);
	});

	test.each(["var other = 1", "const a = 1", "class A {}", "call()"])(
		"%s at the top level is refused",
		(statement) => {
			const code = `${GOOD["Code.js"]}\nfunction call() {}\n${statement}`;
			expect(withCode(code)).toContainEqual(
				expect.stringContaining("not a function, at the top level"),
			);
		},
	);
});

describe("panel", () => {
	test.each([
		["a script from elsewhere", '<script src="https://a/b.js"></script>'],
		["a style from elsewhere", '<link rel="stylesheet" href="a.css">'],
		["a picture from elsewhere", '<img src="a.png">'],
		["a font", "<style>@font-face { src: url(a.woff) }</style>"],
		["an import of a style", "<style>@import 'a.css'</style>"],
		["a request", "<p>fetch('a')"],
		["an old request", "<p>new XMLHttpRequest()"],
		["a template mark", "<? x ?>"],
		["local storage", "<p>localStorage.x"],
	])("%s is refused", (_, html) => {
		expect(withPanel(PANEL.replace("<script>", `${html}<script>`))).not.toEqual(
			[],
		);
	});

	test("a script that ends early is refused", () => {
		expect(withPanel(PANEL.replace("= ", '= "</script>" + '))).toEqual([
			"Panel.html has 3 ends of a script, not 2",
		]);
	});
});

describe("manifest", () => {
	test.each([
		[{ oauthScopes: [] }],
		[{ oauthScopes: MANIFEST.oauthScopes.slice(1) }],
		[
			{
				oauthScopes: [
					...MANIFEST.oauthScopes,
					"https://www.googleapis.com/auth/spreadsheets",
				],
			},
		],
		[{ oauthScopes: undefined }],
		[{ runtimeVersion: "DEPRECATED_ES5" }],
		[{ addOns: {} }],
		[{ dependencies: {} }],
		[{ urlFetchWhitelist: [] }],
	])("%j is refused", (change) => {
		expect(withManifest(change)).toHaveLength(1);
	});
});

describe("size", () => {
	test("Code.js over 160 kB is refused", () => {
		expect(withCode(`${GOOD["Code.js"]}\n// ${"x".repeat(160_000)}`)).toEqual([
			expect.stringMatching(/^Code\.js has 160\.\d kB, more than 160$/),
		]);
	});

	test("Panel.html over 120 kB is refused", () => {
		expect(withPanel(`${PANEL}<!-- ${"x".repeat(120_000)} -->`)).toEqual([
			expect.stringMatching(/^Panel\.html has 120\.\d kB, more than 120$/),
		]);
	});
});
