import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Desk } from "../../../src/desk/contract";
import type { JobMade } from "../../../src/sheets/messages";
import { demo } from "../../../templates/index";
import { openWorkbook } from "../workbook";

let desk: Desk;
beforeEach(async () => {
	desk = await openWorkbook();
});
afterEach(() => desk.dispose());

describe("two people at once", { timeout: 240_000 }, () => {
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
		expect(told).toContain("Somebody else is");
		await desk.call("createJob", [jobNamed("second")]);
		expect(clients()).toEqual(["first", "second"]);
	});
});
