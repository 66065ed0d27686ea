/** What a cell gets of water, weather and cure; worked by hand, in both systems of units. */
import fc from "fast-check";
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
import {
	EVAPORATION_RATE,
	ICE_FOR,
	MIX_TEMPERATURE,
	WATER_TEMPERATURE_FOR,
} from "../../src/functions/water";

describe("MIX_TEMPERATURE", () => {
	test("in °F and lb with ACI's −112 a pound of ice", () => {
		const fahrenheit = (0.22 * 100 * 86 + 23 * 50 - 112 * 5) / 50;
		const args = [[[100]], [[86]], 23, 50, 5, "us"];
		expect(callFunction(MIX_TEMPERATURE, args)).toBeCloseTo(fahrenheit, 9);
	});

	test("one temperature for all solids; a row of both reads as well", () => {
		const column = callFunction(MIX_TEMPERATURE, [[[60], [40]], 30, 28, 10]);
		expect(column).toBeCloseTo(18.8, 12);
		expect(
			callFunction(MIX_TEMPERATURE, [[[60, 40]], [[30, 30]], 28, 10]),
		).toBe(column);
	});
});

test("WATER_TEMPERATURE_FOR in °F gives the mix its temperature in °F", () => {
	const target = fc.double({ min: 60, max: 70, noNaN: true });
	fc.assert(
		fc.property(target, (wanted) => {
			const water = callFunction(WATER_TEMPERATURE_FOR, [
				wanted,
				220,
				68,
				62,
				"us",
			]);
			const mix = callFunction(MIX_TEMPERATURE, [220, 68, 62, water, "", "us"]);
			expect(mix).toBeCloseTo(wanted, 9);
		}),
	);
});

test("ICE_FOR a column of targets", () => {
	// (660 + 280 − 50 T) / 90.
	const targets = [[20], [15], [10]];
	const ice = callFunction(ICE_FOR, [targets, 100, 30, 28, 10]) as number[][];
	expect(ice[0]).toEqual([0]);
	expect(ice[1]?.[0]).toBeCloseTo(190 / 90, 12);
	expect(ice[2]?.[0]).toBeCloseTo(440 / 90, 12);
});

describe("EVAPORATION_RATE", () => {
	test("0 °F is as cold as the US form goes, −18 °C the SI form", () => {
		// 50^2.5 = 17677.67; (10 + 18)^2.5 = 4148.54.
		expect(callFunction(EVAPORATION_RATE, [0, 0.5, 50, 0, "us"])).toBeCloseTo(
			0.01767767,
			8,
		);
		expect(callFunction(EVAPORATION_RATE, [-18, 0.5, 10, 0])).toBeCloseTo(
			5 * 4148.54 * 4e-6,
			6,
		);
	});

	test("help says its limits", () => {
		expect(EVAPORATION_RATE.limits).toMatch(/±40%.*precautions/);
	});
});

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
		MIX_TEMPERATURE,
		[100, 30, 20, -5],
		"water_temp must be between 0 °C and 100 °C, got -5",
	],
	[
		MIX_TEMPERATURE,
		[100, 30, 20, 20, "", "us"],
		"water_temp must be between 32 °F and 212 °F, got 20",
	],
	[
		MIX_TEMPERATURE,
		[[[100], [50]], [[30], [""]], 20, 5],
		"row 2: solid_temps is blank",
	],
	[
		WATER_TEMPERATURE_FOR,
		[10, 100, 30, 28],
		"target cannot be reached with water alone, which would have to be at -5.7 °C (21.7 °F): replace part of it with ice (ICE_FOR)",
	],
	[
		WATER_TEMPERATURE_FOR,
		[50, 100, 30, 28],
		"target would need water at 65.7 °C (150.3 °F), above 60.0 °C (140.0 °F): warm the solids",
	],
	[
		WATER_TEMPERATURE_FOR,
		[20, 100, 30, 0],
		"water_mass must be above 0 kg, got 0",
	],
	[
		WATER_TEMPERATURE_FOR,
		[20, 100, 30, 5e-324],
		"water_mass is too small to calculate with, got 5e-324",
	],
	[
		ICE_FOR,
		[15, 100, 30, 5e-324, 10],
		"water_mass is too small to calculate with, got 5e-324",
	],
	[
		ICE_FOR,
		[10, 100, 30, 4, 10],
		"target cannot be reached: it would take 122% of the mix water as ice, and 100% is all there is: cool the solids",
	],
	[
		EVAPORATION_RATE,
		[20, 50, 20, 5],
		"humidity must be between 0% and 100%, got 5000% (type 50% or 0.5)",
	],
	[EVAPORATION_RATE, [20, 0.5, 20, -5], "wind must be 0 km/h or more, got -5"],
	[
		EVAPORATION_RATE,
		[-1, 0.5, 40, 5, "us"],
		"air_temp must be 0 °F or more for this formula, got -1 °F",
	],
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
