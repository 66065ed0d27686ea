import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Browser, Page } from "playwright-core";
import { panelHtml } from "../run/once";

const AXE = readFileSync(
	createRequire(import.meta.url).resolve("axe-core/axe.min.js"),
	"utf8",
);

/** What the script answers to a call: a value, what a function makes of the arguments, an error's message, or nothing ever. */
export type Answer =
	| { gives: unknown }
	| { does: (...args: never[]) => unknown }
	| { fails: string }
	| { silent: true };
export type Answers = Readonly<Record<string, Answer>>;

/** What the page is told of an answer. */
type Told = { gives: unknown } | { fails: string } | { silent: true };

interface Call {
	name: string;
	args: unknown[];
}

/** A panel in a page 300 px wide, with a stand-in for the script. */
export interface OpenPanel {
	page: Page;
	/** What the script answers from now on. */
	answer(answers: Answers): void;
	calls(name: string): Call[];
	/** Everything the page complained of or asked the network for. */
	complaints: string[];
	/** Violations axe finds, as `rule: element`. */
	violations(): Promise<string[]>;
	close(): Promise<void>;
}

declare global {
	interface Window {
		answerOf(name: string, args: unknown[]): Promise<Told>;
	}
}

/** Runs in the page: `google.script.run` as Google has it, a new runner a handler, answers later and as copies. */
function scriptDouble(): void {
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
						window.answerOf(name, copy(args)).then((told) => {
							if ("gives" in told) done(told.gives);
							else if ("fails" in told) failed(new Error(told.fails));
						});
					};
				},
			},
		);
	(window as unknown as { google: unknown }).google = {
		script: {
			run: runner(
				() => {},
				() => {},
			),
		},
	};
}

function toldOf(answer: Answer | undefined, call: Call): Told {
	if (!answer) return { fails: `Script function not found: ${call.name}` };
	if (!("does" in answer)) return answer;
	try {
		return { gives: answer.does(...(call.args as never[])) };
	} catch (error) {
		return { fails: String(error) };
	}
}

/** What one opening of the panel is given, and what is seen of it. */
interface Opening {
	answers: Answers;
	html: string;
	calls: Call[];
	complaints: string[];
}

/** A browser's one page, gone to anew for each opening: another page would cost seconds. */
interface Stage {
	page: Page;
	now: Opening;
}

const ADDRESS = "http://panel.test/";
const stages = new WeakMap<Browser, Promise<Stage>>();

async function newStage(browser: Browser, now: Opening): Promise<Stage> {
	const page = await browser.newPage({ viewport: { width: 300, height: 720 } });
	const stage: Stage = { page, now };
	const complain = (text: string) => stage.now.complaints.push(text);
	page.on("pageerror", (error) => complain(String(error)));
	page.on("console", (message) => complain(message.text()));
	await page.route("**/*", (route) => {
		const url = route.request().url();
		if (url === ADDRESS)
			return route.fulfill({ body: stage.now.html, contentType: "text/html" });
		complain(`asked for ${url}`);
		return route.abort();
	});
	await page.exposeFunction("answerOf", (name: string, args: unknown[]) => {
		const { calls, answers } = stage.now;
		calls.push({ name, args });
		return toldOf(answers[name], { name, args });
	});
	await page.addInitScript(scriptDouble);
	return stage;
}

export async function openPanel(
	browser: Browser,
	answers: Answers,
	html?: string,
): Promise<OpenPanel> {
	const now: Opening = {
		answers,
		html: html ?? (await panelHtml()),
		calls: [],
		complaints: [],
	};
	const known = stages.get(browser) ?? newStage(browser, now);
	stages.set(browser, known);
	const stage = await known;
	stage.now = now;
	const { page } = stage;
	await page.goto(ADDRESS);
	return {
		page,
		complaints: now.complaints,
		answer(next) {
			now.answers = { ...now.answers, ...next };
		},
		calls: (wanted) => now.calls.filter(({ name }) => name === wanted),
		violations: () => violationsOf(page),
		async close() {
			await page.goto("about:blank");
		},
	};
}

export async function violationsOf(page: Page): Promise<string[]> {
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
}
