import { afterEach, beforeEach, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { openWorkbook } from "./workbook";

let desk: Desk;
beforeEach(async () => {
	desk = await openWorkbook();
});
afterEach(() => desk.dispose());

const keep = (text: unknown) => desk.call("keepDraft", [text as string]);
const kept = () => desk.call("keptDraft");

test("nothing is kept at first", async () => {
	expect(await kept()).toBe("");
});

test.each([
	["a word", "A cafe"],
	["a formula, an element, a stone", '=A1 <img onerror="x"> 🪨 وعاء'],
	// a property of Google's holds 9 kB
	["more than one property holds", "é".repeat(30_000)],
	["a stone where it is cut", `${"x".repeat(2999)}🪨${"y".repeat(3000)}`],
])("%s comes back as it was", async (_, text) => {
	expect(await keep(text)).toBe(text.length);
	expect(await kept()).toBe(text);
});

test("a shorter text leaves nothing of a longer one, and a blank one nothing at all", async () => {
	await keep("x".repeat(20_000));
	await keep("short");
	expect(await kept()).toBe("short");
	await keep("");
	expect(await kept()).toBe("");
});

test.each([[90_001], [12]])("what cannot be kept is refused", async (given) => {
	await keep("before");
	const text = given > 100 ? "x".repeat(given) : given;
	await expect(keep(text)).rejects.toThrow("at most 90000 letters");
	expect(await kept()).toBe("before");
});

test("belongs to its file, though a person's properties are those of all files", async () => {
	const userProperties = new Map<string, string>();
	const inFile = async (
		fileId: string,
		work: (file: Desk) => Promise<unknown>,
	) => {
		desk.dispose();
		desk = await openWorkbook({ fileId, userProperties });
		return work(desk);
	};
	const keptIn = (file: Desk) => file.call("keptDraft");
	await inFile("one", (file) => file.call("keepDraft", ["A cafe"]));
	expect(await inFile("two", keptIn)).toBe("");
	await inFile("two", (file) => file.call("keepDraft", ["A bank"]));
	await inFile("two", (file) => file.call("keepDraft", [""]));
	expect(await inFile("one", keptIn)).toBe("A cafe");
});
