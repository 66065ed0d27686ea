/** What a cell gets of maturity, strength and working time; worked by hand, in both systems of units. */
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { callFunction } from "../../src/functions/call";
import {
	AGE_FOR_STRENGTH,
	EQUIVALENT_AGE,
	STRENGTH_AT_AGE,
	TEMPERATURE_TIME_FACTOR,
	WORKING_TIME,
} from "../../src/functions/cure";
import type { SheetFunction } from "../../src/functions/declare";

describe("maturity", () => {
	test("in °F: 10 h at 68 °F above 32 °F are 360 degree-hours, 200 in °C", () => {
		expect(
			callFunction(TEMPERATURE_TIME_FACTOR, [10, 68, "", "us"]),
		).toBeCloseTo(360, 9);
		expect(callFunction(TEMPERATURE_TIME_FACTOR, [10, 20])).toBe(200);
	});

	test("a log with rows still to come", () => {
		const log = [
			[[10], [5], [""]],
			[[20], [10], [""]],
		];
		expect(callFunction(TEMPERATURE_TIME_FACTOR, log)).toBe(250);
	});

	test("68 °F is the reference, so an hour there is an hour", () => {
		const hour = callFunction(EQUIVALENT_AGE, [1, 68, "", "", "us"]);
		expect(hour).toBeCloseTo(1, 12);
	});
});

test("STRENGTH_AT_AGE and AGE_FOR_STRENGTH say that demolding follows a test", () => {
	for (const fn of [STRENGTH_AT_AGE, AGE_FOR_STRENGTH])
		expect(fn.limits).toMatch(/Below 3 days the code asks for tests/);
});

test("WORKING_TIME is the same in °F", () => {
	const celsius = callFunction(WORKING_TIME, [45, 20, 30]);
	expect(callFunction(WORKING_TIME, [45, 68, 86, "us"])).toBeCloseTo(
		celsius as number,
		9,
	);
});

test.each<[SheetFunction, unknown[], string]>([
	[
		TEMPERATURE_TIME_FACTOR,
		[
			[[10], [-5]],
			[[20], [20]],
		],
		"row 2: hours must be 0 or more, got -5",
	],
	[
		TEMPERATURE_TIME_FACTOR,
		[
			[[""], [""]],
			[[""], [""]],
		],
		"hours is blank",
	],
	[EQUIVALENT_AGE, [10, 20, "", 0], "q must be above 0, got 0"],
	[EQUIVALENT_AGE, [10, -300], "temps must be above -273.15 °C, got -300"],
	[
		STRENGTH_AT_AGE,
		[7, "fast"],
		'cement must be one of rapid, normal, slow, got "fast"',
	],
	[STRENGTH_AT_AGE, [-1], "age_days must be 0 or more, got -1"],
	[
		AGE_FOR_STRENGTH,
		[70],
		"share must be between 0% and 1000%, not 0%, got 7000% (type 70% or 0.7)",
	],
	[
		AGE_FOR_STRENGTH,
		[1.3],
		"share must be below 128.4%, which normal cement never reaches by this formula, got 130%",
	],
	[WORKING_TIME, [0, 20, 30], "minutes must be above 0, got 0"],
])("refuses (%#)", (fn, args, sentence) => {
	expect(() => callFunction(fn, args)).toThrow(new InputError(sentence));
});
