/** The calendar, strength, drying and finish of the demo job, by hand. */
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { area, moved } from "../../templates/blocks";
import { beside, cellOf, cellsOf, typed, under, valueAt } from "./found";
import {
	BINDER,
	BLACK,
	FINISH_AREA,
	openDemo,
	PASTE_KG,
	PASTE_L,
	SEALER_L,
	UMBER,
} from "./worked";

let desk: Desk;
beforeAll(async () => {
	desk = await openDemo("metric");
}, 120_000);
afterAll(() => desk.dispose());

const TAB = "1 Cure";
const POUR = cellOf("Job.pourDate");
const DUE = cellOf("Job.dueDate");
const FROM = cellOf("Cure.startsFrom");
const CLOSED = cellOf("Studio.closed_days");
const CLOSED_TOO = cellOf("Studio.closed_days", 1);
const WEEKEND = cellOf("Studio.weekend");
/** Texts of the calendar's seven days, under a heading and so many columns to its right. */
const calendar = (heading: string, right = 0) => {
	const [tab, cell] = under(desk, TAB, heading, 0);
	return desk.display(tab, area(moved(cell, 0, right), 7, 1)).flat();
};
const days = () => calendar("Day");
const latest = () => calendar("At the latest");
const inTime = () => String(valueAt(desk, ...cellOf("Cure.date_met")));
const value = (label: string, from?: string) =>
	valueAt(desk, ...beside(desk, TAB, label, from));
const number = (label: string, from?: string) => Number(value(label, from));
const drying = () => valueAt(desk, ...cellOf("Cure.drying"));
/** A row of the log: hours, then the mean temperature. */
const logged = (row: number, hours: string, mean: string) =>
	[
		[...cellOf("Cure.cureLog", row, 0), hours],
		[...cellOf("Cure.cureLog", row, 1), mean],
	] as const;

