/** Every service call of every change fails once, in a workbook of the demo job. */
import { beforeAll, describe, expect, test } from "vitest";
import type { SavedWorkbook } from "../../../src/desk/contract";
import { openWorkbook } from "../workbook";
import { everyCall, struckAt, studioWithJob } from "./strikes";
import { POUR_WORKS, WORKS, weighing, withWeight } from "./works";

let before: SavedWorkbook;
let poured: SavedWorkbook;
beforeAll(async () => {
	before = await studioWithJob();
	poured = await withWeight(before);
}, 120_000);

describe("a service that fails at any call", { timeout: 1_200_000 }, () => {
	test("of creating a job in a blank workbook leaves it blank", async () => {
		const desk = await openWorkbook();
		const blank = desk.save();
		desk.dispose();
		const work = { before: blank, name: "createDemoJob", args: ["metric"] };
		expect((await struckAt(work, everyCall)).calls).toBeGreaterThan(200);
	});

	test.each(WORKS)(
		"of %s leaves all or nothing of it",
		async (_, name, args) => {
			const { calls } = await struckAt({ before, name, args }, everyCall);
			expect(calls).toBeGreaterThan(10);
		},
	);

	test.each(POUR_WORKS)(
		"of %s leaves all or nothing of it",
		async (_, name, args) => {
			const work = { before: poured, name, args };
			expect((await struckAt(work, everyCall)).calls).toBeGreaterThan(10);
		},
	);

	test("of weighing leaves all or nothing of it", async () => {
		const args = [await weighing(before)];
		const work = { before, name: "weigh", args };
		expect((await struckAt(work, everyCall)).calls).toBeGreaterThan(10);
	});
});
