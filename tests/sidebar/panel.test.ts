import { describe, expect, test } from "vitest";
import { panelComplaints } from "../../src/build/gates/panel";
import { helpOf } from "../../src/functions/help";
import { registry } from "../../src/functions/index";
import { panelHtml } from "../run/once";
import { executable, panelInBrowser } from "./opened";
import type { Answers } from "./page";
import { STUDIO } from "./studio";

const MADE = { number: 3, tabs: ["Job 3", "Tones 3", "Pour card 3"] };
const READY: Answers = {
	panelStart: { gives: STUDIO },
	keptDraft: { gives: "" },
	keepDraft: { gives: 0 },
	createJob: { gives: MADE },
	createDemoJob: { gives: MADE },
	functionHelp: { gives: registry.map(helpOf) },
	insertFormula: { gives: "C7" },
};

test("the page loads nothing, and is the same where Google strips its comments", async () => {
	const html = await panelHtml();
	expect(panelComplaints(html)).toEqual([]);
});

describe.runIf(executable)("the panel in Chromium", { timeout: 60_000 }, () => {
	const { panel, page, open: openWith, field, button } = panelInBrowser();
	const open = (answers: Answers = READY) => openWith(answers);
	const mistakeAt = async (label: string): Promise<string | null> => {
		const id = await field(label).getAttribute("id");
		expect(await field(label).getAttribute("aria-invalid")).toBe("true");
		expect(await field(label).getAttribute("aria-describedby")).toContain(
			`${id}-mistake`,
		);
		return page().locator(`[id="${id}-mistake"]`).textContent();
	};

	/** The two bars of the figures' tests: 193.6 kg, two loads, 1936 g of umber, 1210 g of black. */
	async function typeBars(): Promise<void> {
		await field("Client").fill("Guesthouse");
		await field("Title").fill("Two bars");
		await field("Name").fill("Bar");
		await field("Quantity").fill("2");
		await field("A, length").fill("2000");
		await field("B, width").fill("500 mm");
		await field("Thickness").fill("40");
		await field("Umber").check();
		await field("Black").check();
		await field("Tone").fill("Base");
		await field("Share").fill("75");
		await field("Umber, of binder").fill("2");
		await button("Add a tone").click();
		await field("Tone", 1).fill("Vein");
		await field("Umber, of binder", 1).fill("2%");
		await field("Black, of binder", 1).fill("5");
	}

	const BARS = {
		units: "metric",
		client: "Guesthouse",
		title: "Two bars",
		mix: "Plain mix",
		pieces: [
			{
				name: "Bar",
				quantity: 2,
				shape: "rectangle",
				a: 2000,
				b: "500 mm",
				thickness: 40,
			},
		],
		tones: [
			{ name: "Base", share: 0.75, doses: { Umber: 0.02 } },
			{ name: "Vein", share: 0.25, doses: { Umber: 0.02, Black: 0.05 } },
		],
	};

	describe("at the start", () => {
		test("it says that it is reading, and shows the form when it has", async () => {
			await open({ panelStart: { silent: true } });
			await page().getByText("Reading this workbook").waitFor();
			expect(await panel().violations()).toEqual([]);
		});

		test.each([
			["Error code PERMISSION_DENIED", "Several accounts are signed in"],
			["NetworkError: Connection failure due to HTTP 0", "connection was lost"],
		])("%s is told in words and can be tried again", async (fails, told) => {
			await open({ panelStart: { fails } });
			expect(await page().getByRole("alert").textContent()).toContain(told);
			expect(await panel().violations()).toEqual([]);
			panel().answer(READY);
			await button("Try again").click();
			await field("Client").waitFor();
			expect(await page().getByRole("alert").count()).toBe(0);
		});

		test("units are chosen only while the workbook has none", async () => {
			await open();
			await field("Client").waitFor();
			expect(await page().getByRole("radio").count()).toBe(0);
			await panel().close();
			await open({
				...READY,
				panelStart: { gives: { ...STUDIO, unitsFixed: false } },
			});
			await field("US: in, lb").check();
			await page().getByText("In inches, or as").waitFor();
			expect(await panel().violations()).toEqual([]);
			await button("Show me the demo job").click();
			await page().getByText("Job 3 is written").waitFor();
			expect(panel().calls("createDemoJob")).toEqual([
				{ name: "createDemoJob", args: ["us"] },
			]);
		});
	});

	describe("a new job", () => {
		test("what it takes appears as one types, and is read out", async () => {
			await open();
			await typeBars();
			const sum = "194 kg · 2 loads · 3\u202f146 g pigment";
			await page().locator(".write").getByText(sum).first().waitFor();
			const told = page().getByRole("status").filter({ hasText: sum });
			await told.waitFor({ state: "attached" });
			const totals = page().getByRole("region", { name: "What it takes" });
			// pigment 38.72 + 12.10; mix 193.6 kg × 2 / 2.2 of dry at 0.50 a kg = 88; together 138.82
			for (const shown of [
				"80.0 L",
				"194 kg",
				"1\u202f936 g",
				"€ 50.82",
				"€ 88.00",
				"€ 138.82",
			])
				expect(await totals.getByText(shown, { exact: true }).count()).toBe(1);
			expect(await page().getByText("Over the pigment limit").count()).toBe(1);
			expect(await panel().violations()).toEqual([]);
		});

		test("it is written as typed, once, and its tabs are named", async () => {
			await open();
			await typeBars();
			panel().answer({ createJob: { silent: true } });
			await button("Write the job").dblclick();
			await page().getByText("Writing the job's tabs").waitFor();
			expect(await panel().violations()).toEqual([]);
			expect(panel().calls("createJob")).toEqual([
				{ name: "createJob", args: [BARS] },
			]);
			await panel().close();
			await open();
			await typeBars();
			await button("Write the job").click();
			await page().getByRole("heading", { name: "Job 3 is written" }).waitFor();
			for (const tab of MADE.tabs)
				await page().getByText(tab, { exact: true }).waitFor();
			expect(await panel().violations()).toEqual([]);
			await button("Start another job").click();
			expect(await field("Title").inputValue()).toBe("");
		});

		test("mistakes stand at their fields in the words of the cells", async () => {
			await open();
			await button("Write the job").click();
			await page().getByText("client is blank", { exact: true }).waitFor();
			expect(await mistakeAt("Client")).toBe("client is blank");
			expect(await page().evaluate(() => document.activeElement?.id)).toBe(
				"client",
			);
			await field("Name").fill("Bar");
			await field("A, length").fill("2,440");
			await field("Thickness").fill("-20");
			await field("Quantity").fill("two");
			await field("Title").focus();
			expect(await mistakeAt("A, length")).toContain("in two ways");
			expect(await mistakeAt("Thickness")).toBe(
				"thickness must be above 0 mm, got -20",
			);
			expect(await mistakeAt("Quantity")).toBe(
				'quantity must be a number, got "two"',
			);
			expect(await panel().violations()).toEqual([]);
			expect(panel().calls("createJob")).toEqual([]);
		});

		test.each([
			["Error: title must be 100 letters or less", "100 letters"],
			["Error code PERMISSION_DENIED", "No job was written"],
			["NetworkError: Connection failure due to HTTP 0", "Look whether"],
		])("after %s everything typed is still there", async (fails, told) => {
			await open({ ...READY, createJob: { fails } });
			await typeBars();
			await button("Write the job").click();
			expect(await page().getByRole("alert").textContent()).toContain(told);
			expect(await field("Client").inputValue()).toBe("Guesthouse");
			expect(await panel().violations()).toEqual([]);
			panel().answer(READY);
			await button("Write the job").click();
			await page().getByText("Job 3 is written").waitFor();
			expect(
				panel()
					.calls("createJob")
					.map(({ args }) => args),
			).toEqual([[BARS], [BARS]]);
		});

		test("rows copied from a sheet become pieces, in the box and in a name field", async () => {
			await open();
			await page().getByText("Paste rows from a sheet").click();
			await field("Rows").fill(
				"Name\tLength (in)\tWidth (in)\tThick (in)\nTop\t8' 1/2\"\t25 1/2\t1.5\nShelf\t36\t-9\t1.5",
			);
			await button("Use these rows").click();
			await page().getByText("2 pieces added.").waitFor();
			await button(/^Top/).click();
			expect(await field("A, length").inputValue()).toBe("8' 1/2\"");
			expect(await field("B, width").inputValue()).toBe("25 1/2 in");
			await page().getByText("B must be above").waitFor();
			await button("Add a piece").click();
			await field("Name").evaluate((input) => {
				const data = new DataTransfer();
				data.setData("text/plain", "Bench\t1\t1800\t400\t40\n");
				input.dispatchEvent(
					new ClipboardEvent("paste", {
						clipboardData: data,
						bubbles: true,
						cancelable: true,
					}),
				);
			});
			await button(/^Bench/).waitFor();
			expect(await panel().violations()).toEqual([]);
		});

		test("what cannot be told apart stays in the box with the reason", async () => {
			await open();
			await page().getByText("Paste rows from a sheet").click();
			await field("Rows").fill("2400,650,40");
			await button("Use these rows").click();
			await page().getByText("put the name first").waitFor();
			expect(await field("Rows").inputValue()).toBe("2400,650,40");
		});

		test("another shape asks for other dimensions, and cutouts follow their piece", async () => {
			await open();
			await field("Name").fill("Basin");
			await button("Add a cutout").click();
			await field("In piece").selectOption("Basin");
			await field("Shape").selectOption("L");
			await field("C, notch length").fill("300");
			await field("Name").fill("Counter");
			expect(await field("In piece").inputValue()).toBe("Counter");
			await field("Shape").selectOption("round");
			await field("A, diameter").waitFor();
			expect(await page().getByLabel("C, ").count()).toBe(0);
			await field("Drop edge").check();
			await field("Drop height").fill("60");
			await field("Title").focus();
			await field("Drop edge").uncheck();
			expect(await page().getByLabel("Drop height").count()).toBe(0);
		});

		test.each([
			["an element", '<img src=x onerror="document.title=1">'],
			["a formula", '=HYPERLINK("http://x")'],
			["a stone, right to left", "🪨 وعاء حجري"],
			["ten thousand letters", "x".repeat(10_000)],
		])("%s is text and nothing else", async (_, text) => {
			await open();
			await typeBars();
			await field("Client").fill(text);
			await field("Name").fill(text);
			await field("Tone").fill(text);
			await page().locator(".fold").first().click();
			expect(await page().locator("bdi.name").first().textContent()).toBe(text);
			expect(await page().locator("img").count()).toBe(0);
			expect(
				await page().evaluate(() => document.documentElement.scrollWidth),
			).toBeLessThanOrEqual(300);
			await button("Write the job").click();
			await page().getByText("Job 3 is written").waitFor();
			const [call] = panel().calls("createJob");
			expect(call?.args[0]).toMatchObject({
				client: text,
				pieces: [{ name: text }],
				tones: [{ name: text }, { name: "Vein" }],
			});
		});

		test("the keyboard alone is enough", async () => {
			await open();
			await field("Client").waitFor();
			const keys = page().keyboard;
			const next = async (text: string) => {
				await keys.press("Tab");
				await keys.type(text);
			};
			// Into the page: the tab of this view, the demo, a file, then the fields in order.
			await keys.press("Tab");
			await keys.press("Tab");
			await keys.press("Tab");
			await next("Guesthouse");
			await next("Two bars");
			// A date has parts of its own.
			await field("Pour date, if known").focus();
			await button(/^Piece 1/).focus();
			await next("Bar");
			await next("");
			await keys.press("Control+A");
			await keys.type("2");
			await next("");
			await next("2000");
			await next("500 mm");
			await next("40");
			await field("Umber").focus();
			await keys.press("Space");
			await next(" ");
			await next("");
			await next("Base");
			await next("");
			await keys.press("Control+A");
			await keys.type("75");
			await next("2");
			await button("Add a tone").focus();
			await keys.press("Enter");
			await page().waitForFunction(() =>
				/-name$/.test(document.activeElement?.id ?? ""),
			);
			await keys.type("Vein");
			await keys.press("Tab");
			await next("2%");
			await next("5");
			await button("Write the job").focus();
			await keys.press("Enter");
			await page().getByText("Job 3 is written").waitFor();
			const [call] = panel().calls("createJob");
			expect(call?.args).toEqual([BARS]);
			await keys.press("Tab");
			await keys.press("Enter");
			await page().waitForFunction(
				() => document.activeElement?.id === "client",
			);
		});
	});

	describe("functions", () => {
		test("arrow keys go there, and nothing typed is lost on the way back", async () => {
			await open();
			await field("Client").fill("Guesthouse");
			await page().getByRole("tab", { name: "New job" }).focus();
			await page().keyboard.press("ArrowLeft");
			await field("What should it work out?").waitFor();
			expect(await panel().violations()).toEqual([]);
			await page().keyboard.press("ArrowRight");
			expect(await field("Client").inputValue()).toBe("Guesthouse");
		});

		test("are asked for when they are looked at first, and again where that failed", async () => {
			await open({ ...READY, functionHelp: { fails: "HTTP 500" } });
			await field("Client").waitFor();
			expect(panel().calls("functionHelp")).toHaveLength(0);
			await page().getByRole("tab", { name: "Functions" }).click();
			await page().getByText("Google's server had an error").waitFor();
			panel().answer(READY);
			await button("Try again").click();
			await field("What should it work out?").waitFor();
			await page().getByRole("tab", { name: "New job" }).click();
			await page().getByRole("tab", { name: "Functions" }).click();
			expect(panel().calls("functionHelp")).toHaveLength(2);
		});

		async function openFunction(words: string, name: string): Promise<void> {
			await page().getByRole("tab", { name: "Functions" }).click();
			await field("What should it work out?").fill(words);
			await button(new RegExp(`^${name}`)).click();
			await page().getByRole("heading", { name, exact: true }).waitFor();
		}

		test.each([",", ";"])(
			"one is found by what it does and put in the cell with %s",
			async (separator) => {
				await open({
					...READY,
					panelStart: { gives: { ...STUDIO, separator } },
				});
				await field("Client").waitFor();
				await openFunction("grams of dry pigment", "PIGMENT_GRAMS");
				expect(await panel().violations()).toEqual([]);
				await field("mass").fill("B2");
				await button("Put in the current cell").click();
				await page().getByText("It is in C7.").waitFor();
				expect(panel().calls("insertFormula")).toEqual([
					{
						name: "insertFormula",
						args: [`=PIGMENT_GRAMS(B2${separator} 55%${separator} 4%)`],
					},
				]);
			},
		);

		test("a cell that is taken is said, and the way back leads to the list", async () => {
			await open({
				...READY,
				insertFormula: { fails: "Error: C7 is not blank" },
			});
			await openFunction("slab", "SLAB_VOLUME");
			await button("Put in the current cell").click();
			expect(await page().getByRole("alert").textContent()).toBe(
				"C7 is not blank.",
			);
			expect(await panel().violations()).toEqual([]);
			await button("All functions").click();
			await page().waitForFunction(
				() => document.activeElement?.id === "function-SLAB_VOLUME",
			);
			await field("What should it work out?").fill("xylophone");
			await page().getByText("No function has all of these words").waitFor();
		});
	});
});
