/** Every tab and every part of the panel as a picture, on a screen, on a phone and on paper, for whoever wants to look. */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { closePanel, opened, panelOf, tabs, visit } from "../desk/page/visit";
import { panelAt, show } from "./desk-steps";

const SIZES = {
	desk: { width: 1280, height: 720 },
	phone: { width: 390, height: 844 },
} as const;
const PAPERS = ["A4", "Letter"] as const;
/** The grid draws in its own time. */
const DRAWN_MS = 1200;

const fileName = (name: string) =>
	name.toLowerCase().replace(/[^a-z0-9]+/g, "-");

async function keepTabs(
	page: Page,
	folder: string,
	size: string,
): Promise<void> {
	for (const tab of await tabs(page)) {
		await show(page, tab, "A1");
		await page.waitForTimeout(DRAWN_MS);
		await page.screenshot({
			path: join(folder, `${fileName(tab)}-${size}.png`),
		});
	}
}

async function keepPapers(page: Page, folder: string): Promise<void> {
	await page.evaluate(() => {
		window.print = () => undefined;
	});
	for (const tab of await tabs(page)) {
		await show(page, tab, "A1");
		await page.waitForTimeout(DRAWN_MS);
		await page
			.locator("#print-tab")
			.evaluate((button) => (button as HTMLElement).click());
		for (const format of PAPERS)
			await page.pdf({
				path: join(folder, `${fileName(tab)}-${format.toLowerCase()}.pdf`),
				format,
			});
	}
}

async function keepPanel(
	page: Page,
	folder: string,
	size: string,
): Promise<void> {
	await panelAt(page);
	const parts = panelOf(page).getByRole("tab");
	await parts.first().waitFor();
	for (const name of await parts.allTextContents()) {
		await panelOf(page).getByRole("tab", { name, exact: true }).click();
		await page.waitForTimeout(DRAWN_MS);
		await page.screenshot({
			path: join(folder, `panel-${fileName(name)}-${size}.png`),
		});
	}
	await closePanel(page);
}

/** Keeps all of them in a folder. */
export async function keepAll(
	browser: Browser,
	url: string,
	folder: string,
): Promise<void> {
	mkdirSync(folder, { recursive: true });
	for (const [size, viewport] of Object.entries(SIZES)) {
		const { page } = await visit(browser, url, viewport);
		await opened(page);
		if (size === "desk") await closePanel(page);
		await keepTabs(page, folder, size);
		if (size === "desk") await keepPapers(page, folder);
		await keepPanel(page, folder, size);
		await page.close();
	}
}
