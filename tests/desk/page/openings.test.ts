import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { sharedBrowser } from "../../run/once";
import { type Started, startServer } from "./server";
import {
	chooseInMenu,
	closePanel,
	keepPicture,
	opened,
	panelOf,
	tabs,
	textsIn,
	visit,
} from "./visit";

const DESK = { width: 1280, height: 800 };
const PHONE = { width: 390, height: 844 };
const MINUTE = 60_000;

let server: Started;
let browser: Browser;

beforeAll(async () => {
	browser = await sharedBrowser();
	server = await startServer();
}, 3 * MINUTE);

afterAll(async () => {
	expect(await server?.stop()).toBe(0);
});

const widthOf = (page: Page) =>
	page.evaluate(() => document.documentElement.scrollWidth);

describe("other ways to open the desk", { timeout: 3 * MINUTE }, () => {
	test("on a phone, in US units: the grid is whole, the panel lies over it and closes", async () => {
		const { page, complaints } = await visit(
			browser,
			`${server.url}?units=us`,
			PHONE,
		);
		await opened(page);
		const cells = (await textsIn(page, "Studio")).flat();
		expect(cells).toContain("Mixer capacity, lb");
		expect(await widthOf(page)).toBe(PHONE.width);
		await keepPicture(page, "phone");
		await chooseInMenu(page, "Open the panel");
		await panelOf(page).getByLabel("Client").waitFor();
		await keepPicture(page, "phone-panel");
		await closePanel(page);
		expect(await page.locator("#panel").isVisible()).toBe(false);
		expect((await page.locator("#grid").boundingBox())?.width).toBe(
			PHONE.width,
		);
		expect(complaints).toEqual([]);
		await page.close();
	});

	test("empty: a blank workbook with the add-on's menu", async () => {
		const { page, complaints } = await visit(
			browser,
			`${server.url}?empty`,
			DESK,
		);
		await opened(page);
		expect(await tabs(page)).toEqual(["Sheet1"]);
		page.once("dialog", (dialog) => dialog.accept());
		await chooseInMenu(page, "Use in this workbook");
		expect(await tabs(page)).toEqual(["Sheet1"]);
		expect(complaints).toEqual([]);
		await page.close();
	});

	test("without the built files it says how to make them", async () => {
		const missing = { "add-on.json": "[]" };
		const { page } = await visit(browser, server.url, DESK, missing);
		await page.getByText("run npm run build").waitFor();
		await keepPicture(page, "not-built");
		await page.close();
	});

	test("starting over asks first, and gives the workbook as it was", async () => {
		const { page } = await visit(browser, `${server.url}?empty`, DESK);
		await opened(page);
		await page.evaluate(() => window.desk?.type("Sheet1", "A1", "kept?"));
		page.once("dialog", (dialog) => dialog.dismiss());
		await page.getByRole("button", { name: "Start over" }).click();
		expect((await textsIn(page, "Sheet1"))[0]?.[0]).toBe("kept?");
		page.once("dialog", (dialog) => dialog.accept());
		await Promise.all([
			page.waitForEvent("load"),
			page.getByRole("button", { name: "Start over" }).click(),
		]);
		await opened(page);
		expect((await textsIn(page, "Sheet1"))[0]?.[0]).toBe("");
		await page.close();
	});

	test("a port that is taken is said in words", async () => {
		const port = new URL(server.url).port;
		await expect(startServer("--port", port)).rejects.toThrow(
			`Port ${port} is taken`,
		);
	});
});
