/** Every service call of every change fails once, in a workbook that has few cells and one of everything. */
import { beforeAll, expect, test } from "vitest";
import type { SavedWorkbook } from "../../../src/desk/contract";
import { openSmall, smallStudio } from "../small/workbook";
import { everyCall, struckAt } from "./strikes";
import { WORKS } from "./works";

let before: SavedWorkbook;
beforeAll(async () => {
	before = await smallStudio();
}, 60_000);

test("creating the first job leaves a blank workbook blank, or is done", async () => {
	const desk = await openSmall();
	const blank = desk.save();
	desk.dispose();
	const { calls } = await struckAt(
		{ before: blank, name: "createDemoJob", args: ["metric"], open: openSmall },
		everyCall,
	);
	expect(calls).toBeGreaterThan(100);
}, 1_200_000);

test.each(WORKS)(
	"%s leaves all or nothing of it",
	async (_, name, args) => {
		const work = { before, name, args, open: openSmall };
		const { calls, strikes } = await struckAt(work, everyCall);
		expect(strikes).toBe(calls);
		expect(calls).toBeGreaterThan(10);
	},
	1_200_000,
);
