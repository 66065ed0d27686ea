/** Pages of the project's files, as Google serves them; and what a script in error is called. */
import { expect, it } from "vitest";
import { openHeadlessDesk } from "../../src/desk/headless";
import { open } from "./open";

const SHOW =
	"SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile('Panel')";

/** What is shown of a page, by a script that adds a text to it. */
async function served(html: string, added = ""): Promise<string | undefined> {
	const desk = await openHeadlessDesk("", {
		enabled: true,
		addOn: {
			name: "Test",
			code: `function run(added) { ${SHOW}.append(added)); }`,
			pages: { Panel: html },
		},
	});
	try {
		await desk.call("run", [added]);
		return desk.sidebar()?.html;
	} finally {
		desk.dispose();
	}
}

// stripped in texts too: reported: github.com/enuchi/React-Google-Apps-Script#157 and #170
it.each([
	["<script>a; // b\nc;</script>", "<script>a; \nc;</script>"],
	["<script>a /* b\n */ c;</script>", "<script>a  c;</script>"],
	['<script>a = "http://b";\nc;</script>', '<script>a = "http:\nc;</script>'],
	[
		'<script type="text/plain" id="d">a//b</script>',
		'<script type="text/plain" id="d">a</script>',
	],
	["<p>http://a</p><script>b</script>", "<p>http://a</p><script>b</script>"],
])("of the page %s the browser gets %s", async (html, expected) =>
	expect(await served(html)).toBe(expected),
);

it("a page can be added to", async () =>
	expect(await served("<p>a</p>", "<p>http://b</p>")).toBe(
		"<p>a</p><p>http://b</p>",
	));

it.each(["getContent()", "setContent('a')"])(
	"nothing of ours uses .%s, so that it is not there",
	async (member) => {
		const desk = await open(`function run() { ${SHOW}.${member}); }`);
		await expect(desk.call("run")).rejects.toThrow("is not a function");
	},
);

it("an error's stack names the script", async () => {
	const desk = await open(
		"function run() { try { throw new Error('a'); } catch (e) { return e.stack; } }",
	);
	expect(await desk.call("run")).toMatch(/at (\w+\.)?run \(Code\.js:\d+:\d+\)/);
});
