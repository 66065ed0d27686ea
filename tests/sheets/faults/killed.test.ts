/** Google ends a run at any of its service calls, and nothing of it runs any more: the next call puts in order what it left. */
import { beforeAll, expect, test } from "vitest";
import type { Desk, SavedWorkbook } from "../../../src/desk/contract";
import { openSmall, smallStudio } from "../small/workbook";
import { eachLast, reopened, unstruck, type Work } from "./strikes";
import { WORKS } from "./works";

let blank: SavedWorkbook;
let before: SavedWorkbook;
beforeAll(async () => {
	const desk = await openSmall();
	blank = desk.save();
	desk.dispose();
	before = await smallStudio();
}, 60_000);

const QUICK = { quick: true };

async function killed(desk: Desk, { name, args }: Work, killAt: number) {
	await expect(
		desk.call(name, args, { killAt, ...QUICK }),
		`${name}, killed at ${killAt}`,
	).rejects.toThrow("Exceeded maximum execution time");
}

/** Kills the work at every call; opening the panel then leaves the workbook as before, or as done. */
async function putInOrder(work: Work): Promise<void> {
	const { after, order } = await unstruck(work);
	const outcomes = { before: 0, done: 0 };
	let desk = await reopened(work);
	for (let killAt = 1; killAt <= order.length; killAt++) {
		await killed(desk, work, killAt);
		await desk.call("openThePanel", [], QUICK);
		if (desk.differsFrom(work.before) === undefined) {
			outcomes.before += 1;
			continue;
		}
		const where = `${work.name}, killed at ${killAt}, ${order[killAt - 1]}`;
		const isBefore =
			desk.differsFrom(work.before, { butShown: true }) === undefined;
		outcomes[isBefore ? "before" : "done"] += 1;
		desk.dispose();
		desk = await reopened(work);
		if (isBefore) continue;
		// in a workbook that was killed before the new tabs have other numbers
		await killed(desk, work, killAt);
		await desk.call("openThePanel", [], QUICK);
		expect(desk.differsFrom(after, { butShown: true }), where).toBeUndefined();
		desk.dispose();
		desk = await reopened(work);
	}
	desk.dispose();
	console.log(
		`${work.name}: killed at each of ${order.length} calls, ${JSON.stringify(outcomes)}`,
	);
	expect(outcomes.before).toBeGreaterThan(0);
	expect(outcomes.done).toBeGreaterThan(0);
}

test(
	"creating the first job",
	() =>
		putInOrder({
			before: blank,
			name: "createDemoJob",
			args: ["metric"],
			open: openSmall,
		}),
	1_200_000,
);

test.each(WORKS)(
	"%s",
	(_, name, args) => putInOrder({ before, name, args, open: openSmall }),
	1_200_000,
);

/** Done again after a kill at the last call of a method, it works, or says that it was done just now. */
async function doneAgain(work: Work): Promise<void> {
	const { order } = await unstruck(work);
	for (const killAt of eachLast(order)) {
		const desk = await reopened(work);
		await killed(desk, work, killAt);
		const where = `${work.name}, again after ${killAt}, ${order[killAt - 1]}`;
		const error = await desk.call(work.name, work.args, QUICK).then(
			() => "",
			(thrown: Error) => thrown.message,
		);
		expect(error, where).toMatch(/^(There is no (open )?job 1.*)?$/);
		expect(desk.state().includes("unfinished"), where).toBe(false);
		desk.dispose();
	}
}

test(
	"creating the first job is done when it is asked for again",
	() =>
		doneAgain({
			before: blank,
			name: "createDemoJob",
			args: ["metric"],
			open: openSmall,
		}),
	1_200_000,
);

test.each(WORKS)(
	"%s is done when it is asked for again",
	(_, name, args) => doneAgain({ before, name, args, open: openSmall }),
	1_200_000,
);

test("what a killed run left of a job does not keep another from being closed, and a tab of the person's stays", async () => {
	const work: Work = {
		before,
		name: "createDemoJob",
		args: ["metric"],
		open: openSmall,
	};
	const { order } = await unstruck(work);
	const desk = await reopened(work);
	await killed(desk, work, order.indexOf("Spreadsheet.setNamedRange") + 1);
	const workbook = desk.engine.api.getActiveWorkbook();
	workbook?.getSheetByName("2 Tones")?.setName("My own");
	workbook?.create("2 Tones", 5, 5).getRange("A1").setValue("typed by hand");
	await desk.call("closeJob", [1, true]);
	expect(desk.tabs().filter((tab) => /^2 |^My/.test(tab))).toEqual([
		"My own",
		"2 Tones",
	]);
	expect(desk.read("2 Tones", "A1")).toEqual([["typed by hand"]]);
	expect(desk.state().includes("unfinished")).toBe(false);
	desk.dispose();
}, 60_000);
