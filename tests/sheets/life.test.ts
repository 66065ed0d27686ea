/** A job from its first weight to its end: weighed, recorded, copied, closed and removed. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { CellValue, Desk } from "../../src/desk/contract";
import type {
	JobChecks,
	JobMade,
	JobView,
	MixerState,
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
const place = (slot: string): string =>
	pourCard.blocks.find((block) => block.slot === slot)?.at ?? "";
const state = () => desk.call("mixerState", [1]) as Promise<MixerState>;

async function weigh(some: Partial<Weighing>): Promise<Weighed> {
	const { planNumber } = await state();
	const whole = { job: 1, load: 1, column: "weights", row: 1, believed: "" };
	return desk.call("mixerWeigh", [
		{ ...whole, planNumber, value: 1, ...some },
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

	test("tells its checks, what is wrong first", async () => {
		const before = desk.state();
		const { rows } = (await desk.call("checkJob", [1])) as JobChecks;
		expect(rows.length).toBeGreaterThan(5);
		const fine = rows.map(({ result }) => result === "fine");
		expect(fine).toEqual([...fine].sort((a, b) => Number(a) - Number(b)));
		expect(desk.state()).toBe(before);
	});
});

test("the picture is drawn from the job as it was given", async () => {
	const view = (await desk.call("jobView", [1])) as JobView;
	const { pieces, cutouts = [], tones, mix } = demo.metric;
	expect(view.pieces.map(([name]) => name)).toEqual(
		pieces.map(({ name }) => name),
	);
	expect(view.faces).toEqual(pieces.map(({ face = "" }) => face));
	expect(view.cutouts.map(([piece]) => piece)).toEqual(
		cutouts.map(({ piece }) => piece),
	);
	expect(view.tones.map(({ color, ...tone }) => tone)).toEqual(
		tones.map(({ name, share, doses }) => ({ name, share, doses })),
	);
	expect(view.tones.map(({ color }) => color).join()).toMatch(
		/^(#[0-9a-f]{6},){3}#[0-9a-f]{6}$/,
	);
	expect(view.mix).toBe(mix);
});

describe("at the mixer", { timeout: 240_000 }, () => {
	test("the plan's arguments are those of the card, for the load it shows", async () => {
		const { loads, chosen } = await state();
		const load = loads.find(({ number }) => number === chosen);
		const toned = desk.read(CARD, "C9")[0]?.[0];
		expect(load?.planMass).toBeCloseTo(Number(toned), 9);
	});

	test("another load's are what the card says when it is chosen", async () => {
		const { loads } = await state();
		await desk.call("mixerChoose", [1, 2]);
		expect(desk.read(CARD, "C3")).toEqual([[2]]);
		expect(loads[1]?.planMass).toBeCloseTo(
			Number(desk.read(CARD, "C9")[0]?.[0]),
			9,
		);
		await desk.call("mixerChoose", [1, 1]);
	});

	test("a weight goes to its cell, and the plan's number beside it", async () => {
		const { planNumber } = await state();
		expect((await weigh({ value: 3 })).written).toBe(true);
		expect(desk.read(CARD, place("weights"))).toEqual([[3]]);
		expect(desk.read(CARD, place("plan_numbers"))).toEqual([[planNumber]]);
	});

	test("a weight that somebody typed meanwhile is not written over", async () => {
		const answer = await weigh({ value: 4, believed: "" });
		expect(answer.written).toBe(false);
		expect(answer.why).toContain("the card says 3 there");
		expect(answer.state.loads[0]?.weights[0]).toBe(3);
		expect(desk.read(CARD, place("weights"))).toEqual([[3]]);
	});

	test("a weight for another plan is not written", async () => {
		const answer = await weigh({ row: 2, planNumber: 1 });
		expect(answer.why).toContain("The tones were changed meanwhile");
	});

	test.each([
		'=HYPERLINK("http://example.org","x")',
		"<img src=x onerror=alert(1)>",
		"+49 30 123",
		"שלום",
		"🪨 two buckets",
	])("the note %s stays that text", async (text) => {
		const { loads } = await state();
		const believed = loads[0]?.fresh.remarks ?? "";
		await weigh({ column: "remarks", value: text, believed });
		expect((await state()).loads[0]?.fresh.remarks).toBe(text);
	});

	test("a note that no cell would take is answered, not failed: what failed is sent again, and holds up the weights behind it", async () => {
		const { written, why } = await weigh({
			column: "lots",
			value: "x".repeat(10_001),
		});
		expect(written).toBe(false);
		expect(why).toBe("A note has at most 10000 letters");
	});

	test("air below freezing is noted, and a weight below nothing is none", async () => {
		await weigh({ column: "airTemperature", value: -5 });
		expect((await state()).loads[0]?.fresh.airTemperature).toBe(-5);
		await expect(weigh({ value: -5 })).rejects.toThrow(
			"A weight is 0 or more, got -5",
		);
	});
});

describe("a recorded pour", { timeout: 240_000 }, () => {
	test("is what the card says of each load, the shown one or not", async () => {
		await weigh({ load: 2, value: 2.5 });
		const { loads } = (await desk.call("recordPour", [1])) as Recorded;
		expect(loads).toEqual([1, 2]);
		for (const load of loads) {
			await desk.call("mixerChoose", [1, load]);
			const [card = []] = desk.read(CARD, "B60:R60");
			const row = logged(load) ?? [];
			expect(row.map(rounded)).toEqual(card.map(rounded));
		}
		await desk.call("mixerChoose", [1, 1]);
	});

	test("is not recorded twice", async () => {
		const again = (await desk.call("recordPour", [1])) as Recorded;
		expect(again).toEqual({ loads: [], left: [] });
	});

	const rounded = (value: CellValue): CellValue =>
		typeof value === "number" ? Number(value.toPrecision(9)) : value;
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

	test("by a new column is refused with its name and what to do", async () => {
		sheet(CARD)?.insertColumnAfter(1);
		await expect(state()).rejects.toThrow(
			/On the 1 Pour card tab .* Undo that, then try again/,
		);
		sheet(CARD)?.deleteColumn(2);
		expect((await state()).number).toBe(1);
	});

	test("by another name is the same tab", async () => {
		sheet("1 Tones")?.setName("Our tones");
		expect((await state()).tones.length).toBe(4);
		sheet("Our tones")?.setName("1 Tones");
	});

	test("and a job that is not there are told apart", async () => {
		await expect(desk.call("mixerState", [7])).rejects.toThrow(
			"There is no open job 7",
		);
	});
});

describe("copied, closed, removed", { timeout: 480_000 }, () => {
	test("a copy has the inputs, and nothing of the pour", async () => {
		const { number } = (await desk.call("copyJob", [1])) as JobMade;
		expect(number).toBe(2);
		expect(desk.read("2 Job", "A11:K14")).toEqual(
			desk.read("1 Job", "A11:K14"),
		);
		expect(desk.read("2 Pour card", place("weights"))).toEqual([[""]]);
		expect(desk.read("2 Pour card", place("plan_numbers"))).toEqual([[""]]);
		expect(desk.errors()).toEqual([]);
	});

	test("a closed job shows what it showed, is hidden, and has no formula", async () => {
		const shown = () => desk.display("1 Cost", "A1:H60");
		const before = shown();
		const row = rowOf("Jobs", 1);
		const other = desk.display("2 Cost", "A1:H60");
		await desk.call("closeJob", [1]);
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
