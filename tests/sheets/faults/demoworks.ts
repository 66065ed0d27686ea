/** Each change of a workbook with the demo job is struck at some of its service calls. */
import { beforeAll, describe, expect, test } from "vitest";
import type { SavedWorkbook } from "../../../src/desk/contract";
import { openWorkbook, savedDemo } from "../workbook";
import { type Chosen, struckAt } from "./strikes";
import { POUR_WORKS, WORKS, weighing, withWeight } from "./works";

/** Strikes the first job, in a blank workbook. */
export function strikeFirstJob(chosen: Chosen, least: number): void {
	test("a service that fails while the first job is created leaves a blank workbook blank", async () => {
		const desk = await openWorkbook();
		const blank = desk.save();
		desk.dispose();
		const work = { before: blank, name: "createDemoJob", args: ["metric"] };
		const { strikes } = await struckAt(work, chosen);
		expect(strikes).toBeGreaterThan(least);
	}, 1_200_000);
}

/** Strikes what is done in a workbook that has a job. */
export function strikeDemo(
	chosen: Chosen,
	works: readonly (typeof WORKS)[number][] = WORKS,
): void {
	let before: SavedWorkbook;
	let poured: SavedWorkbook;
	beforeAll(async () => {
		before = await savedDemo();
		poured = await withWeight(before);
	}, 120_000);

	const strike = async (
		saved: SavedWorkbook,
		name: string,
		args: readonly unknown[],
	) => {
		const { strikes } = await struckAt({ before: saved, name, args }, chosen);
		expect(strikes).toBeGreaterThan(10);
	};

	describe("a service that fails", { timeout: 1_200_000 }, () => {
		test.each(works)("in %s leaves all or nothing of it", (_, name, args) =>
			strike(before, name, args),
		);

		test.each(POUR_WORKS)(
			"in %s leaves all or nothing of it",
			(_, name, args) => strike(poured, name, args),
		);

		test("in weighing leaves all or nothing of it", async () =>
			strike(before, "weigh", [await weighing(before)]));
	});
}
