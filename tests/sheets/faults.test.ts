import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Desk, SavedWorkbook } from "../../src/desk/contract";
import type { JobMade, MixerState } from "../../src/sheets/messages";
import { demo } from "../../templates/index";
import { openWorkbook } from "./workbook";

let desk: Desk;
beforeEach(async () => {
	desk = await openWorkbook();
});
afterEach(() => desk.dispose());

async function reopen(saved: SavedWorkbook): Promise<void> {
	desk.dispose();
	desk = await openWorkbook({ saved });
}

/** Tells of each fault by the state it left; ends with the first call that no fault reached. */
async function faultAtEach(
	run: (failAt: number) => Promise<unknown>,
	after: (call: number, error: Error | undefined) => void | Promise<void>,
	{ from = 1, step = 1 } = {},
): Promise<number> {
	for (let call = from; ; call += step) {
		const made = await run(call).catch((error: Error) => error);
		await after(call, made instanceof Error ? made : undefined);
		if (desk.counts().services < call) return call;
	}
}

describe("a service that fails", { timeout: 1_200_000 }, () => {
	// Calls all over the writing, not each of them: all together take a quarter of an hour.
	test("at any of every 31 calls of the first job leaves the workbook as it was", async () => {
		const before = desk.state();
		await faultAtEach(
			(failAt) => desk.call("createDemoJob", ["metric"], { failAt }),
			(call, error) => {
				if (error)
					expect(desk.state(), `after a fault at call ${call}`).toBe(before);
			},
			{ from: 3, step: 31 },
		);
		expect(desk.tabs()).toContain("1 Job");
	});

	test("at any call of weighing, recording, putting a picture leaves all or nothing", async () => {
		await desk.call("createDemoJob", ["metric"]);
		const { planNumber } = (await desk.call("mixerState", [1])) as MixerState;
		const weighing = {
			job: 1,
			load: 1,
			column: "weights",
			row: 1,
			value: 3,
			believed: "",
			planNumber,
		};
		const runs: [name: string, args: unknown[]][] = [
			["mixerWeigh", [weighing]],
			["recordPour", [1]],
			["putPicture", [1, PNG]],
		];
		for (const [name, args] of runs) {
			const before = desk.state();
			await faultAtEach(
				(failAt) => desk.call(name, args, { failAt }),
				(call, error) => {
					if (error) expect(desk.state(), `${name}, call ${call}`).toBe(before);
				},
			);
			expect(desk.state()).not.toBe(before);
		}
	});

	test("at any of every 29 calls of closing leaves the job open, or closed whole", async () => {
		await desk.call("createDemoJob", ["metric"]);
		const saved = desk.save();
		const open = desk.state();
		await desk.call("closeJob", [1]);
		const { services } = desk.counts();
		const closed = shownIn(desk);
		for (let call = 1; call <= services; call += 29) {
			await reopen(saved);
			const made = await desk
				.call("closeJob", [1], { failAt: call })
				.catch((error: Error) => error);
			if (made instanceof Error)
				expect(desk.state(), `closing, call ${call}`).toBe(open);
			else expect(shownIn(desk), `closing, call ${call}`).toEqual(closed);
		}
	});

	test("at any of every 29 calls of removing leaves the job whole, or nothing of it", async () => {
		await desk.call("createDemoJob", ["metric"]);
		const saved = desk.save();
		const whole = desk.state();
		await desk.call("removeJob", [1]);
		const { services } = desk.counts();
		const gone = desk.state();
		for (let call = 1; call <= services; call += 29) {
			await reopen(saved);
			const made = await desk
				.call("removeJob", [1], { failAt: call })
				.catch((error: Error) => error);
			expect(desk.state(), `removing, call ${call}`).toBe(
				made instanceof Error ? whole : gone,
			);
		}
	});
});

const PNG =
	"data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

/** What a person sees of a closed job; its tabs' own numbers differ from one closing to the next. */
const shownIn = (of: Desk) =>
	["1 Job", "1 Cost", "Jobs"].map((tab) => [
		of.tabs(),
		of.display(tab, "A1:H30"),
		of.named("job1_closed"),
		of.named("job1_title"),
	]);

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
