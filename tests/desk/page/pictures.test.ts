/** Pictures and links in the page's workbook, by a small add-on of the test's own. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { png } from "../png";
import { visitPut } from "./standin";
import type { Visit } from "./visit";

const MINUTE = 60_000;
const SOON = { timeout: MINUTE, interval: 200 };

/** A red picture of 120 by 80 at C4, 10 to the right and 5 down, and in A1 a link to B30 of another tab. */
const CODE = `
function onOpen() { SpreadsheetApp.getUi().createAddonMenu().addItem("Put", "put").addToUi(); }
function createDemoJob() { return null; }
function put() {
	var ss = SpreadsheetApp.getActive(), s = ss.getSheets()[0];
	var blob = Utilities.newBlob(Utilities.base64Decode("${png(120, 80, [255, 0, 0])}"), "image/png");
	s.insertImage(blob, 3, 4, 10, 5).setAltTextTitle("Bar");
	s.getRange("A1:A5").setValues([[1], [2], [3], [4], [5]]);
	s.setFrozenRows(2);
	var other = ss.insertSheet("Other");
	s.getRange("A2").setFormula('=HYPERLINK("#gid=' + other.getSheetId() + '&range=B30";"go")');
	ss.setActiveSheet(s);
}`;

let page: Page;
let complaints: Visit["complaints"];

beforeAll(async () => {
	({ page, complaints } = await visitPut(CODE));
}, 3 * MINUTE);

afterAll(() => page?.close());

const picture = () => page.locator("#pictures img");

/** Red, green and blue of one pixel of what is to be seen. */
async function colorAt(x: number, y: number): Promise<number[]> {
	const shot = await page.screenshot({ clip: { x, y, width: 1, height: 1 } });
	return page.evaluate(async (source) => {
		const bitmap = await createImageBitmap(
			await (await fetch(`data:image/png;base64,${source}`)).blob(),
		);
		const context = new OffscreenCanvas(1, 1).getContext("2d");
		context?.drawImage(bitmap, 0, 0);
		return [...(context?.getImageData(0, 0, 1, 1).data.slice(0, 3) ?? [])];
	}, shot.toString("base64"));
}

test("a picture lies where its cell is, as large as it is", {
	timeout: MINUTE,
}, async () => {
	await picture().waitFor();
	const place = async () => {
		const canvas = await page
			.locator("#grid canvas[id^=univer-sheet]")
			.boundingBox();
		const box = await picture().boundingBox();
		return [
			Math.round((box?.x ?? 0) - (canvas?.x ?? 0)),
			Math.round((box?.y ?? 0) - (canvas?.y ?? 0)),
			box?.width,
			box?.height,
		];
	};
	// headings of 46 by 20; two columns of 100 and three rows of 21 before it
	await expect.poll(place, SOON).toEqual([46 + 200 + 10, 20 + 63 + 5, 120, 80]);
	const box = await picture().boundingBox();
	const middle = [(box?.x ?? 0) + 60, (box?.y ?? 0) + 40] as const;
	await expect.poll(() => colorAt(...middle), SOON).toEqual([255, 0, 0]);
	expect(await picture().getAttribute("alt")).toBe("Bar");
});

test("it moves with the cells, and behind the frozen ones", {
	timeout: MINUTE,
}, async () => {
	const before = await picture().boundingBox();
	await page.mouse.move((before?.x ?? 0) + 60, (before?.y ?? 0) + 200);
	await page.mouse.wheel(0, 60);
	await expect
		.poll(async () => (await picture().boundingBox())?.y, SOON)
		.toBeLessThan((before?.y ?? 0) - 30);
	const after = await picture().boundingBox();
	const canvas = await page
		.locator("#grid canvas[id^=univer-sheet]")
		.boundingBox();
	// just below the two frozen rows it is to be seen, in them not
	const edge = (canvas?.y ?? 0) + 20 + 42;
	expect(after?.y ?? 0).toBeLessThan(edge);
	const x = (after?.x ?? 0) + 100;
	expect(await colorAt(x, edge + 4)).toEqual([255, 0, 0]);
	expect(await colorAt(x, edge - 6)).not.toEqual([255, 0, 0]);
	await page.mouse.wheel(0, -600);
});

test("it is printed over its cells", { timeout: MINUTE }, async () => {
	await page.evaluate(() => {
		window.print = () => undefined;
	});
	await page.getByRole("button", { name: "Print this tab" }).click();
	await page.emulateMedia({ media: "print" });
	const table = await page.locator("#print table").boundingBox();
	const printed = await page.locator("#print img").boundingBox();
	expect((printed?.x ?? 0) - (table?.x ?? 0)).toBeCloseTo(210, 0);
	// the lines between rows take their room too
	expect((printed?.y ?? 0) - (table?.y ?? 0)).toBeGreaterThanOrEqual(68);
	expect((printed?.y ?? 0) - (table?.y ?? 0)).toBeLessThan(76);
	const pdf = await page.pdf({ format: "A4" });
	expect(pdf.toString("latin1")).toContain("/Subtype /Image");
	await page.emulateMedia({ media: "screen" });
});

test("it is on its own tab only, and goes when it is taken away", {
	timeout: MINUTE,
}, async () => {
	await page.evaluate(() => window.desk?.select("Other", "A1"));
	await expect.poll(() => picture().count(), SOON).toBe(0);
	await page.evaluate(() => window.desk?.select("Sheet1", "A1"));
	await expect.poll(() => picture().count(), SOON).toBe(1);
});

test("a link to a tab is a way there, in the line below", {
	timeout: MINUTE,
}, async () => {
	await page.evaluate(() => window.desk?.select("Sheet1", "A2"));
	await page.getByRole("button", { name: "Go to Other, B30" }).click();
	const open = () =>
		page.evaluate(() => {
			const book = window.desk?.engine.api.getActiveWorkbook();
			return [
				book?.getActiveSheet().getSheetName(),
				book?.getActiveCell()?.getA1Notation(),
			];
		});
	await expect.poll(open, SOON).toEqual(["Other", "B30"]);
	expect(complaints).toEqual([]);
});
