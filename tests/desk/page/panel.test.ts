import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { deskUrl, sharedBrowser } from "../../run/once";
import {
	cellName,
	chooseInMenu,
	closePanel,
	keepPicture,
	opened,
	panelOf,
	placeOf,
	textsIn,
	type Visit,
	visit,
} from "./visit";

const DESK = { width: 1280, height: 900 };
const MINUTE = 60_000;
const SOON = { timeout: MINUTE, interval: 200 };
const CARD = "1 Pour card";
/** Column of load 1 on the card, counted from 0. */
const FIRST_LOAD = 5;

let url: string;
let browser: Browser;

beforeAll(async () => {
	browser = await sharedBrowser();
	url = await deskUrl();
}, 3 * MINUTE);

const typeIn = (page: Page, tab: string, cell: string, text: string) =>
	page.evaluate(
		async ([tab = "", cell = "", text = ""]) => {
			window.desk?.type(tab, cell, text);
			await window.desk?.settle();
		},
		[tab, cell, text],
	);

const valueIn = (page: Page, tab: string, cell: string) =>
	page.evaluate(
		([tab = "", cell = ""]) => window.desk?.read(tab, cell)[0]?.[0],
		[tab, cell],
	);

describe("the panel on the desk", { timeout: 4 * MINUTE }, () => {
	let page: Page;
	let complaints: Visit["complaints"];

	beforeAll(async () => {
		({ page, complaints } = await visit(browser, url, DESK));
		await opened(page);
	}, 3 * MINUTE);
	afterAll(() => page?.close());

	const panel = () => panelOf(page);
	const button = (name: string | RegExp) =>
		panel().getByRole("button", { name });
	const view = (name: string) => panel().getByRole("tab", { name }).click();
	/** Cell of load 1 in a row that begins with these words. */
	const weighed = async (words: string): Promise<string> => {
		const { row } = await placeOf(page, CARD, words);
		return cellName({ row, column: FIRST_LOAD });
	};

	describe("at the mixer", () => {
		test("what is weighed stands on the Pour card, the next amount as the card has it", async () => {
			await view("At the mixer");
			await button("Go on to weighing").click();
			await panel().getByText("Step 1 of", { exact: false }).waitFor(SOON);
			await panel().getByText("White cement").first().waitFor();
			await keepPicture(page, "panel-mixer");
			// A tenth too much: every other ingredient rises by a tenth.
			const cement = await weighed("White cement");
			const { row } = await placeOf(page, CARD, "Fine sand");
			const sand = cellName({ row, column: 2 });
			const before = Number(await valueIn(page, CARD, sand));
			const asked = Number(
				/([\d.]+) kg/.exec(
					(await panel().locator(".amount").textContent()) ?? "",
				)?.[1],
			);
			await panel()
				.getByLabel("The scale says")
				.fill(String(Number((asked * 1.1).toFixed(3))));
			await button(/^(Done|Yes)/).click();
			await panel().getByText("Step 2 of", { exact: false }).waitFor();
			await expect
				.poll(() => valueIn(page, CARD, cement), SOON)
				.toBeCloseTo(asked * 1.1, 2);
			await page.evaluate(() => window.desk?.settle());
			const after = Number(await valueIn(page, CARD, sand));
			expect(after / before).toBeCloseTo(1.1, 2);
			await button(/^Done/).click();
			await panel().getByText("Step 3 of", { exact: false }).waitFor();
			expect(await panel().locator(".step").textContent()).toContain(
				"Fine sand",
			);
			expect(await panel().locator(".amount").textContent()).toBe(
				`${after.toFixed(2)} kg`,
			);
		});

		test("what somebody types on the card is taken up, and undone from here", async () => {
			const sand = await weighed("Fine sand");
			await typeIn(page, CARD, sand, "60");
			await panel()
				.getByText("load 1, Fine sand: 60")
				.waitFor({ timeout: 30_000 });
			await button("Seen").click();
			await button("Undo").click();
			await expect.poll(() => valueIn(page, CARD, sand), SOON).toBeFalsy();
			await button(/^Done/).click();
			await expect
				.poll(() => valueIn(page, CARD, sand), SOON)
				.toBeGreaterThan(50);
		});

		test("it goes on after the panel was closed, by the keyboard alone", async () => {
			await expect
				.poll(() => panel().locator(".count").textContent(), SOON)
				.toMatch(/^Step 4 /);
			await closePanel(page);
			await chooseInMenu(page, "Open the panel");
			await panel().getByRole("tab", { name: "New job" }).focus();
			await page.keyboard.press("ArrowRight");
			await expect
				.poll(() => panel().locator(".count").textContent(), SOON)
				.toMatch(/^Step 4 /);
			for (let step = 4; step <= 7; step++) {
				await panel().getByLabel("The scale says").focus();
				await page.keyboard.press("Enter");
				await panel()
					.getByText(`Step ${step + 1} of`)
					.waitFor();
			}
			// the reserve, what goes into bucket A, and the first tone
			await panel().getByText("reserve, undosed").waitFor();
			await button(/^Done/).focus();
			for (const next of [9, 10, 11]) {
				await page.keyboard.press("Enter");
				await panel().getByText(`Step ${next} of`).waitFor();
				await button(/^Done/).focus();
			}
			await button("Water goes in now").click();
			const { row } = await placeOf(page, CARD, "Water in, at (like 9:40)");
			await expect
				.poll(
					() => valueIn(page, CARD, cellName({ row, column: FIRST_LOAD })),
					SOON,
				)
				.toBeTruthy();
			await panel().getByText("min since the water went in").waitFor(SOON);
			await panel().getByText("Notes for load 1").click();
			await panel().getByLabel("Mix temperature, °C").fill("24");
			await panel().getByLabel("Weighed by").focus();
			await panel().getByText("min left to work the mix").waitFor(SOON);
			await keepPicture(page, "panel-dosing");
		});
	});

	describe("checks", () => {
		test("a job made to break says what and where, and leads there", async () => {
			const { row, column } = await placeOf(
				page,
				"Studio",
				"Mixer capacity, kg",
			);
			const capacity = cellName({ row, column: column + 1 });
			const before = String(await valueIn(page, "Studio", capacity));
			await typeIn(page, "Studio", capacity, "60");
			await chooseInMenu(page, "Check this job");
			const card = panel().locator("li.card", {
				hasText: "Every casting fits in one load",
			});
			await card.waitFor(SOON);
			await keepPicture(page, "panel-checks");
			const jump = card.getByRole("button", { name: /^Go to/ });
			const [, tab] =
				/Go to (.*)$/.exec((await jump.textContent()) ?? "") ?? [];
			await jump.focus();
			await page.keyboard.press("Enter");
			const active = () =>
				page.evaluate(() => {
					const book = window.desk?.engine.api.getActiveWorkbook();
					const sheet = book?.getActiveSheet();
					return `${sheet?.getSheetName()}!${sheet?.getActiveRange()?.getA1Notation()}`;
				});
			// the shares that the castings take of their loads
			const { row: headings, column: share } = await placeOf(
				page,
				`1 ${tab}`,
				"Load is full",
			);
			await expect
				.poll(active, SOON)
				.toMatch(
					new RegExp(
						`^1 ${tab}!${cellName({ row: headings + 1, column: share })}:`,
					),
				);
			await typeIn(page, "Studio", capacity, before);
			await button("Check again").click();
			await expect.poll(() => card.count(), SOON).toBe(0);
		});
	});

	describe("record", () => {
		test("the pour goes into the Pour log once", async () => {
			await view("Record");
			await button("Load 1 is finished").click();
			await button("Write load 1 to the Pour log").click();
			await panel().getByText("The Pour log now has load 1.").waitFor(SOON);
			const log = (await textsIn(page, "Pour log")).flat().join("\n");
			expect(log).toContain("Shell");
			await panel().getByText("in the log", { exact: true }).waitFor(SOON);
			await button("Nothing new to record").waitFor();
			await keepPicture(page, "panel-record");
		});

		test("a measured color goes into Swatches with the doses of its tone", async () => {
			await panel()
				.getByLabel("Doses of the tone")
				.selectOption("Bark, as planned");
			await panel()
				.getByLabel(/^Color:/)
				.fill("#806d5a");
			await panel().getByLabel("Remark").last().fill('=HYPERLINK("http://x")');
			await panel()
				.getByText("4% Umber + 0.5% Black", { exact: false })
				.waitFor();
			await button("Add to Swatches").click();
			const told = panel().getByText(/It is in row \d+ of Swatches/);
			await told.waitFor(SOON);
			const row = Number(/\d+/.exec((await told.textContent()) ?? "")?.[0]);
			const texts = (await textsIn(page, "Swatches"))[row - 1];
			expect(texts).toEqual(
				expect.arrayContaining(["#806d5a", "cast", '=HYPERLINK("http://x")']),
			);
		});
	});

	describe("picture", () => {
		test("it is drawn in a second, and put on the Quote by the keyboard", async () => {
			await view("Picture");
			const canvas = panel().locator("canvas");
			await canvas.waitFor(SOON);
			await panel().getByText("An impression").waitFor();
			await keepPicture(page, "panel-picture");
			await button("Put it on the Quote").focus();
			await page.keyboard.press("Enter");
			await panel().getByText("It is on 1 Quote.").waitFor(SOON);
			expect(
				await page.evaluate(() => window.desk?.pictures("1 Quote").length),
			).toBe(1);
		});
	});

	test("nothing complained, and nothing was asked of any other place", () => {
		expect(complaints).toEqual([]);
	});
});
