/** Services wait while cells calculate: what writes a formula comes after everything else that a call writes. */
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { openWorkbook } from "./workbook";

let desk: Desk;
beforeAll(async () => {
	desk = await openWorkbook();
}, 60_000);
afterAll(() => desk.dispose());

/** What may follow a formula: another, reading, opening a tab, the end, and what is not kept in the workbook. */
const AFTER =
	/ =$|\.get\w+$|^Spreadsheet\.setActive(Sheet|Range)$|^SpreadsheetApp\.flush$|^PropertiesService\.|^Properties\.|^Lock\./;

test.each([
	["the first job", "createDemoJob", ["metric"]],
	["another job", "createDemoJob", ["metric"]],
	["a copy", "copyJob", [1]],
	["the contract", "contractCheck", []],
	["the contract anew", "contractCheck", []],
])(
	"%s: formulas come last",
	async (_, name, args) => {
		await desk.call(name, args);
		const { order } = desk.counts();
		const first = order.findIndex((call) => call.endsWith(" ="));
		expect(first).toBeGreaterThan(0);
		expect(order.slice(first).filter((call) => !AFTER.test(call))).toEqual([]);
	},
	120_000,
);

test.each([
	["closing", "closeJob", [2, true]],
	["removing", "removeJob", [2]],
])("%s writes no formula", async (_, name, args) => {
	await desk.call(name, args);
	expect(desk.counts().order.filter((call) => call.endsWith(" ="))).toEqual([]);
});
