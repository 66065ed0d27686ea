import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { bundleCode, PRODUCT } from "../../src/build/bundle";
import { entryPoints } from "../../src/build/entries";
import { scriptComplaints } from "../../src/build/gates/script";
import { stubComplaints } from "../../src/build/gates/stubs";
import { registry } from "../../src/functions/index";
import { bareCaller } from "./bare";

/** Entry points of every form that the real ones might take. */
const ENTRIES = `
import { answer } from "./answer";
/**
 * Builds the menu.
 * Touches nothing else.
 */
export function onOpen(event: { mode: string }): string { return event.mode; }
/** Adds what came. */
export function added(first = 1, { a }: { a: number } = { a: 2 }): number { return first + a; }
export { answer };
`;
const ANSWER = `/** Says it. */
export function answer(): string { return "42"; }`;

let folder: string;
let code: string;

beforeAll(async () => {
	folder = mkdtempSync(join(tmpdir(), "tonefold-"));
	mkdirSync(folder, { recursive: true });
	writeFileSync(join(folder, "entries.ts"), ENTRIES);
	writeFileSync(join(folder, "answer.ts"), ANSWER);
	code = await bundleCode(registry, {
		root: folder,
		functions: join(PRODUCT.root, "src/functions/index"),
		entries: "./entries.ts",
	});
});
afterAll(() => rmSync(folder, { recursive: true }));

describe("entry points", () => {
	test("have their names, arguments and the first sentence of their comment", async () => {
		expect(await entryPoints(join(folder, "entries.ts"))).toEqual([
			{
				name: "added",
				params: ["first", "input2"],
				doc: "Adds what came.",
			},
			{ name: "answer", params: [], doc: "Says it." },
			{ name: "onOpen", params: ["event"], doc: "Builds the menu." },
		]);
	});

	test.each([
		["without a comment", "export function bare() {}", "needs a /** */"],
		[
			"that is no function",
			"/** A. */\nexport const a = 1;",
			"not a plain function",
		],
	])("one %s is refused", async (_, source, sentence) => {
		const file = join(folder, "bad.ts");
		writeFileSync(file, source);
		await expect(entryPoints(file)).rejects.toThrow(sentence);
	});

	test("are called with what came, and have their own defaults for the rest", () => {
		const call = bareCaller(code);
		expect(call("added", [])).toBe(3);
		expect(call("added", [5])).toBe(7);
		expect(call("added", [5, { a: 6 }])).toBe(11);
		expect(call("onOpen", [{ mode: "NONE" }])).toBe("NONE");
	});
});

describe("Code.js", () => {
	test("passes the gates", () => {
		const names = registry.map(({ name }) => name);
		expect(scriptComplaints(code)).toEqual([]);
		expect(stubComplaints(code, names)).toEqual([]);
	});

	test("says that it wants the open file only", () => {
		expect(code).toMatch(/^\/\*\* @OnlyCurrentDoc \*\/\n/);
	});

	test("answers a cell in a context that has nothing but the language", () => {
		// 8 ft 1/2 in = 8 × 12 + 0.5 in; by definition 1 in = 25.4 mm.
		const call = bareCaller(code);
		expect(call("READ_LENGTH", ["8' 1/2\"", "us"])).toBeCloseTo(96.5, 9);
		expect(call("READ_LENGTH", ["8' 1/2\""])).toBeCloseTo(96.5 * 25.4, 9);
	});

	test("passes on how many arguments came: too many is an error", () => {
		expect(() => bareCaller(code)("READ_LENGTH", ["1", "us", 3, 4])).toThrow(
			/READ_LENGTH takes at most 2 arguments, got 4/,
		);
	});

	test("explains a function above its name", () => {
		const help = code.slice(0, code.indexOf("\nfunction READ_LENGTH("));
		expect(help.slice(help.lastIndexOf("/**"))).toMatch(
			/^\/\*\*\n \* \w.*\n(?: \* .*\n)* \*\n \* @param \{[^}]+\} text \w.*\n \* @param \{"us"\} units .*\n \* @customfunction\n \*\/$/,
		);
	});
});
