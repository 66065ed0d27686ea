/** What `SPARKLINE` draws in the grid, on paper and in words, held to the pixel. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { visitPut } from "./standin";
import type { Visit } from "./visit";

const MINUTE = 60_000;
const SOON = { timeout: MINUTE / 2, interval: 200 };
const CODE = `
function onOpen() { SpreadsheetApp.getUi().createAddonMenu().addItem("Put", "put").addToUi(); }
function createDemoJob() { return null; }
function put() {
	var s = SpreadsheetApp.getActive().getSheets()[0];
	s.getRange("C1").setValue("#11aa33");
	s.getRange("B2").setFormula('=SPARKLINE(1;HSTACK(VSTACK("charttype";"color1");VSTACK("bar";C1)))');
	s.getRange("B3").setFormula('=SPARKLINE(HSTACK(1;2);HSTACK(VSTACK("charttype";"max";"color1";"color2");VSTACK("bar";4;"#ff0000";"#0000ff")))');
	s.getRange("B4").setFormula('=SPARKLINE(HSTACK(1;2);HSTACK(VSTACK("charttype";"color");VSTACK("column";"#7700aa")))');
	s.getRange("B5").setFormula('=SPARKLINE(HSTACK(3;3);HSTACK(VSTACK("color";"linewidth");VSTACK("#008877";3)))');
}`;

let page: Page;
let complaints: Visit["complaints"];

beforeAll(async () => {
	({ page, complaints } = await visitPut(CODE));
	await page.evaluate(() => window.desk?.select("Sheet1", "A1"));
}, 3 * MINUTE);

afterAll(() => page?.close());

/** The colors of a cell's pixels from left to right at some height, a run each, as in `#ff0000 24`. */
const runsIn = (cell: string, height = 0.5) =>
	page.evaluate(
		([cell, height]) => {
			const canvas = document.querySelector<HTMLCanvasElement>(
				"canvas[id^=univer-sheet-main-canvas]",
			);
			const box = window.desk?.engine.api
				.getActiveWorkbook()
				?.getActiveSheet()
				.getRange(cell)
				.getCellRect();
			if (!canvas || !box) throw new Error("there is no grid");
			const copy = document.createElement("canvas");
			Object.assign(copy, { width: canvas.width, height: canvas.height });
			const context = copy.getContext("2d", { willReadFrequently: true });
			context?.drawImage(canvas, 0, 0);
			const { data = [] } =
				context?.getImageData(
					Math.round(box.x),
					Math.round(box.y + box.height * height),
					Math.round(box.width),
					1,
				) ?? {};
			const runs: [string, number][] = [];
			for (let i = 0; i < data.length; i += 4) {
				const hex = [0, 1, 2].map((at) =>
					(data[i + at] ?? 0).toString(16).padStart(2, "0"),
				);
				// nothing is drawn where a cell is blank
				const color = data[i + 3] ? `#${hex.join("")}` : "#ffffff";
				const last = runs.at(-1);
				if (last?.[0] === color) last[1] += 1;
				else runs.push([color, 1]);
			}
			return runs;
		},
		[cell, height] as const,
	);

const drawn = async (cell: string, height?: number) =>
	(await runsIn(cell, height)).filter(
		([color, count]) => count > 2 && color !== "#ffffff",
	);

test("a cell is painted in the very color that another cell holds, from edge to edge", async () => {
	// cells of 100 pixels, and 2 pixels free on either side
	await expect.poll(() => drawn("B2"), SOON).toEqual([["#11aa33", 96]]);
});

test("a bar of 1 and 2 of 4 has a quarter and a half, in its two colors", async () => {
	await expect
		.poll(() => drawn("B3"), SOON)
		.toEqual([
			["#ff0000", 24],
			["#0000ff", 48],
		]);
});

test("columns and lines are in their color", async () => {
	// a column half as high as the other is not met above the half
	await expect.poll(() => drawn("B4", 0.25), SOON).toEqual([["#7700aa", 47]]);
	expect(await drawn("B4", 0.75)).toEqual([
		["#7700aa", 47],
		["#7700aa", 47],
	]);
	const line = await drawn("B5");
	expect(line.map(([color]) => color)).toEqual(["#008877"]);
});

test("the color follows its cell, and goes with it", async () => {
	const type = (text: string) =>
		page.evaluate(async (text) => {
			window.desk?.type("Sheet1", "C1", text);
			await window.desk?.settle();
		}, text);
	await type("#c04000");
	await expect.poll(() => drawn("B2"), SOON).toEqual([["#c04000", 96]]);
	await type("#11aa33");
});

test("it is said below the grid, for whoever does not see it", async () => {
	await page.evaluate(() => window.desk?.select("Sheet1", "B2"));
	await expect
		.poll(() => page.locator("#below").textContent(), SOON)
		.toBe("Sheet1, B2 draws a bar of 1 in #11aa33, the whole being 1.");
	await page.evaluate(() => window.desk?.select("Sheet1", "A1"));
});

test("on paper it is drawn in its colors, with its words", async () => {
	await page.evaluate(() => {
		window.print = () => undefined;
		document.getElementById("print-tab")?.click();
	});
	const images = page.locator("#print svg[role=img]");
	expect(await images.count()).toBe(4);
	expect(await images.first().getAttribute("aria-label")).toContain("#11aa33");
	const fills = await page
		.locator("#print svg rect")
		.evaluateAll((all) => all.map((each) => each.getAttribute("fill")));
	expect(fills).toEqual([
		"#11aa33",
		"#ff0000",
		"#0000ff",
		"#7700aa",
		"#7700aa",
	]);
});

test("nothing was complained of", () => {
	expect(complaints).toEqual([]);
});
