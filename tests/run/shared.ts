/** The run's one browser and its one server of the desk. */
import { type Browser, chromium } from "playwright-core";
import { inject } from "vitest";
import type { SharedName } from "./setup";

async function addressOf(name: SharedName): Promise<string> {
	const answer = await fetch(new URL(name, inject("sharedAt")));
	const text = await answer.text();
	if (!answer.ok) throw new Error(text);
	return text;
}

export const deskUrl = (): Promise<string> => addressOf("desk");

let browser: Promise<Browser> | undefined;

/**
 * The browser, which stays open: a file closes its own pages only.
 *
 * @throws Error where there is no browser: what needs one was then not checked.
 */
export function sharedBrowser(): Promise<Browser> {
	browser ??= addressOf("browser").then((address) => chromium.connect(address));
	return browser;
}
