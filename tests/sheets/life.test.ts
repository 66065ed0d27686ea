/** A job from its first weight to its end: weighed, recorded, copied, closed and removed. */

import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { CellValue, Desk } from "../../src/desk/contract";
import { basisOf } from "../../src/job/answers/basis";
import { planNumberOf } from "../../src/job/answers/card/planfit";
import { orNull } from "../../src/job/answers/known";
import { asReached } from "../../src/job/asreached";
import type {
	JobMade,
	JobState,
	Recorded,
	SwatchInput,
	Weighed,
	Weighing,
} from "../../src/sheets/messages";
import { pourCard } from "../../templates/card/cardtab";
import { demo } from "../../templates/index";
import { openWorkbook } from "./workbook";

let desk: Desk;
beforeAll(async () => {
	desk = await openWorkbook();
	await desk.call("createDemoJob", ["metric"]);
}, 240_000);
afterAll(() => desk.dispose());

const CARD = "1 Pour card";
const at = (slot: string): string =>
	pourCard.blocks.find((block) => block.slot === slot)?.at ?? "";
const state = () => desk.call("jobState", [1]) as Promise<JobState>;
const pour = async (load = 1) =>
	(await state()).job.pours?.find((one) => one.load === load);
const planNumber = async () => {
	const { job, studio } = await state();
	return orNull(planNumberOf(basisOf(studio, job))) ?? "";
};

async function weigh(some: Partial<Weighing>): Promise<Weighed> {
	const whole = { job: 1, load: 1, cell: { step: 1 }, believed: "" };
	return desk.call("weigh", [
		{ ...whole, planNumber: await planNumber(), value: 1, ...some },
	]) as Promise<Weighed>;
}

const rowOf = (tab: string, key: CellValue): CellValue[] =>
	desk.read(tab, "A1:Q60").find((row) => String(row[0]) === String(key)) ?? [];

const logged = (load: number) =>
	desk
		.read("Pour log", "A1:Q60")
		.find((row) => row[1] === 1 && row[3] === load);

describe("a new job", { timeout: 240_000 }, () => {
	test("has a row on the Jobs tab that leads to it", () => {
		const row = rowOf("Jobs", 1);
		expect(row.slice(1, 4)).toEqual([
			"Guesthouse Alder Hollow (invented)",
			"Breakfast room and two baths",
			"priced",
		]);
	});

	test("tells its files, and writes nothing", async () => {
		const before = desk.state();
		const { job, recorded } = await state();
		expect(job.title).toBe(demo.metric.title);
		expect(recorded).toEqual([]);
		expect(await desk.call("showCell", [1, "Job.pieces"])).toBe("1 Job");
		await expect(desk.call("showCell", [1, "Job.nothing"])).rejects.toThrow(
			"There is no cell Job.nothing in a job",
		);
		expect(desk.state() === before).toBe(true);
	});
});

describe("at the mixer", { timeout: 240_000 }, () => {
	test("another load is chosen, and one that the job has not is refused", async () => {
		const { job } = (await desk.call("chooseLoad", [1, 2])) as JobState;
		expect(job.load).toBe(2);
		expect(desk.read(CARD, "C3")).toEqual([[2]]);
		await expect(desk.call("chooseLoad", [1, 9])).rejects.toThrow(
			"Job 1 has no load 9",
		);
		await desk.call("chooseLoad", [1, 1]);
	});

	test("a weight goes to its cell, and the plan's number beside it", async () => {
		const number = await planNumber();
		const { written, state } = await weigh({ value: 3 });
		expect(written).toBe(true);
		expect(state.job.pours).toEqual([
			{ load: 1, planNumber: number, steps: { 1: 3 } },
		]);
		expect((await pour())?.steps).toEqual({ 1: 3 });
		expect(desk.read(CARD, at("planNumber"))).toEqual([[number]]);
	});

	test("an ingredient's and the reserve's too, and a blank takes one out", async () => {
		const water = { cell: { weighed: "water" } };
		await weigh({ ...water, value: 7.5 });
		await weigh({ cell: { step: 0 }, value: 2 });
		expect(await pour()).toMatchObject({
			weighed: { Water: 7.5 },
			steps: { 0: 2, 1: 3 },
		});
		await weigh({ ...water, value: "", believed: 7.5 });
		expect(Object.keys((await pour()) ?? {})).not.toContain("weighed");
	});

	test.each([{ weighed: "Sugar" }, { step: 400 }, { note: "nothing" }])(
		"%j is no cell of the card",
		async (cell) => {
			await expect(weigh({ cell } as object)).rejects.toThrow(
				"There is no such cell on the Pour card",
			);
		},
	);

	test("a weight that somebody typed meanwhile is not written over", async () => {
		const answer = await weigh({ value: 4, believed: "" });
		expect(answer.written).toBe(false);
		expect(answer.why).toContain("the card says 3 there");
		expect((await pour())?.steps?.[1]).toBe(3);
	});

	test("a weight for another plan is not written", async () => {
		const answer = await weigh({ cell: { step: 2 }, planNumber: 1 });
		expect(answer.why).toContain("The tones were changed meanwhile");
	});

	test.each([
		'=HYPERLINK("http://example.org","x")',
		"<img src=x onerror=alert(1)>",
		"+49 30 123",
		"שלום",
		"🪨 two buckets",
	])("the note %s stays that text", async (text) => {
		const believed = (await pour())?.remarks ?? "";
		await weigh({ cell: { note: "remarks" }, value: text, believed });
		expect((await pour())?.remarks).toBe(text);
	});

	test("a note that no cell would take is answered, not failed: what failed is sent again, and holds up the weights behind it", async () => {
		const { written, why } = await weigh({
			cell: { note: "lots" },
			value: "x".repeat(10_001),
		});
		expect(written).toBe(false);
		expect(why).toBe("A note has at most 10000 letters");
	});

	test("air below freezing is noted, and a weight below nothing is none", async () => {
		await weigh({ cell: { note: "airTemperature" }, value: -5 });
		expect((await pour())?.airTemperature).toBe(-5);
		await expect(weigh({ value: -5 })).rejects.toThrow(
			"A weight is 0 or more, got -5",
		);
	});
});

