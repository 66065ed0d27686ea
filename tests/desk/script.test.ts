import { expect, it } from "vitest";
import { openNodeRealm } from "../../src/desk/realm-node";
import { isPublic, loadScript, readScript } from "../../src/desk/script";
import { open } from "./open";

const load = (code: string) =>
	loadScript(readScript(code), openNodeRealm(), []);

it.each([
	"class A { x = 1 }",
	"class A { #x() {} }",
	"class A { static {} }",
	"export const a = 1;",
	"a ??= 1;",
	"const n = 1_000;",
])("%s is not an ES2020 script", (code) =>
	expect(() => readScript(code)).toThrow(SyntaxError),
);

it("finds top-level functions only, and which are private", () => {
	const script = readScript(
		"function A() { function B() {} }\nvar C = function () {};\n(() => { function D() {} })();\nfunction E_() {}",
	);
	expect(script.names).toEqual(["A", "E_"]);
	expect(isPublic(script, "A")).toBe(true);
	expect(isPublic(script, "E_")).toBe(false);
	expect(isPublic(script, "D")).toBe(false);
});

it("starts anew for every call", () => {
	const run = load(
		"var n = 0; var kept = []; function NEXT() { kept.push(1); return ++n + kept.length; }",
	);
	expect([run("NEXT", [], {}), run("NEXT", [], {})]).toEqual([2, 2]);
});

it.each([
	"function LEAK() { leaked = 1; }",
	"function LEAK() { globalThis.leaked = 1; }",
])("%s fails: the platform would forget the global", (code) =>
	expect(() => load(code)("LEAK", [], {})).toThrow(
		"LEAK left the global variable leaked behind",
	),
);

// missing on the platform: developers.google.com/apps-script/guides/v8-runtime (unsupported), and hosts' own objects
it.each(
	`setTimeout setInterval clearTimeout URL URLSearchParams TextEncoder TextDecoder fetch atob btoa crypto window
	document navigator performance process require structuredClone queueMicrotask Blob FormData`.split(
		/\s+/,
	),
)("has no %s", (name) =>
	expect(load(`function F() { return typeof ${name}; }`)("F", [], {})).toBe(
		"undefined",
	),
);

it("arguments are of the script's own context", () => {
	const run = load(
		"function F(a, d) { return a instanceof Array && a[0] instanceof Array && d instanceof Date; }",
	);
	expect(run("F", [[[1]], new Date(0)], {})).toBe(true);
});

it("cells find no service at all", async () => {
	const desk = await open(
		"function F() { return SpreadsheetApp.getActive().getNumSheets(); }\nfunction G() { return PropertiesService.getDocumentProperties(); }",
	);
	desk.type("Sheet1", "A1", "=F()");
	desk.type("Sheet1", "A2", "=G()");
	await desk.settle();
	expect(desk.errorAt("Sheet1", "A1")?.message).toBe(
		"You do not have permission to call SpreadsheetApp.getActive.",
	);
	expect(desk.errorAt("Sheet1", "A2")?.message).toContain("permission");
});
