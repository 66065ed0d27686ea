/** A job is closed once nothing is open in it, still takes payments, and is opened again from the file that it keeps. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { JOBS_ROW } from "../../src/job/fields/jobline";
import type { JobFile } from "../../src/job/jobfile";
import type { JobMade, Recorded } from "../../src/sheets/messages";
import { columnLetters } from "../../src/sheets/reading/a1";
import { asTexts } from "../job/writtenjob";
import { slab } from "./onejob";
import { openWorkbook } from "./workbook";

/** 1000 and 20% tax, ordered. */
const SOLD = {
	...slab,
	stage: "ordered",
	priceAgreed: 1000,
	acceptedOn: "2027-02-01",
	payments: [{ for: "deposit", amount: 600, on: "2027-02-02" }],
};

let desk: Desk;
beforeAll(async () => {
	desk = await openWorkbook();
	await desk.call("createJob", [SOLD]);
}, 120_000);
afterAll(() => desk.dispose());

const fileOf = (job: number) => desk.call("jobFile", [job]) as Promise<JobFile>;
const rowOf = (job: number) =>
	desk
		.read("Jobs", "A5:A124")
		.findIndex(([cell]) => String(cell) === String(job)) + 5;
const onJobs = (job: number, key: keyof typeof JOBS_ROW) =>
	`${columnLetters(Object.keys(JOBS_ROW).indexOf(key))}${rowOf(job)}`;
const jobsCell = (key: keyof typeof JOBS_ROW) =>
	desk.read("Jobs", onJobs(1, key))[0]?.[0];
const note = (value: string, cell: object, believed = "") =>
	desk.call("weigh", [
		{ job: 1, load: 1, cell, value, believed, planNumber: "" },
	]);

describe("a job with something open", { timeout: 120_000 }, () => {
	const refused = (said: string) =>
		expect(desk.call("closeJob", [1])).rejects.toThrow(said);

	test("is not closed, and says what is open", async () => {
		const before = desk.state();
		await refused(
			"Job 1 is not closed. Load 1 is not poured. Still to be paid: € 600.00 on delivery",
		);
		expect(desk.state() === before).toBe(true);
	});

	test("says that a finished load is not in the log", async () => {
		await desk.call("weigh", [
			{
				job: 1,
				load: 1,
				cell: { weighed: "Water" },
				value: 15,
				believed: "",
				planNumber: "",
			},
		]);
		await note("yes", { note: "finished" });
		await refused("Load 1 is not in the Pour log. Still to be paid");
		expect(await desk.call("recordPour", [1])).toMatchObject({ loads: [1] });
		await refused("Job 1 is not closed. Still to be paid: € 600.00");
	});

	test("is closed when told to, and what is paid later still counts", async () => {
		const tabs = (await desk.call("closeJob", [1, true])) as string[];
		expect(tabs[0]).toBe("1 Job");
		expect(jobsCell("toPay")).toBe(600);
		desk.type("Jobs", onJobs(1, "balanceReceived"), "450.5");
		await desk.settle();
		expect(jobsCell("toPay")).toBe(149.5);
	});
});

describe("a closed job", { timeout: 120_000 }, () => {
	test("is opened again with all that was typed, its number, its log, and what was paid meanwhile", async () => {
		const made = (await desk.call("openJobAgain", [1])) as JobMade;
		expect(made).toMatchObject({ number: 1 });
		expect(desk.tabs().filter((tab) => tab.startsWith("1 "))).toEqual(
			made.tabs,
		);
		const file = await fileOf(1);
		expect(asTexts(file)).toMatchObject({
			...(asTexts({ ...SOLD, tones: file.tones }) as object),
			payments: expect.anything(),
		});
		expect(file.pours?.[0]).toMatchObject({ weighed: { Water: 15 } });
		expect(file.payments).toEqual([
			...SOLD.payments,
			{ for: "balance", amount: 450.5 },
		]);
		await desk.settle();
		expect(jobsCell("toPay")).toBe(149.5);
		const again = (await desk.call("recordPour", [1])) as Recorded;
		expect(again.loads).toEqual([]);
		expect(/job1_closed|, closed/.test(desk.state())).toBe(false);
		expect(desk.errors()).toEqual([]);
	});

	test("closes without more once all is paid, and is live no second time", async () => {
		await expect(desk.call("openJobAgain", [1])).rejects.toThrow(
			"There is no closed job 1",
		);
		const file = await fileOf(1);
		await desk.call("removeJob", [1]);
		await desk.call("createJob", [
			{
				...file,
				payments: [...(file.payments ?? []), { for: "balance", amount: 149.5 }],
			},
		]);
		await expect(desk.call("closeJob", [1])).resolves.toHaveLength(7);
		expect(jobsCell("toPay")).toBe(0);
	});

	test("of nobody's order owes nothing, and its file may be gone", async () => {
		await desk.call("createJob", [{ ...slab, title: "Only asked" }]);
		await expect(desk.call("closeJob", [2])).rejects.toThrow(
			/^Job 2 is not closed. Load 1 is not poured$/,
		);
		await desk.call("closeJob", [2, true]);
		const kept = desk.named("job2_closed");
		if (!kept) throw new Error("There is no kept file");
		desk.type(kept.tab, kept.range, "mine");
		await expect(desk.call("openJobAgain", [2])).rejects.toThrow(
			"Job 2 keeps no file that it could be opened from",
		);
	});
});
