/** `HtmlService`: pages of the project's own files. */
import type { Sidebar } from "../contract";
import type { Call } from "./call";

type HtmlOutput = GoogleAppsScript.HTML.HtmlOutput;
type OutputMethods = Pick<HtmlOutput, "append" | "setTitle">;

const KIND = "HtmlOutput";

function htmlOutput(call: Call, page: Sidebar): HtmlOutput {
	const methods: OutputMethods = {
		append(added) {
			page.html += String(added);
			return served;
		},
		setTitle(title) {
			page.title = String(title);
			return served;
		},
	};
	const served: HtmlOutput = call.serve<HtmlOutput>(KIND, methods, page);
	return served;
}

/** A page's scripts lose what looks like a comment, inside a text too: Google does no less. */
const processed = (html: string): string =>
	html.replace(
		/(<script\b[^>]*>)([\s\S]*?)(<\/script>)/gi,
		(_, open, script, close) =>
			open + script.replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, "") + close,
	);

/** The page behind an output. */
export function pageOf(call: Call, output: unknown): Sidebar {
	return { ...call.inner<Sidebar>(output, KIND) };
}

export function htmlService(call: Call): object {
	const methods: Pick<
		GoogleAppsScript.HTML.HtmlService,
		"createHtmlOutputFromFile"
	> = {
		createHtmlOutputFromFile(name) {
			const html = call.host.addOn.pages[String(name).replace(/\.html$/, "")];
			if (html === undefined)
				throw new Error(`No HTML file named ${name} was found.`);
			return htmlOutput(call, { title: "", html: processed(html) });
		},
	};
	return call.serve("HtmlService", methods);
}
