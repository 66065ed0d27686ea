/** What a cell gets of water and weather; worked by hand, in both systems of units. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { callFunction } from "../../src/functions/call";
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
])("refuses (%#)", (fn, args, sentence) => {
	expect(() => callFunction(fn, args)).toThrow(new InputError(sentence));
});
