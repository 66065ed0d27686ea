/** `HtmlService`: pages of the project's own files. */
import type { Sidebar } from "../contract";
import type { Call } from "./call";

type HtmlOutput = GoogleAppsScript.HTML.HtmlOutput;
type OutputMethods = Pick<
	HtmlOutput,
	"getContent" | "getTitle" | "setContent" | "setTitle"
>;

const KIND = "HtmlOutput";

function htmlOutput(call: Call, page: Sidebar): HtmlOutput {
	const methods: OutputMethods = {
		getContent: () => page.html,
		getTitle: () => page.title,
		setContent(content) {
			page.html = String(content);
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
			return htmlOutput(call, { title: "", html });
		},
	};
	return call.serve("HtmlService", methods);
}
