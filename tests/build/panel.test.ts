import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { panelComplaints } from "../../src/build/gates/panel";
import { bundlePanel } from "../../src/build/panel";
import { selfUnpacking, unpackedScript } from "../../src/build/selfunpacking";

const TRICKY = ["</script>", "</STYLE>", "<!-- a", "<? b ?>"];

let folder: string;
let html: string;

beforeAll(async () => {
	folder = mkdtempSync(join(tmpdir(), "tonefold-"));
	writeFileSync(join(folder, "panel.css"), "p { color: #123 }");
	writeFileSync(
		join(folder, "main.ts"),
		`import "./panel.css"; document.title = ${JSON.stringify(TRICKY.join(" "))}`,
	);
	html = await bundlePanel(join(folder, "main.ts"));
});
afterAll(() => rmSync(folder, { recursive: true }));

test("style and script are inside the page", () => {
	expect(unpackedScript(html)).toContain("p{color:#123}");
	expect(unpackedScript(html)).toContain("document.title=");
});

test("no text of the script can end it or look like a template", () => {
	expect(panelComplaints(html)).toEqual([]);
	expect(html).not.toContain("<!-- a");
});

test("such text still means the same", () => {
	const style = {};
	const document = {
		title: "",
		head: { append: (added: unknown) => expect(added).toBe(style) },
		createElement: () => style,
	};
	new Function("document", unpackedScript(html))(document);
	expect(document.title).toBe(TRICKY.join(" "));
});

test("what a packed script would load is found all the same", async () => {
	const packed = `<script>${await selfUnpacking('fetch("https://example.org")')}</script><script></script>`;
	expect(panelComplaints(packed)).toEqual([
		"Panel.html has a script that loads a file",
	]);
});
