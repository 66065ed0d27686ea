import { mkdirSync } from "node:fs";
import {
	type Browser,
	chromium,
	type FrameLocator,
	type Page,
} from "playwright-core";
import { BROWSER_ARGS, findBrowser } from "../../../src/desk/browser";
import type { Desk } from "../../../src/desk/contract";

declare global {
	interface Window {
		desk?: Desk;
	}
}

/** On a machine with other work too; nothing is measured by it. */
const SLOW = { timeout: 120_000 };

/** @throws Error where there is no browser: what needs one was then not checked. */
export function openBrowser(): Promise<Browser> {
	const executablePath = findBrowser();
	if (!executablePath)
		throw new Error(
			"NOT CHECKED: no Chromium was found. Install one, or name it in CHROMIUM.",
		);
	return chromium.launch({ executablePath, args: [...BROWSER_ARGS] });
}

export interface Visit {
	page: Page;
	/** Errors, and requests to anywhere but the desk. */
	complaints: string[];
}

/** A visit to the desk that notes whatever should not happen. */
export async function visit(
	browser: Browser,
	url: string,
	size: { width: number; height: number },
	/** Answers given in place of the server's, by path. */
	instead: Readonly<Record<string, string>> = {},
): Promise<Visit> {
	const page = await browser.newPage({ viewport: size });
	page.setDefaultTimeout(SLOW.timeout);
	const complaints: string[] = [];
	page.on("console", (message) => {
		if (["error", "warning"].includes(message.type()))
			complaints.push(message.text());
	});
	page.on("pageerror", (error) => complaints.push(String(error)));
	page.on("request", (request) => {
		const { origin, protocol } = new URL(request.url());
		if (["data:", "blob:", "about:"].includes(protocol)) return;
		if (origin !== new URL(url).origin) complaints.push(request.url());
	});
	for (const [path, body] of Object.entries(instead))
		await page.route(`**/${path}`, (route) => route.fulfill({ body }));
	await page.goto(url);
	return { page, complaints };
}

/** Waits until the workbook is there to work in. */
export async function opened(page: Page): Promise<void> {
	await page.waitForFunction(() => window.desk !== undefined);
}

export function tabs(page: Page): Promise<string[]> {
	return page.evaluate(() => window.desk?.tabs() ?? []);
}

/** The shown texts of the first 90 rows and 26 columns at most. */
export function textsIn(page: Page, tab: string): Promise<string[][]> {
	return page.evaluate((tab) => {
		const desk = window.desk;
		const sheet = desk?.engine.api.getActiveWorkbook()?.getSheetByName(tab);
		const column = Math.min(26, sheet?.getMaxColumns() ?? 1);
		const row = Math.min(90, sheet?.getMaxRows() ?? 1);
		return (
			desk?.display(
				tab,
				`A1:${"ABCDEFGHIJKLMNOPQRSTUVWXYZ"[column - 1]}${row}`,
			) ?? []
		);
	}, tab);
}

/** Row and column, from 0, of the first cell that shows exactly this. */
export async function placeOf(page: Page, tab: string, text: string) {
	const texts = await textsIn(page, tab);
	const row = texts.findIndex((line) => line.includes(text));
	if (row < 0) throw new Error(`${tab} shows no ${text}`);
	return { row, column: texts[row]?.indexOf(text) ?? -1 };
}

export function cellName({ row, column }: { row: number; column: number }) {
	return `${String.fromCharCode("A".charCodeAt(0) + column)}${row + 1}`;
}

/** The first number to the right of a label, unrounded. */
export async function numberBeside(page: Page, tab: string, label: string) {
	const { row, column } = await placeOf(page, tab, label);
	const columns = (await textsIn(page, tab))[row]?.length ?? 1;
	const first = cellName({ row, column: column + 1 });
	const last = cellName({ row, column: columns - 1 });
	return page.evaluate(
		([tab = "", range = ""]) => {
			const [line = []] = window.desk?.read(tab, range) ?? [];
			return Number(line.find((value) => typeof value === "number"));
		},
		[tab, `${first}:${last}`],
	);
}

/** Goes to a cell as a click on it would, and types with the keyboard. */
export async function typeInto(
	page: Page,
	tab: string,
	cell: string,
	text: string,
): Promise<void> {
	await page.evaluate(
		([tab = "", cell = ""]) => window.desk?.select(tab, cell),
		[tab, cell],
	);
	await page.locator("#below").waitFor();
	// the grid moves its hidden editor to a new tab a moment later: by the page's own clock, which is as slow as the grid
	await page.evaluate(
		() =>
			new Promise<void>((done) => {
				setTimeout(() => requestIdleCallback(() => done()), 300);
			}),
	);
	await page.keyboard.type(text);
	await page.keyboard.press("Enter");
}

/** Keeps what is to be seen as a picture, once two in a row are the same: the grid draws in its own time. */
export async function keepPicture(page: Page, name: string): Promise<void> {
	mkdirSync("artifacts", { recursive: true });
	const path = `artifacts/${name}.png`;
	let last = await page.screenshot({ path });
	for (let more = 10; more > 0; more--) {
		await page.waitForTimeout(100);
		const next = await page.screenshot({ path });
		if (next.equals(last)) return;
		last = next;
	}
}

export const panelOf = (page: Page): FrameLocator =>
	page.frameLocator("#panel-page iframe");

export async function chooseInMenu(page: Page, item: string): Promise<void> {
	await page.getByRole("button", { name: "Tonefold" }).click();
	await page.getByRole("menuitem", { name: item }).click();
}

/** Closes the panel, where it is open. */
export async function closePanel(page: Page): Promise<void> {
	await page.getByRole("button", { name: "Close", exact: true }).click();
}
