/** The calendar, strength, drying and finish of the demo job, by hand. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import {
	BINDER,
	BLACK,
	cellOf,
	FINISH_AREA,
	numberAt,
	openDemo,
	PASTE_KG,
	PASTE_L,
	SEALER_L,
	typed,
	UMBER,
	valueAt,
} from "./worked";

let desk: Desk;
beforeAll(async () => {
	desk = await openDemo("metric");
}, 120_000);
afterAll(() => desk.dispose());

const TAB = "1 Cure";
const POUR = cellOf("Job.pour_date");
const DUE = cellOf("Job.due_date");
const [, CLOSED] = cellOf("Studio.closed_days");
const [, WEEKEND] = cellOf("Studio.weekend");
const below = (cell: string, rows: number) =>
	cell.replace(/\d+/, (row) => String(Number(row) + rows));
const days = () => desk.display(TAB, "B10:B16").flat();
const latest = () => desk.display(TAB, "D10:D16").flat();
const inTime = () => String(valueAt(desk, TAB, "B6"));

// The starter's days: demold after 20 h, fill 3, polish 4, seal 10 days after the pour, deliver 4 days after sealing.
describe("the calendar", { timeout: 60_000 }, () => {
	test("forwards from a Friday, over weekends and two closed days", async () => {
		await typed(
			desk,
			[...POUR, "2027-03-05"],
			["Studio", CLOSED, "2027-03-08"],
			["Studio", below(CLOSED, 1), "2027-03-19"],
		);
		expect(days()).toEqual([
			"2027-03-05", // Friday
			"2027-03-09", // 20 h: Saturday; Monday is closed
			"2027-03-09", // 5 + 3: Monday 8, closed
			"2027-03-10", // the day after filling; 5 + 4 is Tuesday 9
			"2027-03-15", // 5 + 10, a Monday
			"2027-03-15", // two coats 4 h apart in one day
			"2027-03-22", // 15 + 4: Friday 19, closed
		]);
		expect(desk.display(TAB, "C10:C16").flat()).toEqual([
			"Fri",
			"Tue",
			"Tue",
			"Wed",
			"Mon",
			"Mon",
			"Mon",
		]);
		expect(inTime()).toBe("fine");
		expect(desk.display(...rowOf("Cure.dates")).flat()).toEqual([
			"2027-03-05",
			"2027-03-09",
			"2027-03-09",
			"2027-03-10",
			"2027-03-15",
			"2027-03-22",
		]);
	});

	test("says by how many days it is late", async () => {
		await typed(desk, [...DUE, "2027-03-18"]); // 22 − 18
		expect(inTime()).toBe("Look: delivery would be 4 days after the due date");
		await typed(desk, [...DUE, "2027-03-22"]);
		expect(inTime()).toBe("fine");
	});

	test("backwards from a Saturday in April, the second closed", async () => {
		await typed(
			desk,
			[...DUE, "2027-04-17"],
			["Studio", CLOSED, "2027-04-02"],
			["Studio", below(CLOSED, 1), ""],
			[TAB, "B3", "due date"],
		);
		expect(latest()).toEqual([
			"2027-04-01", // min(8 − 1, 8 − 3, 9 − 4, 12 − 10) = Friday 2, closed
			"2027-04-08", // on the day of filling
			"2027-04-08", // the day before polishing
			"2027-04-09", // 12 − 1: Sunday, so Friday
			"2027-04-12",
			"2027-04-12", // 16 − 4, a Monday
			"2027-04-16", // Friday before the due Saturday
		]);
		expect(days()).toEqual([
			"2027-04-01",
			"2027-04-05", // Friday 2 is closed
			"2027-04-05", // 1 + 3: Sunday
			"2027-04-06", // the day after
			"2027-04-12", // 1 + 10: Sunday
			"2027-04-12",
			"2027-04-16",
		]);
		expect(inTime()).toBe("fine");
	});

	test("backwards past the Job's pour date is said", async () => {
		await typed(desk, [...POUR, "2027-04-06"]);
		expect(inTime()).toBe(
			"Look: to be in time the pour is 5 days before the Job's pour date",
		);
		await typed(desk, [TAB, "B3", "pour date"]);
	});

	test("works on Saturdays where only Sunday is off, and every day where none is", async () => {
		await typed(
			desk,
			[...DUE, ""],
			[...POUR, "2027-03-05"],
			["Studio", CLOSED, ""],
			["Studio", WEEKEND, "Sunday"],
		);
		expect(days().slice(0, 4)).toEqual([
			"2027-03-05",
			"2027-03-06",
			"2027-03-08",
			"2027-03-09",
		]);
		await typed(desk, [...POUR, "2027-03-06"], ["Studio", WEEKEND, "none"]);
		expect(days().slice(0, 2)).toEqual(["2027-03-06", "2027-03-07"]);
		await typed(desk, ["Studio", WEEKEND, "Saturday and Sunday"]);
		expect(inTime()).toMatch(/^Look: the pour date is a day off/);
		expect(days()[0]).toBe("2027-03-08");
	});

	test("wants a date, and one that is a date", async () => {
		await typed(desk, [...POUR, ""]);
		expect(inTime()).toBe("Look: type the pour date on the Job tab");
		expect(days()).toEqual(Array(7).fill(""));
		await typed(desk, [...POUR, "early March"]);
		expect(inTime()).toBe("Look: a date of the Job is not a date");
		await typed(desk, [...POUR, "2027-03-09"]);
		expect(inTime()).toBe("fine");
	});

	test("coats that need a day each make the last one later", async () => {
		const [, recoat] = cellOf("Studio.recoat_hours");
		await typed(desk, ["Studio", recoat, "20"]);
		// Sealed Friday 19; 20 h later is Saturday, so Monday 22; and 4 days.
		expect(days().slice(4)).toEqual(["2027-03-19", "2027-03-22", "2027-03-26"]);
		await typed(desk, ["Studio", recoat, "4"]);
	});
});

/** Tab and cells of a block of one row of six. */
function rowOf(address: string): [tab: string, range: string] {
	const [tab, cell] = cellOf(address);
	const [, letter = "", row] = /^([A-Z])(\d+)$/.exec(cell) ?? [];
	const last = String.fromCharCode(letter.charCodeAt(0) + 5);
	return [tab, `${cell}:${last}${row}`];
}

