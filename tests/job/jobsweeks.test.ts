/** The weeks of the Jobs tab as the desk calculates them, from days around the day of the run. */
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { openHeadlessDesk } from "../../src/desk/headless";
import { dayOfInstant, serialDay } from "../../src/job/reading/days";
import { jobTabs, studioTabs } from "../../templates/index";

const TITLE = "Breakfast room and two baths";

let desk: Desk;
beforeAll(async () => {
	desk = await openHeadlessDesk("dist", { enabled: true });
	await desk.call("createDemoJob", ["metric"]);
	// Work on every day, so that no day of the run moves it.
	await typed(["Studio", "weekend", "none"]);
}, 120_000);
afterAll(() => desk.dispose());

function placeOf(tab: string, key: string): string {
	const name = tab.replace(/^\d+ /, "");
	const block = [...jobTabs, ...studioTabs]
		.find((one) => one.name === name)
		?.blocks.find(({ slot }) => slot === key);
	if (!block) throw new Error(`There is no ${tab}.${key}`);
	return block.at;
}

async function typed(
	...entries: readonly (readonly [tab: string, key: string, text: string])[]
) {
	for (const [tab, key, text] of entries)
		desk.type(tab, placeOf(tab, key), text);
	await desk.settle();
}

const cells = (range: string) => desk.read("Jobs", range);
const cell = (a1: string) => cells(a1)[0]?.[0];
const dayOf = (value: unknown): string =>
	dayOfInstant(new Date(value as string | Date));
const after = (day: string, days: number): string =>
	new Date(Date.parse(`${day}T00:00:00Z`) + days * 86_400_000)
		.toISOString()
		.slice(0, 10);

test("a job's work, hours and money stand in their weeks", async () => {
	const monday = dayOf(cell("T5"));
	expect(new Date(`${monday}T00:00:00Z`).getUTCDay()).toBe(1);
	expect(dayOf(cell("T12"))).toBe(after(monday, 49));

	const pour = after(monday, 9);
	await typed(
		["1 Job", "pourDate", pour],
		["1 Job", "dueDate", after(monday, -1)],
		["1 Job", "stage", "ordered"],
	);
	const [row = []] = cells("A5:R5");
	const hours = Number(row[11]);
	const delivered = serialDay(dayOf(row[16]));
	const first = serialDay(pour) - 7;
	const daily = hours / (delivered - first + 1);
	// The first of its days is the Wednesday of this week: five days of it, then whole weeks.
	expect(Number(cell("W5"))).toBeCloseTo(daily * 5, 9);
	expect(Number(cell("W6"))).toBeCloseTo(daily * 7, 9);
	const booked = cells("W5:W12").reduce((all, [each]) => all + Number(each), 0);
	expect(booked).toBeCloseTo(hours, 9);
	expect(cells("U5:U12").flat()).toEqual([0, 1, 0, 0, 0, 0, 0, 0]);
	expect(cell("V5")).toBe("");
	expect(cell("V6")).toBe(
		["pour", "demold", "fill"].map((work) => `${work} ${TITLE}`).join(", ") +
			`, polish ${TITLE}`,
	);
	expect(cells("W15:W17").flat()).toEqual([1, row[17], 0]);
	expect(Number(row[17])).toBeGreaterThan(0);
	expect(cell("A3")).toMatch(
		new RegExp(`^Look: late: ${TITLE} · This week: 0`),
	);
}, 60_000);

test("today's work is named", async () => {
	desk.type("Jobs", "T30", "=TODAY()");
	await desk.settle();
	const today = dayOf(cell("T30"));
	await typed(["1 Job", "pourDate", today], ["1 Job", "dueDate", ""]);
	expect(cell("A2")).toBe(`Today: pour ${TITLE}`);
	expect(cell("A3")).toMatch(/^This week: 1 to pour, /);
}, 60_000);

test("a delivered job is out of the weeks", async () => {
	await typed(["1 Job", "stage", "delivered"]);
	expect(cell("A2")).toBe("Today: no work");
	expect(cells("W5:W12").flat().map(Number)).toEqual(Array(8).fill(0));
	expect(cell("W15")).toBe(0);
}, 60_000);

test("what is typed where the days stand shows as an error, and no week as free", async () => {
	await typed(["1 Job", "stage", "ordered"]);
	desk.type("Jobs", "AC8", "my note");
	await desk.settle();
	expect(cell("A2")).toBe("Look: see Day by day");
	for (const shown of cells("U5:W5").flat()) expect(shown).toBe("#REF!");
	desk.type("Jobs", "AC8", "");
	await desk.settle();
	expect(cell("A2")).toBe(`Today: pour ${TITLE}`);
}, 60_000);
