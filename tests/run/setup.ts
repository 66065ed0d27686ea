/** What the test files of a run share. Each is started when a file first asks for it, and ended with the run. */
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { chromium } from "playwright-core";
import type { TestProject } from "vitest/node";
import { bundlePanel } from "../../src/build/panel";
import { BROWSER_ARGS, findBrowser } from "../../src/desk/browser";
import { startServer } from "../desk/page/server";

interface Shared {
	/** The address of what is running, or the text of what is made. */
	text: string;
	end?(): Promise<void>;
}

async function startBrowser(): Promise<Shared> {
	const executablePath = findBrowser();
	if (!executablePath)
		throw new Error(
			"NOT CHECKED: no Chromium was found. Install one, or name it in CHROMIUM.",
		);
	const server = await chromium.launchServer({
		executablePath,
		args: [...BROWSER_ARGS],
	});
	return { text: server.wsEndpoint(), end: () => server.close() };
}

async function startDesk(): Promise<Shared> {
	const server = await startServer();
	return {
		text: server.url,
		async end() {
			await server.stop();
		},
	};
}

/** The panel's page of the sources as they are. */
const makePanel = async (): Promise<Shared> => ({ text: await bundlePanel() });

const STARTS = { browser: startBrowser, desk: startDesk, panel: makePanel };
export type SharedName = keyof typeof STARTS;

declare module "vitest" {
	interface ProvidedContext {
		/** Where a test file asks for what is shared. */
		sharedAt: string;
	}
}

export default async function share(project: TestProject) {
	const started = new Map<string, Promise<Shared>>();
	const get = (name: SharedName): Promise<Shared> => {
		const one = started.get(name) ?? STARTS[name]();
		started.set(name, one);
		return one;
	};
	const server = createServer(({ url = "/" }, response) => {
		get(url.slice(1) as SharedName).then(
			({ text }) => response.end(text),
			(error) => response.writeHead(500).end(error.message),
		);
	});
	await new Promise<void>((listening) =>
		server.listen(0, "127.0.0.1", listening),
	);
	const { port } = server.address() as AddressInfo;
	project.provide("sharedAt", `http://127.0.0.1:${port}/`);
	return async () => {
		server.close();
		const all = await Promise.allSettled(started.values());
		for (const one of all)
			if (one.status === "fulfilled") await one.value.end?.();
	};
}
