import { expect, it } from "vitest";
import { sentAnswer, sentArguments } from "../../src/desk/wire";
import { entry, open } from "./open";

const circle: unknown[] = [];
circle.push(circle);

it.each([
	["a Date", new Date(0)],
	["a Date inside", [{ when: new Date(0) }]],
	["a function", () => 1],
	["a circle", circle],
	["NaN", Number.NaN],
	["a Map", new Map()],
	["a BigInt", 1n],
])("an argument that is %s fails", (_, value) =>
	expect(() => sentArguments([value])).toThrow(/illegal value/),
);

it("plain data arrives as a copy; undefined in a list is null", () => {
	const sent = { a: [1, "x", true, null], b: { c: "d" } };
	const [arrived] = sentArguments([sent]);
	expect(arrived).toEqual(sent);
	expect(arrived).not.toBe(sent);
	expect(sentArguments([[1, undefined], { a: undefined }])).toEqual([
		[1, null],
		{},
	]);
});

it("an answer with a Date anywhere arrives as null, and without failing", () => {
	expect(sentAnswer({ rows: [[new Date(0)]] })).toBeNull();
	expect(sentAnswer(undefined)).toBeNull();
	expect(() => sentAnswer(() => 1)).toThrow(/illegal value/);
});

it("the desk sends arguments and answers that way", async () => {
	const desk = await open(
		entry("return a === 'date' ? { when: new Date(0) } : { a: a, b: b };"),
	);
	expect(await desk.call("run", ["date"])).toBeNull();
	expect(await desk.call("run", [1, [2]])).toEqual({ a: 1, b: [2] });
	await expect(desk.call("run", [new Date(0)])).rejects.toThrow(/illegal/);
});

it("private and missing functions are not found", async () => {
	const desk = await open("function hidden_() { return 1; }");
	await expect(desk.call("hidden_")).rejects.toThrow(
		"Script function not found: hidden_",
	);
	for (const name of ["nothing", "constructor", "toString"])
		await expect(desk.call(name)).rejects.toThrow(
			`Script function not found: ${name}`,
		);
});
