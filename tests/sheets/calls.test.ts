import { afterAll, beforeAll, expect, test } from "vitest";
import type { Counts, Desk } from "../../src/desk/contract";
import { openWorkbook } from "./workbook";

let desk: Desk;
let first: Counts;
let second: Counts;
beforeAll(async () => {
	desk = await openWorkbook();
	await desk.call("createDemoJob", ["metric"]);
	first = desk.counts();
	await desk.call("createDemoJob", ["metric"]);
	second = desk.counts();
}, 120_000);
afterAll(() => desk.dispose());

/** All calls, those that only put a rule together among them. */
const total = ({ byName }: Counts) =>
	Object.values(byName).reduce((sum, count) => sum + count, 0);

test("a job in a workbook with its studio's tabs takes at most 270 calls", () => {
	expect(total(second)).toBeLessThanOrEqual(270);
});

test("the first job, which brings the studio's tabs, takes at most 420", () => {
	expect(total(first)).toBeLessThanOrEqual(420);
	expect(total(second)).toBeLessThan(total(first));
});

test("cells are written once a tab, and calculated once at the end", () => {
	// seven tabs of the studio and seven of the job; then seven of the second job alone
	expect(first.byName["Range.setValues"]).toBe(7 + 7);
	expect(second.byName["Range.setValues"]).toBe(7);
	expect(first.byName["SpreadsheetApp.flush"]).toBe(1);
	expect(Object.keys(first.byName)).not.toContain("Range.setValue");
});
