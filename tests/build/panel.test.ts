import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { escapeMarks } from "../../src/build/escapemarks";
import { panelComplaints } from "../../src/build/gates/panel";
import { bundlePanel } from "../../src/build/panel";

const TRICKY = [
	"</script>",
	"</STYLE>",
	"<!-- a",
	"<? b ?>",
	"http://c",
	"/* d",
];

let folder: string;
let html: string;

beforeAll(async () => {
	folder = mkdtempSync(join(tmpdir(), "tonefold-"));
	writeFileSync(join(folder, "panel.css"), "p { color: #123 }");
	writeFileSync(
		join(folder, "main.ts"),
		`import "./panel.css";
		// Says it.
		const wholeTitle = ${JSON.stringify(TRICKY.join(" "))};
		document.title = wholeTitle;`,
	);
	html = await bundlePanel(join(folder, "main.ts"));
});
afterAll(() => rmSync(folder, { recursive: true }));

const script = () => /<script>([\s\S]*?)<\/script>/.exec(html)?.[1] ?? "";

test("style and script are inside the page, as they were written", () => {
	expect(html).toMatch(
		/<style>[\s\S]*p \{\n\s+color: #123;\n\}[\s\S]*<\/style>/,
	);
	expect(script()).toMatch(/\n\tdocument\.title = wholeTitle;\n/);
});

test("no text of the script can end it, or look like a template or a comment", () => {
	expect(panelComplaints(html)).toEqual([]);
	expect(html).not.toContain("<!-- a");
});

test("such text still means the same", () => {
	const document = { title: "" };
	new Function("document", script())(document);
	expect(document.title).toBe(TRICKY.join(" "));
});

test.each([
	['a = "http://b";', 'a = "http:\\u002f/b";'],
	[`a = \`//\${b}/*\`;`, `a = \`\\u002f/\${b}\\u002f*\`;`],
	["a = b / c; // d", "a = b / c; // d"],
])("%s is escaped where it is a text", (before, after) => {
	expect(escapeMarks(before)).toBe(after);
});

test("what cannot be escaped is an error", () => {
	expect(() => escapeMarks('a = "\\//";')).toThrow("line 1: cannot be escaped");
});
