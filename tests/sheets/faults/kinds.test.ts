/** Of each method that a change calls, the first, the middle and the last call fail, in a workbook of the demo job. */
import { beforeAll, describe, expect, test } from "vitest";
import type { SavedWorkbook } from "../../../src/desk/contract";
import { openWorkbook } from "../workbook";
import { eachKind, struckAt, studioWithJob } from "./strikes";
import { POUR_WORKS, WORKS, weighing, withWeight } from "./works";

let before: SavedWorkbook;
let poured: SavedWorkbook;
beforeAll(async () => {
	before = await studioWithJob();
	poured = await withWeight(before);
}, 120_000);

describe("a service that fails", { timeout: 600_000 }, () => {
	test("while the first job is created leaves a blank workbook blank", async () => {
		const desk = await openWorkbook();
		const blank = desk.save();
		desk.dispose();
		const work = { before: blank, name: "createDemoJob", args: ["metric"] };
		expect((await struckAt(work, eachKind)).strikes).toBeGreaterThan(80);
	});

	// creating a job beside another calls what copying calls
	test.each(WORKS.slice(1))(
		"in %s leaves all or nothing of it",
		async (_, name, args) => {
			const { strikes } = await struckAt({ before, name, args }, eachKind);
			expect(strikes).toBeGreaterThan(10);
		},
	);

	test.each(POUR_WORKS)(
		"in %s leaves all or nothing of it",
		async (_, name, args) => {
			const work = { before: poured, name, args };
			expect((await struckAt(work, eachKind)).strikes).toBeGreaterThan(10);
		},
	);

	test("in weighing leaves all or nothing of it", async () => {
		const args = [await weighing(before)];
		const work = { before, name: "weigh", args };
		expect((await struckAt(work, eachKind)).strikes).toBeGreaterThan(10);
	});
});
