import {
	mkdirSync,
	mkdtempSync,
	readFileSync,
	rmSync,
	writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { bundleCode, INSIDE, PRODUCT } from "../../src/build/bundle";
import { entryPoints } from "../../src/build/entries";
import { scriptComplaints } from "../../src/build/gates/script";
import { stubComplaints } from "../../src/build/gates/stubs";
import { undocumented } from "../../src/build/undocumented";
import { registry } from "../../src/functions/index";
import { workbook } from "../../templates/index";
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

/** Every key of the templates, as the script gets them. */
function carriedKeys(): string[] {
	const keys: string[] = [];
	JSON.stringify(workbook(), (key, value) => {
		keys.push(key);
		return value;
	});
	return keys;
}

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

	test("gives short names only to what stays inside it", () => {
		// what crosses to the panel, and what templates and job files say
		const crossing = ["sheets/messages", "template/job", "template/plan"]
			.map((file) => readFileSync(join(PRODUCT.root, `src/${file}.ts`), "utf8"))
			.join("\n");
		const fields = [...crossing.matchAll(/^\s*(\w+)\??:/gm)].map(
			([, name = ""]) => name,
		);
		expect(fields.length).toBeGreaterThan(50);
		expect(fields.filter((name) => INSIDE.test(name))).toEqual([]);
		expect(carriedKeys().filter((name) => INSIDE.test(name))).toEqual([]);
		// a name as a text would still be the long one
		const texts = [...code.matchAll(/["'`](\w+)["'`]/g)];
		expect(texts.filter(([, text = ""]) => INSIDE.test(text))).toEqual([]);
		expect(code).not.toMatch(/\bmassKg\b/);
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

describe("a declaration in the script", () => {
	const left = (source: string): string =>
		undocumented(source).replace(/\s+/g, " ").trim();

	test("keeps what computes and leaves out what a reader is told", () => {
		expect(
			left(`
			export const A = sheetFunction({
				name: "A", group: "G", summary: "S", limits: \`L, \${1}\`,
				params: { group: text("kept") },
				answer: { shape: "table", text: "T", columns: [{ text: "C", unit: "mass" }] },
				example: { shown: ["1, 2"] }, source: "B",
				compute: ({ example }) => example,
			});
			export const other = { source: "kept too" };`),
		).toBe(
			'export const A = sheetFunction({ name: "A", params: { group: text("kept") }, answer: { shape: "table", columns: [{ unit: "mass" }] }, compute: ({ example }) => example }); export const other = { source: "kept too" };',
		);
	});

	test("loses the help of arguments, but for the name of columns that follow", () => {
		expect(
			left(`
			import { mass, word, table, text } from "./arguments";
			import { said } from "./other";
			export const a = mass("Help", { blank: 1 });
			export const b = word(["x"], \`Help\`, { blank: "x" });
			export const c = table("Help", { name: text("Help") }, { more: mass("dose", {}) });
			export const d = said("kept");`),
		).toBe(
			'import { mass, word, table, text } from "./arguments"; import { said } from "./other"; export const a = mass("", { blank: 1 }); export const b = word(["x"], "", { blank: "x" }); export const c = table("", { name: text("") }, { more: mass("dose", {}) }); export const d = said("kept");',
		);
	});

	test("loses the help given to a function of its own that takes one", () => {
		expect(
			left(`
			import { text } from "./arguments";
			const typed = (help: string) => text(help, { blank: "" });
			const kept = (name: string) => name;
			export const a = [typed("Help"), kept("kept")];`),
		).toBe(
			'import { text } from "./arguments"; const typed = (help) => text(help, { blank: "" }); const kept = (name) => name; export const a = [typed(""), kept("kept")];',
		);
	});
});
