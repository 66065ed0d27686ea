import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
	dayAfter,
	daysBetween,
	isWorkday,
	weekdayOf,
	workdayFrom,
	workdayUntil,
} from "../../src/calc/calendar";
import { InputError } from "../../src/calc/errors";

const someDay = fc
	.integer({ min: -20_000, max: 40_000 })
	.map((days) => dayAfter("2000-01-01", days));

// Weekdays as history has them: the landing on the Moon, the first day of 2000, a leap day, the first test of Trinity.
test.each([
	["1969-07-20", 7],
	["2000-01-01", 6],
	["2024-02-29", 4],
	["1945-07-16", 1],
])("%s is day %i of its week", (day, weekday) => {
	expect(weekdayOf(day)).toBe(weekday);
});

// Gregorian calendar: 2000 and 2024 are leap years, 1900 and 2100 are not.
test.each([
	["2024-02-28", 1, "2024-02-29"],
	["2000-02-28", 2, "2000-03-01"],
	["2100-02-28", 1, "2100-03-01"],
	["1900-03-01", -1, "1900-02-28"],
	["2026-12-31", 1, "2027-01-01"],
	["2027-01-10", 30, "2027-02-09"],
])("%s and %i days is %s", (day, days, other) => {
	expect(dayAfter(day, days)).toBe(other);
	expect(daysBetween(day, other)).toBe(days);
});

test("a calendar ends where years have more than four digits", () => {
	expect(() => dayAfter("9999-12-31", 1)).toThrow(InputError);
	expect(() => dayAfter("2027-03-09", 1e9)).toThrow(InputError);
	expect(() => dayAfter("2027-03-09", -1e9)).toThrow(InputError);
});

describe("workdays", () => {
	test("are the nearest, and none lies between", () => {
		fc.assert(
			fc.property(
				someDay,
				fc.constantFrom(5, 6, 7),
				fc.uniqueArray(fc.integer({ min: -9, max: 9 })),
				(day, lastWeekday, closed) => {
					const closedDays = closed.map((days) => dayAfter(day, days));
					const week = { lastWeekday, closedDays };
					const next = workdayFrom(day, week);
					const last = workdayUntil(day, week);
					expect(isWorkday(next, week)).toBe(true);
					expect(isWorkday(last, week)).toBe(true);
					for (let at = day; at !== next; at = dayAfter(at, 1))
						expect(isWorkday(at, week)).toBe(false);
					for (let at = day; at !== last; at = dayAfter(at, -1))
						expect(isWorkday(at, week)).toBe(false);
				},
			),
		);
	});

	test("there is none within 60 closed days", () => {
		const closedDays = Array.from({ length: 60 }, (_, days) =>
			dayAfter("2027-03-01", days),
		);
		const week = { lastWeekday: 7, closedDays };
		expect(() => workdayFrom("2027-03-01", week)).toThrow(InputError);
		expect(() => workdayUntil("2027-04-29", week)).toThrow(InputError);
		expect(workdayFrom("2027-03-02", week)).toBe("2027-04-30");
	});
});
