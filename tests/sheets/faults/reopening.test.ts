/** Opening a closed job again fails at every service call, or is killed at the last of each kind. */
import { beforeAll, expect, test } from "vitest";
import type { SavedWorkbook } from "../../../src/desk/contract";
import { openSmall } from "../small/workbook";
import {
	eachLast,
	everyCall,
	reopened,
	struckAt,
	unstruck,
	type Work,
} from "./strikes";

let work: Work;
beforeAll(async () => {
	const desk = await openSmall();
	await desk.call("createDemoJob", ["metric"]);
	await desk.call("closeJob", [1, true]);
	// The small plan's line is no job's: nothing of it is money.
	desk.type("Jobs", "J5", "");
	desk.type("Jobs", "K5", "");
	await desk.settle();
	const before: SavedWorkbook = desk.save();
	desk.dispose();
	work = { before, name: "openJobAgain", args: [1], open: openSmall };
}, 60_000);

test("all or nothing of it is left by a failure", async () => {
	const { calls } = await struckAt(work, everyCall);
	expect(calls).toBeGreaterThan(50);
}, 1_200_000);

test("opening the panel puts in order what a kill left, and it can be tried again", async () => {
	const { order } = await unstruck(work);
	for (const killAt of eachLast(order)) {
		const desk = await reopened(work);
		const where = `killed at ${killAt}, ${order[killAt - 1]}`;
		await expect(
			desk.call(work.name, work.args, { killAt, quick: true }),
			where,
		).rejects.toThrow("Exceeded maximum execution time");
		await desk.call("openThePanel", [], { quick: true });
		const isBefore =
			desk.differsFrom(work.before, { butShown: true }) === undefined;
		if (isBefore) {
			await desk.call(work.name, work.args, { quick: true });
		}
		const left = /job1_closed|, closed|unfinished/.exec(desk.state());
		expect(left?.[0], where).toBeUndefined();
		expect(
			desk.tabs().filter((tab) => tab.startsWith("1 ")).length,
			where,
		).toBe(3);
		desk.dispose();
	}
}, 1_200_000);
