import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Desk } from "../../../src/desk/contract";
import { openWorkbook } from "../workbook";
import { sheetOf } from "./meddle";

let desk: Desk;
beforeAll(async () => {
	desk = await openWorkbook();
	await desk.call("createDemoJob", ["metric"]);
	await desk.call("createDemoJob", ["metric"]);
}, 60_000);
afterAll(() => desk.dispose());

const filled = (rows: readonly (readonly unknown[])[]) =>
	rows.filter(([name]) => name !== "");

/** Puts the filled rows in the opposite order, as sorting from Z to A does; columns between the ranges have formulas. */
async function turnOver(tab: string, ...ranges: readonly string[]) {
	const count = filled(desk.read(tab, ranges[0] ?? "")).length;
	expect(count).toBeGreaterThan(1);
	for (const range of ranges) {
		const rows = desk.read(tab, range).slice(0, count).reverse();
		const sheet = sheetOf(desk, tab);
		const cells = sheet.getRange(range);
		sheet
			.getRange(cells.getRow(), cells.getColumn(), count, cells.getWidth())
			.setValues(rows as (string | number)[][]);
		expect(desk.read(tab, range).slice(0, count)).toEqual(rows);
	}
	await desk.settle();
}

/** Rows by their first cell. */
const byName = (tab: string, range: string) =>
	Object.fromEntries(
		filled(desk.read(tab, range)).map(([name, ...rest]) => [name, rest]),
	);

const all = (tab: string) => desk.display(tab, "A1:J60");

describe("rows in another order", { timeout: 60_000 }, () => {
	test.each([
		["Pigments", "A5:H34"],
		["Stock", "A5:H84"],
		["Swatches", "A6:Q205"],
	])("of %s change nothing in the job", async (tab, range) => {
		const before = ["1 Tones", "1 Pour card", "1 Cost"].map(all);
		await turnOver(tab, range);
		expect(["1 Tones", "1 Pour card", "1 Cost"].map(all)).toEqual(before);
	});

	test("of Mixes leave each ingredient its weight", async () => {
		const before = byName("1 Pour card", "B20:C31");
		expect(Object.keys(before).length).toBeGreaterThan(3);
		await turnOver("Mixes", "A5:N64");
		expect(byName("1 Pour card", "B20:C31")).toEqual(before);
	});

	test("of the pieces leave each its weight", async () => {
		const before = byName("1 Job", "A13:V32");
		const [weights] = Object.values(before) as unknown[][];
		expect(Number(weights?.[15])).toBeGreaterThan(0);
		await turnOver("1 Job", "A13:P32");
		expect(byName("1 Job", "A13:V32")).toEqual(before);
	});

	test("of the tones leave each its mix and its pigment", async () => {
		const before = byName("1 Tones", "A19:L24");
		await turnOver("1 Tones", "A19:F24");
		expect(byName("1 Tones", "A19:L24")).toEqual(before);
	});
});

test("jobs in another order are closed and removed by their number", async () => {
	const jobs = sheetOf(desk, "Jobs").getRange("A5:B6");
	const formulas = jobs.getFormulas();
	jobs.setFormulas([...formulas].reverse());
	await desk.settle();
	expect(desk.read("Jobs", "A5:A6")).toEqual([["2"], ["1"]]);
	await desk.call("closeJob", [1, true]);
	await desk.call("removeJob", [2]);
	expect(filled(desk.read("Jobs", "A5:A20"))).toEqual([["1"]]);
	expect(desk.tabs()).toContain("1 Job");
	expect(desk.tabs()).not.toContain("2 Job");
	expect(desk.errors()).toEqual([]);
}, 60_000);