describe("strength and drying", { timeout: 60_000 }, () => {
	test("from a day at 30 °C and two at 15 °C", async () => {
		await typed(
			desk,
			[TAB, "A30", "24"],
			[TAB, "B30", "30"],
			[TAB, "A31", "48"],
			[TAB, "B31", "15"],
		);
		// ASTM C1074: Σ hours × exp(5000 × (1/293.15 − 1/T)).
		const hours =
			24 * Math.exp(5000 * (1 / 293.15 - 1 / 303.15)) +
			48 * Math.exp(5000 * (1 / 293.15 - 1 / 288.15));
		expect(numberAt(desk, TAB, "B25")).toBe(72);
		expect(numberAt(desk, TAB, "B26")).toBeCloseTo(hours, 9);
		// EN 1992-1-1 eq. 3.2, class N: exp(0.25 × (1 − √(28 / days))).
		expect(numberAt(desk, TAB, "B24")).toBeCloseTo(
			Math.exp(0.25 * (1 - Math.sqrt(28 / (hours / 24)))),
			9,
		);
		// exp(0.25 × (1 − √(28 / t))) = 0.7 → t = 28 / (1 − ln 0.7 / 0.25)².
		expect(numberAt(desk, TAB, "B23")).toBeCloseTo(
			28 / (1 - Math.log(0.7) / 0.25) ** 2,
			9,
		);
		expect(valueAt(desk, TAB, "B27")).toBe("fine");
	});

	test("a cold night, and a row that is not whole", async () => {
		await typed(desk, [TAB, "A32", "12"], [TAB, "B32", "4.5"]);
		expect(valueAt(desk, TAB, "B27")).toMatch(/^Look: colder than 5 °C/);
		await typed(desk, [TAB, "B32", ""]);
		expect(valueAt(desk, TAB, "B27")).toMatch(/^Look: a row of the log/);
		await typed(desk, [TAB, "A32", ""]);
		expect(valueAt(desk, TAB, "B27")).toBe("fine");
	});

	test("the example of the ACI 305R nomograph: 1.15 kg/m²·h", async () => {
		expect(valueAt(desk, ...cellOf("Cure.drying"))).toBe("fine");
		// Air 27 °C, 50%, concrete 31 °C, wind 19 km/h; printed as 1.15, ±40% from 0.69 to 1.61.
		await typed(
			desk,
			[TAB, "B45", "27"],
			[TAB, "B46", "0.5"],
			[TAB, "B47", "31"],
			[TAB, "B48", "19"],
			[TAB, "B49", "yes"],
		);
		expect(numberAt(desk, TAB, "B50")).toBeCloseTo(1.15, 2);
		expect(numberAt(desk, TAB, "B51")).toBeCloseTo(0.69, 2);
		expect(numberAt(desk, TAB, "C51")).toBeCloseTo(1.61, 2);
		expect(valueAt(desk, ...cellOf("Cure.drying"))).toMatch(/^Look: too fast/);
		// Without wind 4 of 23 parts are left: 0.2, and 0.28 with 40%.
		await typed(desk, [TAB, "B48", "0"]);
		expect(numberAt(desk, TAB, "B50")).toBeCloseTo((1.15 * 4) / 23, 2);
		expect(valueAt(desk, ...cellOf("Cure.drying"))).toBe("fine");
		// 12 of 23: 0.6, under the 1.0 of a mix that bleeds, over the 0.5 of one that does not.
		await typed(desk, [TAB, "B48", "8"]);
		expect(valueAt(desk, ...cellOf("Cure.drying"))).toBe("fine");
		await typed(desk, [TAB, "B49", "no"]);
		expect(valueAt(desk, ...cellOf("Cure.drying"))).toMatch(/^Look:/);
	});
});

