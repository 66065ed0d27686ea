/** The add-on's menu in the page: who closes it, and who does not. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { deskUrl, sharedBrowser } from "../../run/once";
import { ADD_ON } from "./standin";
import { closePanel, opened, type Visit, visit } from "./visit";

let page: Page;
let complaints: Visit["complaints"];

beforeAll(async () => {
	const size = { width: 1000, height: 700 };
	({ page, complaints } = await visit(
		await sharedBrowser(),
		await deskUrl(),
		size,
		ADD_ON,
	));
	await opened(page);
}, 180_000);

afterAll(() => page?.close());

const opener = () => page.getByRole("button", { name: "Tonefold" });
const item = () => page.getByRole("menuitem", { name: "Open the panel" });
const isFocused = () =>
	item().evaluate((one) => one === document.activeElement);
const closed = () => item().waitFor({ state: "hidden" });

async function openMenu(): Promise<void> {
	await opener().click();
	await expect.poll(isFocused).toBe(true);
}

test("the grid that takes the focus by itself does not close it", async () => {
	await openMenu();
	const took = await page
		.locator("#grid [contenteditable]")
		.first()
		.evaluate((one) => {
			(one as HTMLElement).focus();
			return document.activeElement === one;
		});
	expect(took).toBe(true);
	await expect.poll(isFocused).toBe(true);
	await page.keyboard.press("Escape");
	await closed();
	expect(await opener().evaluate((one) => one === document.activeElement)).toBe(
		true,
	);
});

test("its items are reached by arrow keys, and Tab leaves it", async () => {
	await opener().focus();
	await page.keyboard.press("ArrowDown");
	await expect.poll(isFocused).toBe(true);
	await page.keyboard.press("ArrowUp");
	expect(await isFocused()).toBe(true);
	await page.keyboard.press("Tab");
	await closed();
});

test.each(["#grid", "#panel-page iframe"])(
	"a press in %s closes it",
	async (place) => {
		await openMenu();
		await page.locator(place).click({ position: { x: 40, y: 300 } });
		await closed();
	},
);

test("a second press closes it", async () => {
	await openMenu();
	await opener().click();
	await closed();
});

test("the keyboard alone chooses from it", async () => {
	await closePanel(page);
	await opener().focus();
	await page.keyboard.press("Enter");
	await expect.poll(isFocused).toBe(true);
	await page.keyboard.press("Enter");
	await page.locator("#panel-page iframe").waitFor();
	await closed();
	expect(complaints).toEqual([]);
});
