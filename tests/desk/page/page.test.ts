import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { deskUrl, sharedBrowser } from "../../run/once";
import {
	cellName,
	chooseInMenu,
	closePanel,
	keepPicture,
	numberBeside,
	opened,
	panelOf,
	placeOf,
	tabs,
	textsIn,
	typeInto,
	type Visit,
	visit,
} from "./visit";

const DESK = { width: 1280, height: 800 };
const MINUTE = 60_000;
const SOON = { timeout: MINUTE, interval: 200 };

let url: string;
let browser: Browser;

beforeAll(async () => {
	browser = await sharedBrowser();
	url = await deskUrl();
}, 3 * MINUTE);

/** Number of sheets of paper that the open tab is printed on. */
async function sheetsOfPaper(page: Page, format: "A4" | "Letter") {
	const pdf = await page.pdf({ format });
	return pdf.toString("latin1").match(/\/Type \/Page\b/g)?.length;
}

describe("the desk in a browser", { timeout: 2 * MINUTE }, () => {
	let page: Page;
	let complaints: Visit["complaints"];

	beforeAll(async () => {
		({ page, complaints } = await visit(browser, url, DESK));
		await opened(page);
	}, 3 * MINUTE);
	afterAll(() => page?.close());

	test("opens with the demo job and no error in it", async () => {
		expect(await tabs(page)).toEqual(
			expect.arrayContaining(["Studio", "1 Job", "1 Tones", "1 Pour card"]),
		);
		expect(await page.evaluate(() => window.desk?.errors())).toEqual([]);
		await keepPicture(page, "desk");
	});

	test("a blank cell in a spill is blank in the grid", async () => {
		// nothing is to be paid of a job that is only priced
		const { row } = await placeOf(page, "Jobs", "priced");
		const { column } = await placeOf(page, "Jobs", "Still to be paid");
		const drawn = await page.evaluate(
			([row = 0, column = 0]) =>
				window.desk?.engine.api
					.getActiveWorkbook()
					?.getSheetByName("Jobs")
					?.getSheet()
					.getCell(row, column)?.v,
			[row, column],
		);
		expect(drawn).toBeUndefined();
	});

	test("a length typed on the keyboard changes the weights on the pour card", async () => {
		const inLoad = () =>
			numberBeside(page, "1 Pour card", "Mix in this load, kg");
		const before = await inLoad();
		const { row } = await placeOf(page, "1 Job", "Breakfast bar");
		const { column } = await placeOf(page, "1 Job", "A");
		await typeInto(page, "1 Job", cellName({ row, column }), "2200");
		// by hand: 2200 for 2150 mm adds 50 × 1480 × 30 mm = 2.22 L to the slab, and 8% waste
		const density = await numberBeside(page, "1 Tones", "Fresh density, kg/m³");
		const added = 0.00222 * density * 1.08;
		await expect.poll(inLoad, SOON).toBeCloseTo(before + added, 6);
		expect(added).toBeGreaterThan(4);
	});

	test("a formula that cannot be says why, under the grid", async () => {
		const line = page.locator("#below");
		await typeInto(page, "Sheet1", "B2", "=PIGMENT_GRAMS(100;55;0.04)");
		await typeInto(page, "Sheet1", "B4", "1");
		await expect
			.poll(() => line.textContent(), SOON)
			.toContain("One cell shows an error");
		await line.getByRole("button").click();
		// 55 for 55%: the share is out of its limits, and the argument is named
		await expect
			.poll(() => line.textContent(), SOON)
			.toMatch(/^Sheet1, B2 shows #ERROR!: .*binder_share/);
	});

	test("the panel, opened from the menu, writes a second job", async () => {
		await closePanel(page);
		await chooseInMenu(page, "Open the panel");
		const panel = panelOf(page);
		await panel.getByLabel("Client").fill("A cafe");
		await panel.getByLabel("Title").fill("A shelf");
		await panel.getByLabel("Name").first().fill("Shelf");
		await panel.getByLabel("A, length").fill("1200");
		await panel.getByLabel("B, width").fill("300");
		await panel.getByLabel("Thickness").fill("30");
		await panel.getByLabel("Tone", { exact: true }).fill("Plain");
		await panel.getByLabel("Share").fill("100");
		await panel.getByRole("button", { name: "Write the job" }).click();
		await panel.getByText("Job 2 is written").waitFor({ timeout: MINUTE });
		expect(await tabs(page)).toEqual(
			expect.arrayContaining(["1 Job", "2 Job", "2 Tones", "2 Pour card"]),
		);
		await page.evaluate(() => window.desk?.settle());
		// by hand: 1.2 × 0.3 × 0.03 m = 10.8 L
		const texts = await textsIn(page, "2 Job");
		const { row } = await placeOf(page, "2 Job", "Shelf");
		const { column } = await placeOf(page, "2 Job", "Volume, L");
		expect(texts[row]?.[column]).toBe("10.8");
		await keepPicture(page, "second-job");
	});

	test.each(["A4", "Letter"] as const)(
		"the pour card is printed on one sheet of %s",
		async (paper) => {
			await page.evaluate(() => window.desk?.select("1 Pour card", "A1"));
			await page.evaluate(() => {
				window.print = () => undefined;
			});
			await page.getByRole("button", { name: "Print this tab" }).click();
			expect(await page.locator("#print").textContent()).toContain(
				"White cement",
			);
			expect(await sheetsOfPaper(page, paper)).toBe(1);
		},
	);

	test("nothing was asked of any other place, and nothing complained", () => {
		expect(complaints).toEqual([]);
	});
});
