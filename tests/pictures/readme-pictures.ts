/** The README's pictures. */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { closePanel, opened, panelOf, visit } from "../desk/page/visit";
import { panelAt, show } from "./desk-steps";

const FOLDER = join(import.meta.dirname, "../../pictures");
const DESK = { width: 1280, height: 800 };
/** The whole of the page for the client. */
const QUOTE = { width: 860, height: 1460 };
/** The grid draws in its own time. */
const DRAWN_MS = 2500;

async function keep(page: Page, name: string): Promise<void> {
	await page.waitForTimeout(DRAWN_MS);
	await page.screenshot({ path: join(FOLDER, `${name}.png`) });
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

export async function keepReadmePictures(
	browser: Browser,
	url: string,
): Promise<void> {
	mkdirSync(FOLDER, { recursive: true });
	const { page } = await visit(browser, url, DESK);
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
	await page.close();
}
