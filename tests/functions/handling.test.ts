/** What a cell gets of handling; worked by hand, in both systems of units. */
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { callFunction } from "../../src/functions/call";
import type { SheetFunction } from "../../src/functions/declare";
import {
	FORM_PRESSURE,
	MODULUS_OF_RUPTURE,
	PEOPLE_TO_LIFT,
	SELF_WEIGHT_STRESS,
	UPLIFT,
} from "../../src/functions/handling";

test.each([
	[PEOPLE_TO_LIFT, /your studio's own.*does not cover team lifts/],
	[SELF_WEIGHT_STRESS, /Cutouts, notches and inlays are not in it/],
	[MODULUS_OF_RUPTURE, /An estimate, not a test/],
])("help says its limits (%#)", (fn, words) => {
	expect(fn.limits).toMatch(words);
});

describe("the same piece in US units", () => {
	test("SELF_WEIGHT_STRESS: 0.75 × 144 lb/ft³ × (8 ft)² / (1/8 ft) = 55296 lb/ft² = 384 psi", () => {
		const args = [96, 1.5, 144, "ends", "", "us"];
		expect(callFunction(SELF_WEIGHT_STRESS, args)).toBeCloseTo(384, 9);
	});

	test("FORM_PRESSURE: 150 lb/ft³ × 2 ft = 300 lb/ft²", () => {
		expect(callFunction(FORM_PRESSURE, [`2'`, 150, "us"])).toBeCloseTo(300, 9);
	});

	test("UPLIFT: 0.5 ft³ × 140 lb/ft³ − 2 lb = 68 lb", () => {
		expect(callFunction(UPLIFT, [0.5, 140, 2, "us"])).toBeCloseTo(68, 9);
	});
});

test.each<[SheetFunction, unknown[], string]>([
	[PEOPLE_TO_LIFT, [0, 20], "weight must be above 0, got 0"],
	[
		SELF_WEIGHT_STRESS,
		[2000, 40, 2000, "middle"],
		'support must be one of ends, fifth points, cantilever, got "middle"',
	],
	[
		SELF_WEIGHT_STRESS,
		[2000, 40, 2000, "ends", 0.5],
		"factor must be 1 or more, got 0.5",
	],
	[
		MODULUS_OF_RUPTURE,
		[-30],
		"compressive_strength must be above 0 MPa, got -30",
	],
	[UPLIFT, [10, 2000, -1], "former_mass must be 0 kg or more, got -1"],
])("refuses (%#)", (fn, args, sentence) => {
	expect(() => callFunction(fn, args)).toThrow(new InputError(sentence));
});
