/** Days of a job in files of other time zones than the script's, on the day of the change to or from summer time too. */
import { describe, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import type { JobFile } from "../../src/job/jobfile";
import type { JobMade } from "../../src/sheets/messages";
import { smallJob } from "./small/plan";
import { openSmall } from "./small/workbook";

// IANA: 2027-03-28 is the night of the change in Berlin, 2027-03-14 in Los Angeles, 2027-04-04 in Auckland
const ZONES = [
	["Europe/Berlin", ["2027-03-27", "2027-03-28", "2027-03-29"]],
	["America/Los_Angeles", ["2027-03-13", "2027-03-14", "2027-03-15"]],
	["Pacific/Auckland", ["2027-04-03", "2027-04-04", "2027-04-05"]],
	["Etc/UTC", ["2027-03-09"]],
] as const;

describe.each(ZONES)("in a file in %s", (timeZone, days) => {
	test("a day is the same day written, copied, closed and recorded", async () => {
		const desk = await openSmall({ timeZone });
		for (const day of days) await lived(desk, day);
		desk.dispose();
	}, 60_000);
});

async function lived(desk: Desk, day: string): Promise<void> {
	const { number } = (await desk.call("createJob", [
		{ ...smallJob, pourDate: day, dueDate: day },
	])) as JobMade;
	const copy = (await desk.call("copyJob", [number])) as JobMade;
	const shown = (job: number) => desk.display(`${job} Job`, "C5:D6");
	expect(shown(number).map(([cell]) => cell)).toEqual([day, day]);
	// both days belong to the one order
	expect(shown(copy.number).map(([cell]) => cell)).toEqual(["", ""]);
	const { pourDate, dueDate } = (await desk.call("jobFile", [
		number,
	])) as JobFile;
	expect([pourDate, dueDate]).toEqual([day, day]);
	await desk.call("closeJob", [number, true]);
	await desk.call("closeJob", [copy.number, true]);
	expect(shown(number)[1]).toEqual([day, day]);
	const row = await desk.call("recordSwatch", [
		{ doses: { Umber: 0.01 }, color: "#b5a99a", date: day },
	]);
	expect(desk.display("Swatches", `H${row}`)).toEqual([[day]]);
}
