import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { type Browser, chromium, type Page } from "playwright-core";
import { bundlePanel } from "../../src/build/panel";
import { BROWSER_ARGS } from "../../src/desk/browser";

const AXE = readFileSync(
	createRequire(import.meta.url).resolve("axe-core/axe.min.js"),
	"utf8",
);

/** What the script answers to a call: a value, an error's message, or nothing ever. */
export type Answer = { gives: unknown } | { fails: string } | { silent: true };
export type Answers = Readonly<Record<string, Answer>>;

interface Call {
	name: string;
	args: unknown[];
}

/** A panel in a page 300 px wide, with a stand-in for the script. */
export interface OpenPanel {
	page: Page;
	/** What the script answers from now on. */
	answer(answers: Answers): Promise<void>;
	calls(name: string): Promise<Call[]>;
	/** Everything the page complained of or asked the network for. */
	complaints: string[];
	/** Violations axe finds, as `rule: element`. */
	violations(): Promise<string[]>;
	close(): Promise<void>;
}

export const launch = (executablePath: string): Promise<Browser> =>
	chromium.launch({ executablePath, args: [...BROWSER_ARGS] });

let html: string | undefined;
export const panelHtml = async (): Promise<string> => {
	html ??= await bundlePanel();
	return html;
};

/** Runs in the page: `google.script.run` as Google has it, a new runner a handler, answers later and as copies. */
function scriptDouble(first: Answers): void {
	const desk = window as unknown as {
		answers: Answers;
		calls: Call[];
		google: unknown;
	};
	desk.answers = first;
	desk.calls = [];
	const copy = (value: unknown) => JSON.parse(JSON.stringify(value));
	const runner = (
		done: (value: unknown) => void,
		failed: (error: Error) => void,
	): unknown =>
		new Proxy(
			{},
			{
				get: (_, name: string) => {
					if (name === "withSuccessHandler")
						return (next: typeof done) => runner(next, failed);
					if (name === "withFailureHandler")
						return (next: typeof failed) => runner(done, next);
					return (...args: unknown[]) => {
						desk.calls.push({ name, args: copy(args) });
						setTimeout(() => {
							const answer = desk.answers[name];
							if (!answer)
								failed(new Error(`Script function not found: ${name}`));
							else if ("gives" in answer) done(copy(answer.gives));
							else if ("fails" in answer) failed(new Error(answer.fails));
						}, 5);
					};
				},
			},
		);
	desk.google = {
		script: {
			run: runner(
				() => {},
				() => {},
			),
		},
	};
}

export async function openPanel(
	browser: Browser,
	answers: Answers,
	height = 720,
): Promise<OpenPanel> {
	const context = await browser.newContext({
		viewport: { width: 300, height },
	});
	const page = await context.newPage();
	const complaints: string[] = [];
	page.on("pageerror", (error) => complaints.push(String(error)));
	page.on("console", (message) => complaints.push(message.text()));
	const body = await panelHtml();
	await page.route("**/*", (route) => {
		if (route.request().url() === "http://panel.test/")
			return route.fulfill({ body, contentType: "text/html" });
		complaints.push(`asked for ${route.request().url()}`);
		return route.abort();
	});
	await page.addInitScript(scriptDouble, answers);
	await page.goto("http://panel.test/");
	return {
		page,
		complaints,
		answer: (next) =>
			page.evaluate((more) => {
				const desk = window as unknown as { answers: Answers };
				desk.answers = { ...desk.answers, ...more };
			}, next),
		calls: (name) =>
			page.evaluate(
				(wanted) =>
					(window as unknown as { calls: Call[] }).calls.filter(
						(call) => call.name === wanted,
					),
				name,
			),
		violations: async () => {
			await page.evaluate(AXE);
			return page.evaluate(async () => {
				const { axe } = window as unknown as {
					axe: { run(): Promise<import("axe-core").AxeResults> };
				};
				const { violations } = await axe.run();
				return violations.flatMap(({ id, nodes }) =>
					nodes.map((node) => `${id}: ${node.html}`),
				);
			});
		},
		close: () => context.close(),
	};
}