describe("finish", { timeout: 60_000 }, () => {
	test("sealer and paste", () => {
		expect(numberAt(desk, TAB, "B59")).toBeCloseTo(FINISH_AREA, 9);
		expect(numberAt(desk, ...cellOf("Cure.sealer"))).toBeCloseTo(SEALER_L, 9);
		expect(numberAt(desk, TAB, "B65")).toBeCloseTo(PASTE_L, 9);
		expect(numberAt(desk, ...cellOf("Cure.paste"))).toBeCloseTo(PASTE_KG, 9);
	});

	test("pigment of the paste, for the tones' average color", () => {
		expect(desk.read(TAB, "B67:E67")[0]).toEqual(["Umber", "Black", "", ""]);
		expect(numberAt(desk, TAB, "B70")).toBeCloseTo(
			PASTE_KG * BINDER * UMBER * 1000,
			6,
		);
		expect(numberAt(desk, TAB, "C70")).toBeCloseTo(
			PASTE_KG * BINDER * BLACK * 1000,
			6,
		);
	});

	test("sealing waits for a reading", async () => {
		expect(valueAt(desk, TAB, "B58")).toMatch(/^not known/);
		await typed(desk, [TAB, "B56", "4"], [TAB, "B57", "5"]);
		expect(valueAt(desk, TAB, "B58")).toMatch(/^Look: too damp/);
		await typed(desk, [TAB, "B57", "4"]);
		expect(valueAt(desk, TAB, "B58")).toBe("by this reading, yes");
	});
});