describe("a recorded pour", { timeout: 240_000 }, () => {
	const finish = (load: number) =>
		weigh({ load, cell: { note: "finished" }, value: "yes" });

	test("is each load that is finished, and why another is not", async () => {
		await weigh({ load: 2, value: 2.5 });
		await finish(1);
		const { loads, left } = (await desk.call("recordPour", [1])) as Recorded;
		expect(loads).toEqual([1]);
		expect(left).toEqual([
			"Load 2 is not finished: type yes beside Finished on the Pour card once it is",
		]);
		expect(logged(1)?.slice(1, 5)).toEqual([
			1,
			`${demo.metric.client} · ${demo.metric.title}`,
			1,
			demo.metric.mix,
		]);
		await finish(2);
		expect(await desk.call("recordPour", [1])).toEqual({
			loads: [2],
			left: [],
		});
		expect((await state()).recorded).toEqual([1, 2]);
	});

	test("has the day on which it was said to be finished", async () => {
		const { pouredOn } = (await pour(1)) ?? {};
		expect(pouredOn).toMatch(/^\d{4}-\d\d-\d\d$/);
		expect(desk.display("Pour log", "A21:D21")[0]).toEqual([
			pouredOn,
			"1",
			`${demo.metric.client} · ${demo.metric.title}`,
			"1",
		]);
	});

	test("is written anew in its row when the load changed, with what was noted there", async () => {
		desk.type("Pour log", "P21", "1234.5");
		desk.type("Pour log", "O21", "fine grain");
		await desk.settle();
		const before = desk.read("Pour log", "A21:Q23");
		await weigh({ cell: { note: "lots" }, value: "K-77" });
		expect(await desk.call("recordPour", [1])).toEqual({
			loads: [],
			again: [1],
			left: [],
		});
		const after = desk.read("Pour log", "A21:Q23");
		const changed = (before[0] ?? []).map((cell, column) =>
			column === 12 ? "K-77" : cell,
		);
		expect(after).toEqual([changed, before[1], before[2]]);
		expect(await desk.call("recordPour", [1])).toEqual({ loads: [], left: [] });
	});

	test("is not recorded twice", async () => {
		const again = (await desk.call("recordPour", [1])) as Recorded;
		expect(again).toEqual({ loads: [], left: [] });
	});
});

describe("a measured sample", { timeout: 240_000 }, () => {
	const SAMPLE = {
		mix: "White casting mix, invented",
		finish: "honed",
		sealed: "bare",
		state: "dry",
		doses: { black: 0.01 },
		color: "52.1, 8.0, 14.2",
		ageDays: 28,
		date: "2027-03-09",
		remark: "=1+1",
	} as const;
	const record = (change: Partial<SwatchInput> = {}) =>
		desk.call("recordSwatch", [{ ...SAMPLE, ...change }]) as Promise<number>;

	test("is a row of Swatches behind the others, its dose under its pigment", async () => {
		const row = await record();
		expect(await record()).toBe(row + 1);
		expect(desk.read("Swatches", "E5:H5")).toEqual([
			["Umber", "Black", "Ocher", "White"],
		]);
		const [cells = []] = desk.read("Swatches", `A${row}:Q${row}`);
		expect(cells).toEqual([
			...["White casting mix, invented", "honed", "bare", "dry"],
			...["", 0.01, "", "", "", "", "", ""],
			...["52.1, 8.0, 14.2", 28, "", expect.anything(), "=1+1"],
		]);
		expect(desk.display("Swatches", `P${row}`)).toEqual([["2027-03-09"]]);
	});

	test.each([
		[
			{ doses: { Rust: 0.02 } },
			"no column for Rust: type its name over a free",
		],
		[{ color: "brown" }, 'color must be #rrggbb or "L*, a*, b*"'],
	])("%j is refused in words", async (change, words) => {
		await expect(record(change as object)).rejects.toThrow(words);
	});
});

