/** What a cell gets of the mix functions; expected numbers are worked by hand. */
import { describe, expect, test } from "vitest";
import { InputError } from "../../src/calc/errors";
import { callFunction } from "../../src/functions/call";
import {
	BATCH_MASS,
	BINDER_SHARE,
	FIBER_MASS,
	MIX_DENSITY,
	MOISTURE_CORRECTION,
	WATER_BINDER_RATIO,
	WEIGH_OUT,
} from "../../src/functions/mix";

const refused = (work: () => unknown, sentence: string) =>
	expect(work).toThrow(new InputError(sentence));

describe("BATCH_MASS", () => {
	test("10 ft³ of 135 lb/ft³ with 8%: 1458 lb", () => {
		const args = [10, 135, 0.08, "us"];
		expect(callFunction(BATCH_MASS, args)).toBeCloseTo(1458, 9);
	});

	test("a column of volumes, nothing wasted", () => {
		expect(callFunction(BATCH_MASS, [[[10], [20]], 2000])).toEqual([
			[20],
			[40],
		]);
	});

	test.each([
		[
			[10, 2000, 8],
			"waste must be between 0% and 100%, got 800% (type 8% or 0.08)",
		],
		[[10, 2000, -0.1], "waste must be between 0% and 100%, got -10%"],
		[[10, "#N/A"], "density is an error cell (#N/A)"],
		[[10, ""], "density is blank"],
		[[10, 0], "density must be above 0 kg/m³, got 0"],
		[["10 L", 2000], 'volume must be a number, got "10 L"'],
	])("refuses %j", (args, sentence) => {
		refused(() => callFunction(BATCH_MASS, args), sentence);
	});
});

describe("WEIGH_OUT", () => {
	test("a blank row inside stays blank, trailing ones go", () => {
		const parts = [[2], [""], [3], [""], [""]];
		expect(callFunction(WEIGH_OUT, [parts, 50])).toEqual([[20], [""], [30]]);
	});

	test("an ingredient that is not used weighs nothing", () => {
		expect(callFunction(WEIGH_OUT, [[[0], [1]], 50])).toEqual([[0], [50]]);
	});

	test.each<[unknown[], string]>([
		[[[[1], [-2]], 50], "row 2: parts must be 0 or more, got -2"],
		[[[[0], [0]], 50], "parts must not all be 0"],
		[[[[1], [2]], 0], "mass must be above 0, got 0"],
		[
			[[[1e308], [1e308]], 50],
			"row 1: parts is too large to calculate with, got 1e+308",
		],
	])("refuses %j", (args, sentence) => {
		refused(() => callFunction(WEIGH_OUT, args), sentence);
	});
});

describe("MIX_DENSITY", () => {
	test("water is 62.428 lb/ft³", () => {
		const water = callFunction(MIX_DENSITY, [1, 1, "", "us"]);
		expect(water).toBeCloseTo(62.428, 3);
	});

	test.each<[unknown[], string]>([
		[
			[[[1], [1]], [[3], [1]], 1],
			"air must be between 0% and 100%, not 100%, got 100% (type 1% or 0.01)",
		],
		[
			[[[1], [1]], [[3], [1]], -0.1],
			"air must be between 0% and 100%, not 100%, got -10%",
		],
		[
			[[[1], [1]], [[3], [1]], 5],
			"air must be between 0% and 100%, not 100%, got 500% (type 5% or 0.05)",
		],
		[
			[
				[[1], [1]],
				[[3], [""]],
			],
			"row 2: specific_gravity is blank",
		],
		[
			[
				[[1], [1]],
				[[3], [1], [2]],
			],
			"parts has 2 rows and specific_gravity has 3: they must be of one size",
		],
		[
			[
				[[""], [""]],
				[[""], [""]],
			],
			"parts is blank",
		],
		[
			[
				[[1], [1]],
				[[3], [0]],
			],
			"row 2: specific_gravity must be above 0, got 0",
		],
	])("refuses %j", (args, sentence) => {
		refused(() => callFunction(MIX_DENSITY, args), sentence);
	});
});

describe("binder and water", () => {
	const parts = [[100], [12], [2]];

	test("a bagged blend of 55% binder, a reducer of 60% water", () => {
		const blend = [[0.55], [""], [""]];
		const water = [[""], [1], [0.6]];
		expect(callFunction(BINDER_SHARE, [parts, blend])).toBeCloseTo(
			55 / 114,
			12,
		);
		expect(callFunction(WATER_BINDER_RATIO, [parts, blend, water])).toBeCloseTo(
			13.2 / 55,
			12,
		);
	});

	test.each<[unknown[], string]>([
		[
			[parts, [[""], [""], [""]]],
			"binder_share must be above 0% for at least one ingredient, got no binder at all",
		],
		[
			[parts, [[55], [""], [""]]],
			"row 1: binder_share must be between 0% and 100%, got 5500% (type 55% or 0.55)",
		],
	])("refuses %j", (args, sentence) => {
		refused(() => callFunction(BINDER_SHARE, args), sentence);
		refused(
			() => callFunction(WATER_BINDER_RATIO, [...args, parts.map(() => [0])]),
			sentence,
		);
	});
});

test("MOISTURE_CORRECTION: two columns beside a column of masses", () => {
	const masses = [[40], [20]];
	const answer = callFunction(MOISTURE_CORRECTION, [
		masses,
		[[0.05], [0]],
		0.01,
	]);
	const [damp, dry] = answer as number[][];
	expect(damp?.[0]).toBeCloseTo(42, 12);
	expect(damp?.[1]).toBeCloseTo(1.6, 12);
	expect(dry?.[0]).toBe(20);
	expect(dry?.[1]).toBeCloseTo(-0.2, 12);
	refused(
		() => callFunction(MOISTURE_CORRECTION, [masses, [[0.05], [5]], 0.01]),
		"row 2: moisture must be between 0% and 100%, got 500% (type 5% or 0.05)",
	);
});

test("FIBER_MASS: 1 ft³ with 2% of PVA is 1.623 lb: 0.02 × 1300 / 16.018463", () => {
	const args = [1, 0.02, "", "us"];
	expect(callFunction(FIBER_MASS, args)).toBeCloseTo(26 / 16.01846337, 6);
	refused(
		() => callFunction(FIBER_MASS, [1, 2]),
		"volume_share must be between 0% and 100%, got 200% (type 2% or 0.02)",
	);
});
