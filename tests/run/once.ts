/** The run's one browser, one server of the desk and one page of the panel. */
import { type Browser, chromium } from "playwright-core";
import { inject } from "vitest";
import type { SharedName } from "./setup";

async function shared(name: SharedName): Promise<string> {
	const answer = await fetch(new URL(name, inject("sharedAt")));
	const text = await answer.text();
	if (!answer.ok) throw new Error(text);
	return text;
}

export const deskUrl = (): Promise<string> => shared("desk");

let panel: Promise<string> | undefined;

export function panelHtml(): Promise<string> {
	panel ??= shared("panel");
	return panel;
}

let browser: Promise<Browser> | undefined;

/**
 * The browser, which stays open: a file closes its own pages only.
 *
 * @throws Error where there is no browser: what needs one was then not checked.
 */
export function sharedBrowser(): Promise<Browser> {
	browser ??= shared("browser").then((address) => chromium.connect(address));
	return browser;
}