// The starter's days: demold after 20 h, fill 3, polish 4, seal 10 days after the pour, deliver 4 days after sealing.
describe("the calendar", { timeout: 60_000 }, () => {
	test("forwards from a Friday, over weekends and two closed days", async () => {
		await typed(
			desk,
			[...POUR, "2027-03-05"],
			[...CLOSED, "2027-03-08"],
			[...CLOSED_TOO, "2027-03-19"],
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
		expect(calendar("Day", 1)).toEqual([
			"Fri",
			"Tue",
			"Tue",
			"Wed",
			"Mon",
			"Mon",
			"Mon",
		]);
		expect(inTime()).toBe("fine");
		expect(desk.display(...cellsOf("Cure.dates", 1, 6)).flat()).toEqual([
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
			[...CLOSED, "2027-04-02"],
			[...CLOSED_TOO, ""],
			[...FROM, "due date"],
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
		await typed(desk, [...FROM, "pour date"]);
	});

	test("works on Saturdays where only Sunday is off, and every day where none is", async () => {
		await typed(
			desk,
			[...DUE, ""],
			[...POUR, "2027-03-05"],
			[...CLOSED, ""],
			[...WEEKEND, "Sunday"],
		);
		expect(days().slice(0, 4)).toEqual([
			"2027-03-05",
			"2027-03-06",
			"2027-03-08",
			"2027-03-09",
		]);
		await typed(desk, [...POUR, "2027-03-06"], [...WEEKEND, "none"]);
		expect(days().slice(0, 2)).toEqual(["2027-03-06", "2027-03-07"]);
		await typed(desk, [...WEEKEND, "Saturday and Sunday"]);
		expect(inTime()).toMatch(/^Look: the pour date is a day off/);
		expect(days()[0]).toBe("2027-03-08");
	});

	test("wants a date, and one that is a date", async () => {
		await typed(desk, [...POUR, ""]);
		expect(inTime()).toBe("not known yet: type the pour date on the Job tab");
		// The calendar says once why it has no day.
		expect(days()).toEqual([
			"not known yet: type the pour date on the Job tab",
			...Array(6).fill(""),
		]);
		await typed(desk, [...POUR, "early March"]);
		expect(inTime()).toMatch(/^Look: pour date must be a day .*"early March"/);
		await typed(desk, [...POUR, "2027-03-09"]);
		expect(inTime()).toBe("not known yet: type the due date on the Job tab");
		expect(days()[0]).toBe("2027-03-09");
		await typed(desk, [...DUE, "2027-03-26"]);
		expect(inTime()).toBe("fine");
	});

	test("coats that need a day each make the last one later", async () => {
		const recoat = cellOf("Studio.recoat_hours");
		await typed(desk, [...recoat, "20"]);
		// Sealed Friday 19; 20 h later is Saturday, so Monday 22; and 4 days.
		expect(days().slice(4)).toEqual(["2027-03-19", "2027-03-22", "2027-03-26"]);
		await typed(desk, [...recoat, "4"]);
	});
});

describe("strength and drying", { timeout: 60_000 }, () => {
	test("from a day at 30 °C and two at 15 °C", async () => {
		await typed(desk, ...logged(0, "24", "30"), ...logged(1, "48", "15"));
		// ASTM C1074: Σ hours × exp(5000 × (1/293.15 − 1/T)).
		const hours =
			24 * Math.exp(5000 * (1 / 293.15 - 1 / 303.15)) +
			48 * Math.exp(5000 * (1 / 293.15 - 1 / 288.15));
		expect(number("Hours since the pour, by the log")).toBe(72);
		expect(number("Hours at 20 °C (68 °F) worth the same")).toBeCloseTo(
			hours,
			9,
		);
		// EN 1992-1-1 eq. 3.2, class N: exp(0.25 × (1 − √(28 / days))).
		expect(number("By the log, share of 28 days")).toBeCloseTo(
			Math.exp(0.25 * (1 - Math.sqrt(28 / (hours / 24)))),
			9,
		);
		// exp(0.25 × (1 − √(28 / t))) = 0.7 → t = 28 / (1 − ln 0.7 / 0.25)².
		expect(number("Days at 20 °C (68 °F) to that strength")).toBeCloseTo(
			28 / (1 - Math.log(0.7) / 0.25) ** 2,
			9,
		);
		expect(value("Warm and old enough")).toBe("fine");
	});

	test("a cold night, and a row that is not whole", async () => {
		await typed(desk, ...logged(2, "12", "4.5"));
		expect(value("Warm and old enough")).toMatch(/^Look: colder than 5 °C/);
		await typed(desk, ...logged(2, "12", ""));
		expect(value("Warm and old enough")).toMatch(
			/^Look: row 3 of the log is not whole/,
		);
		await typed(desk, ...logged(2, "", ""));
		expect(value("Warm and old enough")).toBe("fine");
	});

	test("the example of the ACI 305R nomograph: 1.15 kg/m²·h", async () => {
		// Fine needs the weather of the day.
		expect(drying()).toMatch(/^not known yet: type today's air/);
		// Air 27 °C, 50%, concrete 31 °C, wind 19 km/h; printed as 1.15, ±40% from 0.69 to 1.61.
		await typed(
			desk,
			[...cellOf("Cure.dryingAir"), "27"],
			[...cellOf("Cure.dryingHumidity"), "0.5"],
			[...cellOf("Cure.dryingMix"), "31"],
			[...cellOf("Cure.dryingWind"), "19"],
			[...cellOf("Cure.bleeds"), "yes"],
		);
		expect(number("Evaporation")).toBeCloseTo(1.15, 2);
		expect(number("Could be as little as")).toBeCloseTo(0.69, 2);
		expect(number("Could be as much as")).toBeCloseTo(1.61, 2);
		expect(drying()).toMatch(/^Look: too fast/);
		// Without wind 4 of 23 parts are left: 0.2, and 0.28 with 40%.
		await typed(desk, [...cellOf("Cure.dryingWind"), "0"]);
		expect(number("Evaporation")).toBeCloseTo((1.15 * 4) / 23, 2);
		expect(drying()).toBe("fine");
		// 12 of 23: 0.6, under the 1.0 of a mix that bleeds, over the 0.5 of one that does not.
		await typed(desk, [...cellOf("Cure.dryingWind"), "8"]);
		expect(drying()).toBe("fine");
		await typed(desk, [...cellOf("Cure.bleeds"), "no"]);
		expect(drying()).toMatch(/^Look:/);
	});
});

const IN_PASTE = "Pigment in it, for the color of all tones";

describe("finish", { timeout: 60_000 }, () => {
	test("sealer and paste", () => {
		expect(number("To seal")).toBeCloseTo(FINISH_AREA, 9);
		expect(number("Sealer for all coats")).toBeCloseTo(SEALER_L, 9);
		expect(number("Paste, L")).toBeCloseTo(PASTE_L, 9);
		expect(number("Paste, kg")).toBeCloseTo(PASTE_KG, 9);
	});

	test("pigment of the paste, for the tones' average color", () => {
		// Below each pigment's name: its mean dose, then dry, then as bought (powders: the same).
		const amounts = (pigment: string) => {
			const [tab, cell] = under(desk, TAB, IN_PASTE, pigment);
			return desk
				.read(tab, area(moved(cell, 1, 1), 3, 1))
				.flat()
				.map(Number);
		};
		for (const [pigment, dose] of [
			["Umber", UMBER],
			["Black", BLACK],
		] as const) {
			const [mean, dry, bought] = amounts(pigment);
			const grams = PASTE_KG * BINDER * dose * 1000;
			expect(mean).toBeCloseTo(dose, 12);
			expect(dry).toBeCloseTo(grams, 6);
			expect(bought).toBeCloseTo(grams, 6);
		}
	});

	test("sealing waits for a reading", async () => {
		expect(value("Dry enough")).toMatch(/^not known/);
		await typed(
			desk,
			[...cellOf("Cure.moistureLimit"), "4"],
			[...cellOf("Cure.moistureReading"), "5"],
		);
		expect(value("Dry enough")).toMatch(/^Look: too damp/);
		await typed(desk, [...cellOf("Cure.moistureReading"), "4"]);
		expect(value("Dry enough")).toBe("by this reading, yes");
	});
});
