import { describe, expect, test } from "vitest";
import { callFunction } from "../../src/functions/call";
import { EXPECTED_COLORS } from "../../src/functions/expected";

const OWN = ["White", "cast", "bare", "dry"];
type Swatch = readonly [kinds: string[], doses: unknown[], color: string];

/** Two tones of umber and black, by swatches with columns for black, ocher and umber. */
function expected(
	tones: readonly (readonly unknown[])[],
	swatches: readonly Swatch[],
) {
	return callFunction(EXPECTED_COLORS, [
		tones,
		[["Umber", "Black"]],
		OWN.map((kind) => [kind]),
		swatches.map(([kinds]) => kinds),
		swatches.map(([, doses]) => doses),
		[["Black", "Ocher", "Umber"]],
		swatches.map(([, , color]) => [color]),
	]) as unknown[][];
}

const UNDOSED: Swatch = [OWN, [0, 0, 0], "50, 0, 0"];
const UMBER: Swatch = [OWN, ["", "", 0.02], "50, -1, 2"];
const BLACK: Swatch = [OWN, [0.03, "", ""], "20, 0, 0"];

describe("EXPECTED_COLORS", () => {
	test("finds a pigment's column by its name, and compares each with every other", () => {
		const [plain, umber, black] = expected(
			[
				["Plain", 1, 0, 0],
				["Umber", 1, 0.02, 0],
				["Black", 1, 0, 0.03],
			],
			[UNDOSED, UMBER, BLACK],
		);
		// L* 50 without color is #777777 in sRGB; pair 7 of Sharma, Wu and Dalal (2005) differs by 2.3669.
		expect(plain?.[0]).toBe("#777777");
		expect(plain?.[2]).toBe("Umber");
		expect(plain?.[3]).toBeCloseTo(2.3669, 4);
		expect(umber?.[2]).toBe("Plain");
		expect(black?.[2]).toMatch(/Plain|Umber/);
		expect(plain?.[4]).toBe("3 of 3 swatches used");
	});

	test.each<[string, readonly unknown[], Swatch[], string]>([
		[
			"one dose of a pigment",
			["One", 1, 0.01, 0],
			[UMBER],
			"two doses of Umber alone are needed (undosed counts), there is one",
		],
		[
			"none of it",
			["One", 1, 0, 0.01],
			[UNDOSED, UMBER],
			"two doses of Black alone are needed (undosed counts), there is one",
		],
		[
			"nothing undosed",
			["One", 1, 0, 0],
			[UMBER],
			"an undosed swatch is needed",
		],
		[
			"a dose too strong",
			["One", 1, 0.03, 0],
			[UNDOSED, UMBER],
			"past the strongest swatch of Umber, 2% of binder",
		],
		[
			"another mix",
			["One", 1, 0.01, 0],
			[[["Gray", "cast", "bare", "dry"], [0, 0, 0], "50, 0, 0"]],
			"no swatch of this mix, finish, sealing and state",
		],
	])("%s: no color, and why", (_, tone, swatches, remark) => {
		expect(expected([tone], swatches)[0]?.slice(0, 2)).toEqual(["", remark]);
	});

	test("says what it left out, each for its first reason", () => {
		const other = (at: number, word: string): Swatch => [
			OWN.map((kind, i) => (i === at ? word : kind)),
			[0, 0, 0.01],
			"40, 0, 0",
		];
		const [row] = expected(
			[["Plain", 1, 0, 0]],
			[
				UNDOSED,
				other(0, "Gray"),
				other(1, "polished"),
				other(2, ""),
				other(3, "damp"),
				other(3, "damp"),
				[OWN, ["", "", ""], "50, 0, 0"],
				[OWN, [0, 0.02, 0], "50, 0, 0"],
				[OWN, [0.01, 0, 0.02], "50, 0, 0"],
				[OWN, [0, 0, 0.02], ""],
			],
		);
		expect(row?.[4]).toBe(
			"1 of 10 swatches used; left out: 1 of another mix, 1 of another finish, 1 of another sealing, 2 of another state, 1 without a dose (0 is undosed), 1 with other pigments, 1 with several pigments, 1 without a color",
		);
	});

	test("a color that cannot be read is named by its row", () => {
		expect(() =>
			expected([["One", 1, 0, 0]], [UNDOSED, [OWN, [0, 0, 0.02], "brown"]]),
		).toThrow(/row 2: .*got "brown"/);
	});

	test("more tones than anybody folds are refused", () => {
		const many = Array.from({ length: 41 }, (_, i) => [`Tone ${i}`, 1, 0, 0]);
		expect(() => expected(many, [UNDOSED])).toThrow(
			"tones must be at most 40 rows for their colors, got 41",
		);
	});
});
