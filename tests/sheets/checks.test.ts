/** The Job tab shows the checks, totals and line that follow from the files that the script reads of the same workbook. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { byWorst, checksOf } from "../../src/job/answers/checks";
import { wholeOf } from "../../src/job/answers/whole";
import type { JobFile } from "../../src/job/jobfile";
import type { StudioFile } from "../../src/job/studiofile";
import { area } from "../../templates/blocks";
import {
	beside,
	cellOf,
	numberAt,
	type Place,
	typed,
	under,
	valueAt,
} from "../job/found";
import { openWorkbook } from "./workbook";

let desk: Desk;
beforeAll(async () => {
	desk = await openWorkbook();
	await desk.call("createDemoJob", ["metric"]);
}, 120_000);
afterAll(() => desk.dispose());

const JOB = "1 Job";

/** What is checked, and what it says, as the tab lists it. */
function listed() {
	const [tab, first] = under(desk, JOB, "What is checked", 0);
	return desk.read(tab, area(first, 27, 2));
}

async function answered() {
	const studio = (await desk.call("studioFile")) as StudioFile;
	const job = (await desk.call("jobFile", [1])) as JobFile;
	return byWorst(checksOf(wholeOf(studio, job))).map(({ what, say }) => [
		what,
		say,
	]);
}

const capacity: Place = cellOf("Studio.mixer_capacity");

describe("the checks of the Job tab", { timeout: 60_000 }, () => {
	test("are those of the files, the worst first", async () => {
		expect(listed()).toEqual(await answered());
		await typed(desk, [...capacity, "120"]);
		const now = listed();
		expect(now).toEqual(await answered());
		// after how a piece is carried: that can hurt someone
		expect(now[1]?.[1]).toMatch(/^Look: a piece is more than the mixer takes/);
		await typed(desk, [...capacity, "150"]);
	});

	test("knockouts: volume × density less their own mass", () => {
		// The core of 13.3 L of the demo weighs 3 kg; density as the Tones tab has it.
		const density = numberAt(desk, ...cellOf("Tones.density"));
		expect(density).toBeGreaterThan(2000);
		expect(
			numberAt(
				desk,
				...beside(desk, "1 Mold", "Hold down each Basin core, kg"),
			),
		).toBeCloseTo(0.0133 * density - 3, 9);
	});

	test("the bar cast face down is built the other hand", () => {
		// Finished, the notch of 1500 × 830 in 2150 × 1480 is at the back right: in the mold at the back left, which
		// leaves 2150 − 1500 = 650 of the back and 1480 − 830 = 650 of the left side.
		const mold = (heading: string) =>
			valueAt(desk, ...under(desk, JOB, heading, 0));
		expect(mold("In the mold, seen from above")).toBe(
			"MIRRORED: left and right change sides",
		);
		expect(mold("Notch in the mold")).toBe(
			"1500 × 830 at back LEFT (finished: back right)",
		);
		expect(mold("Sides in the mold")).toBe(
			"front 2150, back 650, left 650, right 1480",
		);
		expect(mold("Drop edge in the mold")).toBe(
			"front and RIGHT (finished: front and left)",
		);
		expect(mold("Cutouts in the mold")).toBe(
			"Measure from the other side: left is RIGHT",
		);
	});
});