describe("a tab that was changed", { timeout: 240_000 }, () => {
	const sheet = (tab: string) =>
		desk.engine.api.getActiveWorkbook()?.getSheetByName(tab);

	test("by a new column reads as it did", async () => {
		const before = await state();
		sheet(CARD)?.insertColumnAfter(6);
		expect(await state()).toEqual(before);
		sheet(CARD)?.deleteColumn(7);
		expect(await state()).toEqual(before);
	});

	test("by another name is the same tab", async () => {
		sheet("1 Tones")?.setName("Our tones");
		expect((await state()).job.tones.length).toBe(4);
		sheet("Our tones")?.setName("1 Tones");
	});

	test("and a job that is not there are told apart", async () => {
		await expect(desk.call("jobState", [7])).rejects.toThrow(
			"There is no open job 7",
		);
	});
});

describe("copied, closed, removed", { timeout: 480_000 }, () => {
	test("a copy has the inputs, and nothing of the pour", async () => {
		const { number } = (await desk.call("copyJob", [1])) as JobMade;
		expect(number).toBe(2);
		expect(desk.read("2 Job", "A12:P16")).toEqual(
			desk.read("1 Job", "A12:P16"),
		);
		expect(desk.read("2 Pour card", at("steps"))).toEqual([[""]]);
		expect(desk.read("2 Pour card", at("planNumber"))).toEqual([[""]]);
		expect(desk.errors()).toEqual([]);
	});

	test("a copy as reached has the doses that came out, and any other word is refused", async () => {
		const { job, studio } = await state();
		const { number } = (await desk.call("copyJob", [1, "reached"])) as JobMade;
		const copy = (await desk.call("jobFile", [number])) as JobState["job"];
		const doses = (tones: JobState["job"]["tones"]) =>
			tones.map(({ doses = {} }) => doses);
		expect(doses(copy.tones)).toEqual(doses(asReached(studio, job).tones));
		expect(copy.pours).toBeUndefined();
		await expect(desk.call("copyJob", [1, "better"])).rejects.toThrow(
			"A job is copied as planned or reached, got better",
		);
		await desk.call("removeJob", [number]);
	});

	test("a closed job shows what it showed, is hidden, and has no formula", async () => {
		const shown = () => desk.display("1 Cost", "A1:H60");
		const before = shown();
		const row = rowOf("Jobs", 1);
		const other = desk.display("2 Cost", "A1:H60");
		await desk.call("closeJob", [1, true]);
		expect(shown()).toEqual(before);
		expect(desk.formula("1 Cost", "A1")).toBe("");
		expect(rowOf("Jobs", 1)).toEqual(row);
		expect(desk.named("job1_title")).toBeUndefined();
		expect(desk.display("2 Cost", "A1:H60")).toEqual(other);
		const hidden = desk.engine.api
			.getActiveWorkbook()
			?.getSheetByName("1 Job")
			?.isSheetHidden();
		expect(hidden).toBe(true);
		await expect(state()).rejects.toThrow("There is no open job 1");
	});

	test("removed jobs leave their rows of the Pour log and nothing else", async () => {
		await desk.call("removeJob", [2]);
		await desk.call("removeJob", [1]);
		expect(desk.tabs().filter((tab) => /^\d/.test(tab))).toEqual([]);
		expect(rowOf("Jobs", 1)).toEqual([]);
		expect(rowOf("Jobs", 2)).toEqual([]);
		expect(logged(2)).toBeDefined();
		expect(desk.state()).not.toMatch(/job[12]_/);
		expect(desk.errors()).toEqual([]);
	});
});

test("a job whose last tab could not go is removed when that is tried again", async () => {
	const other = await openWorkbook();
	await other.call("createDemoJob", ["metric"]);
	const workbook = other.engine.api.getActiveWorkbook();
	for (const sheet of workbook?.getSheets() ?? [])
		if (!sheet.getSheetName().startsWith("1 ")) workbook?.deleteSheet(sheet);
	for (const name of workbook?.getDefinedNames() ?? [])
		if (name.getName().startsWith("studio_")) name.delete();
	await expect(other.call("removeJob", [1])).rejects.toThrow(
		"choose Remove a job again to finish. (You can't remove all the sheets",
	);
	workbook?.create("Mine", 5, 5);
	await other.call("removeJob", [1]);
	expect(other.tabs()).toEqual(["Mine"]);
	expect(other.state()).not.toMatch(/job1_/);
	other.dispose();
}, 60_000);

test.each([
	["copyJob", 1],
	["recordSwatch", { doses: {}, color: "#b5a99a" }],
])(
	"%s says what to do first in a workbook without a studio",
	async (name, arg) => {
		const blank = await openWorkbook();
		await expect(blank.call(name, [arg])).rejects.toThrow(
			"This workbook has no studio tabs yet: choose Start a job",
		);
		blank.dispose();
	},
);
