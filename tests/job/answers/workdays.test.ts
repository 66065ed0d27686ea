/** Days with work over all jobs, by hand. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { MOST_DAYS, workDays } from "../../../src/job/answers/workdays";
import type { JobsRow } from "../../../src/job/fields/jobline";

const KITCHEN: JobsRow = {
	job: 14,
	client: "Ada",
	title: "Kitchen",
	stage: "ordered",
	pour: "2026-05-11",
	due: "2026-06-01",
	hours: 40,
	demold: "2026-05-12",
	fill: "2026-05-14",
	polish: "2026-05-15",
	seal: "2026-05-21",
	deliver: "2026-05-25",
};

const on = (rows: readonly JobsRow[], day: string) =>
	workDays(rows).find((one) => one.day === day);

describe("days of work", () => {
	test("go from a week before the pour to the delivery, each with as many hours, and to the day it is due", () => {
		const days = workDays([KITCHEN]);
		// 4 May to 25 May are 22 days; and 1 June.
		expect(days).toHaveLength(23);
		expect(days[0]).toMatchObject({ day: "2026-05-04", pours: 0, work: [] });
		for (const { hours } of days.slice(0, 22))
			expect(hours).toBeCloseTo(40 / 22, 12);
		expect(days[22]).toEqual({
			day: "2026-06-01",
			pours: 0,
			work: [],
			hours: 0,
			ifOrdered: 0,
			due: ["Kitchen"],
		});
	});

	test.each(["sampling", "priced"])(
		"keep the hours of a job that is only %s apart, and say so of its work",
		(stage) => {
			const asked: JobsRow = { ...KITCHEN, title: "Bar", stage, hours: 88 };
			const day = on([KITCHEN, asked], "2026-05-11");
			expect(day?.hours).toBeCloseTo(40 / 22, 12);
			expect(day?.ifOrdered).toBeCloseTo(88 / 22, 12);
			expect(day?.work).toEqual(["pour Kitchen", "pour Bar (not ordered)"]);
		},
	);

	test("name what is done with which job, in the order of the work", () => {
		const other: JobsRow = {
			job: 15,
			title: "Basin",
			stage: "ordered",
			pour: "2026-05-12",
			fill: "2026-05-15",
		};
		const rows = [KITCHEN, other];
		expect(on(rows, "2026-05-12")?.work).toEqual([
			"pour Basin",
			"demold Kitchen",
		]);
		expect(on(rows, "2026-05-12")?.pours).toBe(1);
		expect(on(rows, "2026-05-15")?.work).toEqual([
			"fill Basin",
			"polish Kitchen",
		]);
	});

	test("of a job without a title name its client, and without both its number", () => {
		const pour = "2026-05-11";
		const said = "not known yet: title";
		expect(on([{ pour, title: said, client: "Ada" }], pour)?.work).toEqual([
			"pour Ada",
		]);
		expect(on([{ pour, job: 9, title: "Look: it" }], pour)?.work).toEqual([
			"pour job 9",
		]);
	});

	test("leave out what is delivered, what is no day, and hours without a pour", () => {
		expect(workDays([{ ...KITCHEN, stage: "delivered" }])).toEqual([]);
		expect(workDays([{ pour: "not known yet: pour date", hours: 12 }])).toEqual(
			[],
		);
		expect(workDays([])).toEqual([]);
	});

	test("add up to the hours of the jobs", () => {
		const day = fc
			.integer({ min: 0, max: 100 })
			.map((n) =>
				new Date(Date.UTC(2026, 0, 1 + n)).toISOString().slice(0, 10),
			);
		const row = fc.record({
			pour: day,
			deliver: day,
			hours: fc.integer({ min: 0, max: 300 }),
		});
		fc.assert(
			fc.property(fc.array(row, { maxLength: 8 }), (rows) => {
				const booked = workDays(rows).reduce(
					(all, { hours }) => all + hours,
					0,
				);
				const hours = rows.reduce((all, one) => all + one.hours, 0);
				expect(booked).toBeCloseTo(hours, 8);
			}),
		);
	});

	test("more than there is room for are refused", () => {
		const pour = "2026-01-01";
		expect(() =>
			workDays([{ pour, deliver: "2062-02-01", hours: 30 }]),
		).toThrow(/look for a wrong year/);
		// From 25 December 2025 on, 400 days end on 28 January 2027.
		const most = { pour, deliver: "2027-01-28", hours: 30 };
		expect(workDays([most])).toHaveLength(MOST_DAYS);
		expect(() => workDays([{ ...most, deliver: "2027-01-29" }])).toThrow();
	});
});
