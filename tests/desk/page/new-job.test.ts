import type { Browser, FrameLocator, Page } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { deskUrl, sharedBrowser } from "../../run/once";
import {
	chooseInMenu,
	keepPicture,
	opened,
	panelOf,
	placeOf,
	tabs,
	textsIn,
	visit,
} from "./visit";

const DESK = { width: 1280, height: 800 };
const MINUTE = 60_000;

let url: string;
let browser: Browser;

beforeAll(async () => {
	browser = await sharedBrowser();
	url = await deskUrl();
}, 3 * MINUTE);

/** A blank workbook with the panel open beside it. */
async function blank() {
	const visited = await visit(browser, `${url}?empty`, DESK);
	await opened(visited.page);
	await chooseInMenu(visited.page, "Start a job");
	const panel = panelOf(visited.page);
	await panel.getByLabel("Client").waitFor();
	return { ...visited, panel };
}

async function typeShelf(panel: FrameLocator, client: string): Promise<void> {
	await panel.getByLabel("Metric: mm, kg").check();
	await panel.getByLabel("Client").fill(client);
	await panel.getByLabel("Title").fill("A shelf");
	await panel.getByLabel("Name").first().fill("Shelf");
	await panel.getByLabel("A, length").fill("1200");
	await panel.getByLabel("B, width").fill("300");
	await panel.getByLabel("Thickness").fill("30");
	await panel.getByLabel("Tone", { exact: true }).fill("Plain");
}

const write = (panel: FrameLocator) =>
	panel.getByRole("button", { name: "Write the job" });

const allTexts = async (page: Page): Promise<string[]> =>
	(await Promise.all((await tabs(page)).map((tab) => textsIn(page, tab)))).flat(
		2,
	);

describe("a new job on the desk", { timeout: 3 * MINUTE }, () => {
	test("an unfinished one is there again after the panel was opened anew over it", async () => {
		const { page, panel, complaints } = await blank();
		await typeShelf(panel, "A cafe 🪨 وعاء");
		await page.waitForFunction(() =>
			JSON.stringify(window.desk?.save().beside).includes("Plain"),
		);
		await page.waitForTimeout(2500);
		await chooseInMenu(page, "Open the panel");
		await panel.getByText("Your unfinished job is here again.").waitFor();
		expect(await panel.getByLabel("Client").inputValue()).toBe(
			"A cafe 🪨 وعاء",
		);
		expect(await panel.getByLabel("A, length").inputValue()).toBe("1200");
		await keepPicture(page, "unfinished");
		await write(panel).click();
		await panel.getByText("Job 1 is written").waitFor({ timeout: MINUTE });
		await chooseInMenu(page, "Open the panel");
		await panel.getByLabel("Client").waitFor();
		expect(await panel.getByLabel("Client").inputValue()).toBe("");
		expect(complaints).toEqual([]);
		await page.close();
	});

	test("what cannot be written leaves the workbook as it was, and says why", async () => {
		const { page, panel, complaints } = await blank();
		await page.evaluate(() => {
			const book = window.desk?.engine.api.getActiveWorkbook();
			book?.create("Mixes", 5, 5);
		});
		const before = await tabs(page);
		await typeShelf(panel, "A cafe");
		await write(panel).click();
		const told = panel.getByRole("alert");
		await told
			.getByText("has a tab named Mixes already", { exact: false })
			.waitFor({ timeout: MINUTE });
		expect(await told.textContent()).toContain("What you typed is still here.");
		expect(await tabs(page)).toEqual(before);
		expect(await panel.getByLabel("Client").inputValue()).toBe("A cafe");
		await keepPicture(page, "not-written");
		expect(complaints).toEqual([]);
		await page.close();
	});

	test("what looks like a formula or an element is that text in the cells", async () => {
		const { page, panel, complaints } = await blank();
		page.on("dialog", (dialog) => {
			complaints.push(dialog.message());
			dialog.dismiss();
		});
		const [client, title, piece] = [
			'=HYPERLINK("http://x";"y")',
			"<img src=x onerror=alert(1)>",
			"+1",
		] as const;
		await typeShelf(panel, client);
		await panel.getByLabel("Title").fill(title);
		await panel.getByLabel("Name").first().fill(piece);
		await write(panel).click();
		await panel.getByText("Job 1 is written").waitFor({ timeout: MINUTE });
		await page.evaluate(() => window.desk?.settle());
		const cells = await allTexts(page);
		for (const text of [client, title, piece]) expect(cells).toContain(text);
		expect(await page.evaluate(() => window.desk?.errors())).toEqual([]);
		expect(complaints).toEqual([]);
		await page.close();
	});

	test("the keyboard alone writes one, from the menu to the tabs", async () => {
		const { page, panel, complaints } = await blank();
		const keys = page.keyboard;
		const next = async (text: string) => {
			await keys.press("Tab");
			await keys.type(text);
		};
		await panel.getByRole("tab", { name: "New job" }).focus();
		// the first job decides the units
		await panel.getByLabel("Metric: mm, kg").focus();
		await keys.press("Space");
		await next("A cafe");
		await next("A shelf");
		// a date has parts of its own
		await panel.getByLabel("Pour date, if known").focus();
		await panel.getByRole("button", { name: /^Piece 1/ }).focus();
		await next("Shelf");
		await next("");
		await next("");
		await next("1200");
		await next("300");
		await next("30");
		await panel.getByLabel("Tone", { exact: true }).focus();
		await keys.type("Plain");
		await write(panel).focus();
		await keys.press("Enter");
		await panel.getByText("Job 1 is written").waitFor({ timeout: MINUTE });
		const { row, column } = await placeOf(page, "1 Job", "Shelf");
		// by hand: 1.2 × 0.3 × 0.03 m = 10.8 L
		await page.evaluate(() => window.desk?.settle());
		const cells = (await textsIn(page, "1 Job"))[row]?.slice(column);
		expect(cells).toContain("10.8");
		expect(complaints).toEqual([]);
		await page.close();
	});

	test("a function that was found stands in the current cell", async () => {
		const { page, panel, complaints } = await blank();
		await page.evaluate(() => window.desk?.select("Sheet1", "B3"));
		await panel.getByRole("tab", { name: "Functions" }).click();
		await panel.getByLabel("What should it work out?").fill("dry pigment mass");
		await panel.getByRole("button", { name: /^PIGMENT_GRAMS/ }).click();
		await panel
			.getByRole("button", { name: "Put in the current cell" })
			.click();
		await panel.getByText("It is in B3.").waitFor();
		await page.evaluate(() => window.desk?.settle());
		// 100 kg × 55% × 4% = 2.2 kg
		expect(
			await page.evaluate(() => window.desk?.read("Sheet1", "B3")),
		).toEqual([[expect.closeTo(2200, 6)]]);
		await panel
			.getByRole("button", { name: "Put in the current cell" })
			.click();
		await panel.getByRole("alert").waitFor();
		expect(await panel.getByRole("alert").textContent()).toContain("B3");
		expect(complaints).toEqual([]);
		await page.close();
	});
});
