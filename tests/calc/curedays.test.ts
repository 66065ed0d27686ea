import fc from "fast-check";
import { expect, test } from "vitest";
import { dayAfter, daysBetween, workdayFrom } from "../../src/calc/calendar";
import {
	coatingDays,
	daysFromPour,
	daysUntilDue,
	type Waiting,
} from "../../src/calc/curedays";

const WAITING: Waiting = {
	demoldHours: 20,
	fillDays: 3,
	polishDays: 4,
	sealDays: 10,
	coats: 2,
	recoatHours: 4,
	deliverDays: 4,
};

// By the calendar of March 2027, whose 1st is a Monday.
test("from a Friday, over weekends and two closed days", () => {
	const week = { lastWeekday: 5, closedDays: ["2027-03-08", "2027-03-19"] };
	expect(daysFromPour("2027-03-05", WAITING, week)).toEqual({
		pour: "2027-03-05",
		demold: "2027-03-09", // 20 h: Saturday; Monday 8 is closed
		fill: "2027-03-09", // 5 + 3 is Monday 8
		polish: "2027-03-10", // the day after filling
		seal: "2027-03-15", // 5 + 10
		lastCoat: "2027-03-15", // two coats 4 h apart
		deliver: "2027-03-22", // 15 + 4 is Friday 19, closed
	});
});

// April 2027 begins on a Thursday.
test("back from a Saturday, Friday 2 closed", () => {
	const week = { lastWeekday: 5, closedDays: ["2027-04-02"] };
	expect(daysUntilDue("2027-04-17", WAITING, week)).toEqual({
		pour: "2027-04-01", // the least of 8 − 1, 8 − 3, 9 − 4, 12 − 10 is Friday 2
		demold: "2027-04-08",
		fill: "2027-04-08",
		polish: "2027-04-09", // 12 − 1 is Sunday
		seal: "2027-04-12",
		lastCoat: "2027-04-12", // 16 − 4
		deliver: "2027-04-16",
	});
});

test.each([
	[1, 100, 0],
	[2, 8, 0],
	[3, 4, 0],
	[3, 5, 1], // 10 h
	[2, 25, 2],
])("%i coats %i hours apart take %i days", (coats, recoatHours, days) => {
	expect(coatingDays({ ...WAITING, coats, recoatHours })).toBe(days);
});

test("the latest pour is in time, and one on the next workday is not", () => {
	const few = (max: number) => fc.integer({ min: 0, max });
	fc.assert(
		fc.property(
			few(3000),
			fc.constantFrom(5, 6, 7),
			fc.uniqueArray(few(60), { maxLength: 8 }),
			fc.record({
				demoldHours: few(60),
				fillDays: few(6),
				polishDays: few(8),
				sealDays: few(14),
				coats: fc.integer({ min: 1, max: 3 }),
				recoatHours: few(30),
				deliverDays: few(7),
			}),
			(days, lastWeekday, closed, waiting) => {
				const due = dayAfter("2027-01-01", days);
				const week = {
					lastWeekday,
					closedDays: closed.map((before) => dayAfter(due, -before)),
				};
				const { pour } = daysUntilDue(due, waiting, week);
				const late = (from: string) =>
					daysBetween(due, daysFromPour(from, waiting, week).deliver);
				expect(late(pour)).toBeLessThanOrEqual(0);
				expect(late(workdayFrom(dayAfter(pour, 1), week))).toBeGreaterThan(0);
			},
		),
	);
});
