/** What must hold for every declared function, whatever it calculates. */
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { callFunction, registry } from "../../src/functions";
import type { Param, SheetFunction } from "../../src/functions/declare";
import { helpOf } from "../../src/functions/help";

const HOSTILE: readonly unknown[] = [
	"",
	undefined,
	null,
	"abc",
	"=1+1",
	-1,
	-1e9,
	1e308,
	Number.NaN,
	Number.POSITIVE_INFINITY,
	true,
	new Date(2026, 2, 4),
	"#N/A",
	"#DIV/0!",
	"Loading...",
	"x".repeat(60000),
	[[""], [""]],
	[["abc"], ["def"]],
	[[-1], [2]],
	[
		[1, 2, 3],
		[4, 5, 6],
	],
	[["#REF!"]],
	[[1], ["#N/A"]],
	[[]],
];

/** Letters of a help that show where it is cut at one line: by there stands an example, or the words to choose from. */
const SEEN = 70;

function finite(answer: unknown): boolean {
	if (Array.isArray(answer)) return answer.length > 0 && answer.every(finite);
	return typeof answer === "number"
		? Number.isFinite(answer)
		: typeof answer === "string";
}

function outcome(fn: SheetFunction, args: readonly unknown[]): string {
	try {
		const answer = callFunction(fn, args);
		return finite(answer) ? "answer" : `not finite: ${JSON.stringify(answer)}`;
	} catch (error) {
		if (!(error instanceof InputError)) return `a bug: ${error}`;
		return /^[^\n]{3,400}$/.test(error.message)
			? "sentence"
			: `no sentence: ${error.message.slice(0, 500)}`;
	}
}

/** The number after `e.g.` in an argument's help. */
function suggested({ kind, help }: Param): number | undefined {
	const [, typed] = /e\.g\. ([\d.]+%?)(?=$| or |[,;)]| for)/.exec(help) ?? [];
	if (kind !== "cell" || !typed) return undefined;
	const number = Number(typed.replace("%", ""));
	return typed.endsWith("%") ? number / 100 : number;
}

describe.each(registry.map((fn) => [fn.name, fn] as const))("%s", (_, fn) => {
	const params = Object.entries(fn.params);

	test("its example gives its answer", () => {
		const answer = callFunction(fn, fn.example.values);
		const flat = [answer].flat(2);
		const expected = [fn.example.answer].flat(2);
		expect(flat.length).toBe(expected.length);
		flat.forEach((value, index) => {
			const wanted = expected[index];
			if (typeof wanted === "number")
				expect(value).toBeCloseTo(
					wanted,
					3 - Math.ceil(Math.log10(Math.abs(wanted) + 1)),
				);
			else expect(value).toBe(wanted);
		});
	});

	test("what its arguments suggest works together", () => {
		const args = Object.values(fn.params).map(
			(param, index) => suggested(param) ?? fn.example.values[index] ?? "",
		);
		expect(outcome(fn, args)).toBe("answer");
	});

	test("its help shows no more digits of an answer than say something", () => {
		expect(helpOf(fn).example.answer.replace(/\D/g, "").length).toBeLessThan(8);
	});

	test("its example reads in every locale", () => {
		for (const shown of fn.example.shown)
			expect(shown.replace(/"[^"]*"/g, "")).not.toMatch(/\d[.,]\d/);
		expect(fn.example.shown.length).toBe(fn.example.values.length);
	});

	test("every argument says what it is; required ones come first", () => {
		// Cutouts stand beside their pieces, also where density follows.
		const optional = params
			.filter(([, param]) => param.kind !== "table")
			.map(([, param]) => param.optional);
		expect(optional).toEqual([...optional].sort());
		for (const [name, param] of params) {
			expect(name).toMatch(/^[a-z][a-z_]*$/);
			expect(param.help.slice(0, SEEN)).toMatch(/^[A-Z].*e\.g\. \S|^[a-z]/);
		}
		expect(fn.summary).toMatch(/^[A-Z].{10,110}\.$/s);
		expect(fn.source.length).toBeGreaterThan(5);
	});

	test("units come last", () => {
		const at = params.findIndex(([, param]) => param.kind === "units");
		expect([-1, params.length - 1]).toContain(at);
	});

	test.each(
		params.map(([name, param], index) => [name, param, index] as const),
	)("bad input in %s is one clear sentence", (_name, _param, index) => {
		for (const bad of HOSTILE) {
			const args = [...fn.example.values];
			while (args.length < index) args.push("");
			args[index] = bad;
			expect(["answer", "sentence"], `${String(bad).slice(0, 40)}`).toContain(
				outcome(fn, args),
			);
		}
	});

	test.each(
		params
			.map(([name, { optional }], index) => ({ name, optional, index }))
			.filter(({ optional }) => !optional)
			.map(({ name, index }) => [name, index] as const),
	)("a blank %s and an error cell there are named", (name, index) => {
		for (const [bad, words] of [
			["", /is blank/],
			["#N/A", /is an error cell \(#N\/A\)/],
		] as const) {
			const args = [...fn.example.values];
			args[index] = bad;
			expect(() => callFunction(fn, args), `${name} ${bad}`).toThrow(words);
		}
	});

	test("the same call gives the same answer", () => {
		expect(callFunction(fn, fn.example.values)).toEqual(
			callFunction(fn, fn.example.values),
		);
	});
});

test("names are unique and legal for Sheets", () => {
	const names = registry.map(({ name }) => name);
	expect(new Set(names).size).toBe(names.length);
	for (const name of names) {
		expect(name).toMatch(/^[A-Z][A-Z0-9_]*[A-Z0-9]$/);
		expect(name).not.toMatch(/^[A-Z]{1,3}\d+$/);
	}
});
