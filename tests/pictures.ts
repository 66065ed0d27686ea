/** `npm run pictures`: takes the README's pictures from the running desk. */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { startServer } from "./desk/page/server";
import {
	chooseInMenu,
	closePanel,
	openBrowser,
	opened,
	panelOf,
	visit,
} from "./desk/page/visit";

const FOLDER = join(import.meta.dirname, "../pictures");
const DESK = { width: 1280, height: 800 };
/** The whole of the page for the client. */
const QUOTE = { width: 860, height: 1460 };
/** The grid draws in its own time. */
const DRAWN_MS = 2500;

async function keep(page: Page, name: string): Promise<void> {
	await page.waitForTimeout(DRAWN_MS);
	await page.screenshot({ path: join(FOLDER, `${name}.png`) });
}

async function show(page: Page, tab: string, cell: string): Promise<void> {
	await page.evaluate(
		([tab = "", cell = ""]) => window.desk?.select(tab, cell),
		[tab, cell],
	);
}

/** Opens the panel and goes to one of its parts. */
async function panelAt(page: Page, part: string): Promise<void> {
	await chooseInMenu(page, "Open the panel");
	await panelOf(page).getByRole("tab", { name: part }).click();
}

/** Types what a quote still needs before it goes out. */
async function signQuote(page: Page): Promise<void> {
	await page.evaluate(async () => {
		const { desk } = window;
		desk?.type("Studio", "B5", "A casting studio (invented)");
		desk?.type("1 Quote", "D3", "2027-01-15");
		await desk?.settle();
	});
}

mkdirSync(FOLDER, { recursive: true });
const browser = await openBrowser();
const server = await startServer();
try {
	const { page } = await visit(browser, server.url, DESK);
	await opened(page);
	await show(page, "1 Pour card", "A1");
	await panelAt(page, "At the mixer");
	await keep(page, "pour-day");
	await show(page, "1 Job", "A1");
	await panelOf(page).getByRole("tab", { name: "Picture" }).click();
	await keep(page, "job");
	await panelOf(page)
		.getByRole("button", { name: "Put it on the Quote" })
		.click();
	await panelOf(page).getByText("It is on 1 Quote").waitFor();
	await closePanel(page);
	await page.setViewportSize(QUOTE);
	await signQuote(page);
	await show(page, "1 Quote", "A1");
	await keep(page, "quote");
} finally {
	await browser.close();
	await server.stop();
}
