import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import type { JobMade } from "../../src/sheets/messages";
import { demo } from "../../templates/index";
import { openWorkbook } from "./workbook";

let desk: Desk;
beforeEach(async () => {
	desk = await openWorkbook();
});
afterEach(() => desk.dispose());

describe("a service that fails", { timeout: 600_000 }, () => {
	test("at any call of the first job leaves the workbook as it was", async () => {
		const before = desk.state();
		let call = 0;
		for (;;) {
			call += 1;
			const made = await desk
				.call("createDemoJob", ["metric"], { failAt: call })
				.catch((error: Error) => error);
			if (!(made instanceof Error)) break;
			expect(made.message).toContain("Service Spreadsheets failed");
			expect(desk.state(), `after a fault at call ${call}`).toBe(before);
		}
		// every call has failed once, and the one after the last is none
		expect(call).toBe(desk.counts().services + 1);
	});

	test("at any tenth call of a second job leaves the first", async () => {
		await desk.call("createDemoJob", ["metric"]);
		const { services } = desk.counts();
		const before = desk.state();
		for (let call = 3; call < services; call += 10) {
			const made = await desk
				.call("createDemoJob", ["metric"], { failAt: call })
				.catch((error: Error) => error);
			if (!(made instanceof Error)) break;
			expect(desk.state(), `after a fault at call ${call}`).toBe(before);
		}
	});
});

describe("two people at once", { timeout: 120_000 }, () => {
	const jobNamed = (client: string) => ({ ...demo.metric, client });
	const clients = () =>
		desk
			.tabs()
			.filter((tab) => tab.endsWith(" Job"))
			.map((tab) => desk.read(tab, "C3")[0]?.[0]);

	test("before the first has the lock, each gets a whole job", async () => {
		const made = (await desk.call("createJob", [jobNamed("first")], {
			otherAt: 2,
			other: (person) => person.call("createJob", [jobNamed("second")]),
		})) as JobMade;
		expect(made.number).toBe(2);
		expect(clients()).toEqual(["second", "first"]);
		expect(desk.errors()).toEqual([]);
	});

	test("while the first writes, the second is told to wait, and gets a whole job then", async () => {
		let told = "";
		await desk.call("createJob", [jobNamed("first")], {
			otherAt: 60,
			other: (person) => {
				try {
					person.call("createJob", [jobNamed("second")]);
				} catch (error) {
					told = String(error);
				}
			},
		});
		expect(told).toContain("Somebody else is creating a job");
		await desk.call("createJob", [jobNamed("second")]);
		expect(clients()).toEqual(["first", "second"]);
	});
});
