/** A browser for a file of tests, and the panel in it; each test ends without a complaint. */
import type { Browser, Locator, Page } from "playwright-core";
import { afterEach, beforeAll, expect } from "vitest";
import { findBrowser } from "../../src/desk/browser";
import { sharedBrowser } from "../run/once";
import { type Answers, type OpenPanel, openPanel } from "./page";

export const executable = findBrowser();

export interface Opened {
	panel(): OpenPanel;
	page(): Page;
	open(answers: Answers, html?: string): Promise<void>;
	/** The view that is shown. */
	shown(): Locator;
	/** In it. */
	field(label: string, place?: number): Locator;
	button(name: string | RegExp): Locator;
	view(name: string): Promise<void>;
}

export function panelInBrowser(): Opened {
	let browser: Browser;
	let panel: OpenPanel;
	beforeAll(async () => {
		browser = await sharedBrowser();
	}, 60_000);
	afterEach(async () => {
		const { complaints } = panel;
		await panel.close();
		expect(complaints).toEqual([]);
	});
	const page = () => panel.page;
	const shown = () => page().locator("[role=tabpanel]:not([hidden])");
	return {
		panel: () => panel,
		page,
		async open(answers, html) {
			panel = await openPanel(browser, answers, html);
			page().setDefaultTimeout(30_000);
		},
		shown,
		field: (label, place = 0) =>
			shown().getByLabel(label, { exact: true }).nth(place),
		button: (name) => shown().getByRole("button", { name }),
		view: (name) => page().getByRole("tab", { name }).click(),
	};
}
