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

/** Calls that put a rule together in the script itself, before the workbook hears of it. */
const BUILDING = /Builder\.|\.new(?:DataValidation|ConditionalFormatRule)$/;

const reaching = ({ byName }: Counts) =>
	Object.entries(byName)
		.filter(([name]) => !BUILDING.test(name))
		.reduce((sum, [, count]) => sum + count, 0);

test("the first job and the studio's tabs reach the workbook in at most 150 calls", () => {
	expect(reaching(first)).toBeLessThanOrEqual(150);
});

test("a second job needs fewer, but for one a name that is there already", () => {
	const names = second.byName["NamedRange.getName"] ?? 0;
	expect(reaching(second) - names).toBeLessThan(reaching(first));
});

test("values are written once a tab, and calculated once at the end", () => {
	expect(first.byName["Range.setValues"]).toBe(6);
	expect(first.byName["SpreadsheetApp.flush"]).toBe(1);
	expect(Object.keys(first.byName)).not.toContain("Range.setValue");
});
