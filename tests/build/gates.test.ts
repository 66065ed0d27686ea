import { describe, expect, test } from "vitest";
import { complaints, type Dist, LIMITS_KB } from "../../src/build/gates";

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
<body><script>
// see http://www.w3.org
document.title = "http:\\u002f/www.w3.org/2000/svg"; /* a namespace */
</script></body></html>`;

const TEMPLATES = `/** The tabs. */
function templates_() {
  return { workbook: () => ({}) };
}`;

const MANIFEST = {
	timeZone: "Etc/UTC",
	runtimeVersion: "V8",
	exceptionLogging: "NONE",
	oauthScopes: [
		"https://www.googleapis.com/auth/spreadsheets.currentonly",
		"https://www.googleapis.com/auth/script.container.ui",
	],
};

const GOOD: Dist = {
	"Code.js": [BUNDLE, STUB, ENTRY].join("\n"),
	"Templates.js": TEMPLATES,
	"Panel.html": PANEL,
	"appsscript.json": JSON.stringify(MANIFEST),
};

const withCode = (code: string): string[] =>
	complaints({ ...GOOD, "Code.js": code }, ["DOUBLED"]);
const withTemplates = (templates: string): string[] =>
	complaints({ ...GOOD, "Templates.js": templates }, ["DOUBLED"]);
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

test("good files pass", () => {
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
			"Panel.html has 2 ends of a script, not 1",
		]);
	});
});

describe("templates", () => {
	test.each([
		["a syntax of later", "let a = null; a ??= 1", "not an ES2020 script"],
		["a name that nobody declares", "process.x", "Apps Script has no process"],
	])("%s is refused in them too", (_, statement, sentence) => {
		expect(
			withTemplates(TEMPLATES.replace("return", `${statement}; return`)),
		).toEqual([expect.stringContaining(sentence)]);
	});

	test("outside a function they would be made at each cell's call", () => {
		expect(withTemplates(`${TEMPLATES}\nvar tabs = [1];`)).toEqual([
			"Templates.js: tabs: not a function, at the top level",
		]);
	});
});

describe("comments", () => {
	/** The good page with a statement more in its script. */
	const inPage = (statement: string): string[] =>
		withPanel(PANEL.replace("document", `${statement}\ndocument`));

	test.each([
		["in a string", 'const a = "http://b";'],
		["in a string, an opening one", 'const a = "/*";'],
		["in a template", "const a = `//`;"],
		["in a template with a value", `const a = \`\${1}/*\${2}*/\`;`],
		["behind a regular expression's last sign", "const a = /b\\//;"],
		["in a regular expression", "const a = /[/*]/;"],
		["in a comment of the other kind", "// a /* b\nconst a = 1; /* c */"],
		["that joins two words", "const/**/a = 1;"],
	])("what looks like one %s is refused", (_, statement) => {
		expect(inPage(statement)).toContainEqual(
			expect.stringMatching(
				/^Panel\.html: line \d+: \/\/ or \/\* outside a comment$/,
			),
		);
	});

	test.each([
		"// a comment, `quoted`",
		"/** A comment\n * of several lines. */",
		'const a = "/" + /[*]/.source + 1 / 2;',
		'const a = "/\\u002f";',
	])("%s may stand there", (statement) => {
		expect(inPage(statement)).toEqual([]);
	});

	test("what is no program is refused", () => {
		expect(inPage("const = 1;")).toEqual([
			expect.stringContaining("Panel.html: not an ES2020 script"),
		]);
	});

	test("a page is not read back, since it comes without them", () => {
		expect(inside("const f = (page) => page.getContent()")).toEqual([
			"line 1: getContent() gives a page without what looks like a comment",
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
		[{ exceptionLogging: "STACKDRIVER" }],
		[{ exceptionLogging: undefined }],
		[{ addOns: {} }],
		[{ dependencies: {} }],
		[{ urlFetchWhitelist: [] }],
	])("%j is refused", (change) => {
		expect(withManifest(change)).toHaveLength(1);
	});
});

describe("size", () => {
	test.each(Object.entries(LIMITS_KB))(
		"%s over %i kB is refused",
		(file, limit) => {
			const comment = file.endsWith(".html") ? ["<!--", "-->"] : ["/*", "*/"];
			const more = comment.join("x".repeat(limit * 1000));
			const name = file as keyof typeof LIMITS_KB;
			const large = { ...GOOD, [name]: `${GOOD[name]}\n${more}` };
			expect(complaints(large, ["DOUBLED"])).toEqual([
				expect.stringMatching(
					new RegExp(`^${file} has ${limit}\\.\\d kB, more than ${limit}$`),
				),
			]);
		},
	);
});
