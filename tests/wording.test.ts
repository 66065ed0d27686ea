import { describe, expect, test } from "vitest";
import { type Written, written } from "./architecture/files";

// Each pattern has a letter in brackets, so that it does not find itself.

/** What is said of the making and not of the thing. */
const ABOUT_THE_MAKING: Record<string, RegExp> = {
	"the making of it": /\btran[s]cripts?\b|\b[s]essions?\b|\b[S]essions\b/,
	"a note to self": /\b(TOD[O]|FIXM[E]|XX[X])\b/,
	"a folder of one machine":
		/(^|[\s"'`(=])\/(wor[k]|tm[p]|hom[e]|roo[t]|User[s])\//m,
	"a test that does not run": /\b(test|it|describe)\.(ski[p]|onl[y]|tod[o])\b/,
};

/** One spelling in code and interface. */
const NOT_US_SPELLING =
	/\b(\w*colo[u]r\w*|mo[u]ld\w*|gr[e]y(s|ish)?|\w*fibr[e]s?|cent[r]e[sd]?|(milli|centi|kilo)?met[r]es?|(milli)?lit[r]es?|behavio[u]r\w*|labo[u]r\w*|favo[u]r\w*|neighbo[u]r\w*|licenc[e]s?|alumini[u]m|anal[y]se[sd]?|(organ|recogn|normal|minim|maxim|summar|initial)i[s](e[sd]?|ing|ation)|tonn[e]s)\b/i;

/** Titles and names of others, spelled their way. */
const QUOTED = /Glassfibre|Fibre Reinforced|Mould|Colour|Centre/;

/** Every line that a pattern finds, as `file:line: text`. */
function found(files: readonly Written[], pattern: RegExp): string[] {
	return files.flatMap(({ file, text }) =>
		text
			.split("\n")
			.map((line, i) => ({ line, at: `${file}:${i + 1}` }))
			.filter(({ line }) => pattern.test(line))
			.map(({ line, at }) => `${at}: ${line.trim().slice(0, 100)}`),
	);
}

const files = written();

describe("the repository speaks of the product alone", () => {
	test.each(Object.entries(ABOUT_THE_MAKING))("no word of %s", (_, pattern) => {
		expect(found(files, pattern)).toEqual([]);
	});

	test.each([
		["the making of it", `earlier ${"ses"}${"sion"}s`],
		["a note to self", `${"TO"}${"DO"}: later`],
		["a folder of one machine", `open("${"/wo"}${"rk"}/a")`],
		["a test that does not run", `test.${"sk"}${"ip"}("a")`],
	])("%s is found", (what, text) => {
		const pattern = ABOUT_THE_MAKING[what] ?? /$^/;
		expect(found([{ file: "a", text }], pattern)).toHaveLength(1);
	});
});

describe("US spelling", () => {
	test("in code, interface and documents", () => {
		const lines = found(files, NOT_US_SPELLING);
		expect(lines.filter((line) => !QUOTED.test(line))).toEqual([]);
	});

	test.each([`colo${"u"}red`, `fib${"re"}`, `gr${"ey"}`, `millimet${"re"}s`])(
		"%s is found",
		(text) => {
			expect(found([{ file: "a", text }], NOT_US_SPELLING)).toHaveLength(1);
		},
	);
});
