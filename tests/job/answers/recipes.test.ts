/** Recipes in a job: out of the studio's swatches of its mix, finish, sealing and state, in what makers state doses of. */
import { describe, expect, test } from "vitest";
import { colorDifference } from "../../../src/calc/ciede2000";
import { labOfHex } from "../../../src/calc/color";
import { basisOf } from "../../../src/job/answers/basis";
import { isKnown } from "../../../src/job/answers/known";
import {
	dosesIn,
	recipeAfterCast,
	recipesOf,
	studioPalette,
} from "../../../src/job/answers/recipes";
import {
	missWords,
	promiseOf,
	recipeWords,
	wantedWords,
} from "../../../src/job/answers/recipewords";
import { swatchFit } from "../../../src/job/answers/swatchfit";
import type { StudioFile, SwatchInput } from "../../../src/job/studiofile";
import { starterStudio } from "../../../templates/starterstudio";
import { demoJob } from "../tabs/typedcells";

const job = demoJob("metric");
const studio = starterStudio("metric");

function paletteOfJob(own: StudioFile = studio, change: object = {}) {
	const basis = basisOf(own, { ...job, ...change });
	const palette = studioPalette(basis);
	if (!isKnown(palette)) throw new Error(JSON.stringify(palette));
	return { basis, palette: palette.is };
}

const withSwatches = (
	change: (row: SwatchInput) => SwatchInput,
): StudioFile => ({
	...studio,
	swatches: (studio.swatches ?? []).map(change),
});

describe("a recipe in a job", () => {
	test("of a swatch's own color is that swatch's dose", () => {
		const { basis, palette } = paletteOfJob();
		const ocher = labOfHex("#d0b077");
		const [first] = recipesOf(basis, palette, ocher);
		expect(first?.doses.map(({ name }) => name)).toEqual(["Ocher"]);
		expect(first?.doses[0]?.dose).toBeGreaterThan(0.017);
		expect(first?.doses[0]?.dose).toBeLessThan(0.023);
	});

	test("weighs and costs what 100 kg of mix take of it", () => {
		const { basis, palette } = paletteOfJob();
		const [first] = recipesOf(basis, palette, labOfHex("#a08b75"));
		let cost = 0;
		for (const { name, dose, kgPer100 } of first?.doses ?? []) {
			expect(kgPer100).toBeCloseTo(100 * palette.binderShare * dose, 12);
			const row = studio.pigments.find((one) => one.name === name);
			// A pack of 1000 g at its price, in kilograms.
			cost += kgPer100 * Number(row?.packPrice);
		}
		expect(first?.costPer100).toBeCloseTo(cost, 9);
	});

	test("is typed in what its maker states doses of", () => {
		const cement: StudioFile = {
			...studio,
			pigments: studio.pigments.map((row) => ({ ...row, basis: "cement" })),
		};
		const { basis, palette } = paletteOfJob(cement);
		const [first] = recipesOf(basis, palette, labOfHex("#a08b75"));
		for (const { dose, typed } of first?.doses ?? [])
			expect(typed * palette.cementShare).toBeCloseTo(dose, 12);
	});

	test("has no pigment that the Pigments tab does not know, and says so", () => {
		const without: StudioFile = {
			...studio,
			pigments: studio.pigments.filter(({ name }) => name !== "Ocher"),
		};
		const { basis, palette } = paletteOfJob(without);
		expect(palette.left).toContain(
			"Ocher is not known well on the Pigments tab",
		);
		for (const { doses } of recipesOf(basis, palette, labOfHex("#d0b077")))
			expect(doses.map(({ name }) => name)).not.toContain("Ocher");
	});

	test.each([
		["damp", { state: "damp" }],
		["of another finish", { finish: "honed" }],
		["young", { ageDays: 12 }],
	])("is not made of swatches that are %s", (_, change) => {
		const other = withSwatches((row) => ({ ...row, ...change }));
		expect(isKnown(studioPalette(basisOf(other, job)))).toBe(false);
	});

	test("is said in words, with how far the cast may be, and how a color out of reach is missed", () => {
		const asked = (wanted: string) => {
			const words = wantedWords(basisOf(studio, { ...job, wanted }));
			return isKnown(words) ? words.is : JSON.stringify(words);
		};
		expect(asked("#d0b077")).toMatch(
			/^Ocher [\d.]+%: predicted difference \d\.\d, expect the cast within ± [\d.]+ \(#[0-9a-f]{6}\)$/,
		);
		expect(asked("40, -5, -30")).toMatch(/out of reach, .* than wanted/);
		expect(asked("")).toBe("");
		expect(asked("blue")).toMatch(/must be #rrggbb/);
	});

	test("corrected by a cast that came out as expected stays as it is", () => {
		const { basis, palette } = paletteOfJob();
		const wanted = labOfHex("#a08b75");
		const [first] = recipesOf(basis, palette, wanted);
		if (!first) throw new Error("no recipe");
		const doses = dosesIn(
			palette,
			Object.fromEntries(first.doses.map(({ name, dose }) => [name, dose])),
		);
		const corrected = recipeAfterCast(palette, {
			wanted: first.lab,
			doses,
			measured: first.lab,
		});
		expect(recipeWords(corrected)).toBe(recipeWords(first));
		expect(corrected.within).toBeLessThanOrEqual(first.within);
		expect(promiseOf(corrected, wanted)).toMatch(/^predicted difference/);
		// However far the cast came out, the next is known better than the first was.
		const far = recipeAfterCast(palette, {
			wanted: first.lab,
			doses,
			measured: { ...first.lab, l: first.lab.l - 4 },
		});
		expect(far.within).toBeLessThanOrEqual(first.within);
		expect(recipeWords(far)).not.toBe(recipeWords(first));
	});
});

test.each([
	[
		{ l: 60, a: 5, b: 10 },
		{ l: 50, a: 12, b: 10 },
		"lighter and less red than wanted",
	],
	[{ l: 50, a: 0, b: 10 }, { l: 50, a: -8, b: 10 }, "less green than wanted"],
	[{ l: 45, a: 0, b: 0 }, { l: 50, a: 0, b: 0 }, "darker than wanted"],
	[{ l: 50, a: 0, b: 5 }, { l: 50, a: 0, b: -5 }, "less blue than wanted"],
	[
		{ l: 50, a: 0, b: 0.2 },
		{ l: 50, a: 0, b: 0 },
		"hardly different from what is wanted",
	],
])("how %o misses %o", (lab, wanted, words) => {
	expect(missWords(lab, wanted)).toBe(words);
});

describe("what Swatches says of its rows", () => {
	const kind = { mix: "M", finish: "cast", sealed: "bare", state: "dry" };
	const fitOf = (swatches: SwatchInput[]) =>
		swatchFit({ ...studio, swatches, swatchPigments: ["Umber"] });
	const saysOf = (row: SwatchInput) => {
		const said = fitOf([{ ...kind, ageDays: 28, ...row }]).swatches[0];
		return said && isKnown(said.notGoodFor) ? said.notGoodFor.is : said;
	};

	test.each<[SwatchInput, RegExp | ""]>([
		[{ color: "#aaaaaa", doses: { Umber: 0.01 } }, ""],
		[{ color: "#aaaaaa", ageDays: 12, doses: { Umber: 0 } }, /matching/],
		[{ color: "#aaaaaa", ageDays: "", doses: { Umber: 0 } }, /age is noted/],
		[{ color: "#aaaaaa", state: "damp", doses: { Umber: 0 } }, /dry pieces/],
		[{ color: "#aaaaaa", read: "photo", doses: { Umber: 0 } }, /under 3/],
		[
			{ color: "#aaaaaa", doses: { Umber: 0.01, Black: 0.01 } },
			/mixes several/,
		],
		[{ doses: { Umber: 0.01 } }, /measure it/],
	])("not good for: %o", (row, words) => {
		if (words === "") expect(saysOf(row)).toBe("");
		else expect(saysOf(row)).toMatch(words);
	});

	test("a recipe's casts are a chain, and the last is the one to start from", () => {
		const wanted = "60, 5, 10";
		const row = { ...kind, ageDays: 28, recipe: "Sand", wanted };
		const { swatches } = fitOf([
			{ ...row, color: "63, 5, 10", doses: { Umber: 0.01 } },
			{ ...row, recipe: "other", color: "#aaaaaa", doses: { Umber: 0.01 } },
			{ ...row, doses: { Umber: 0.012 } },
		]);
		expect(swatches.map(({ cast }) => cast)).toEqual([
			"cast 1 of 2",
			"cast 1, start from it",
			"cast 2, start from it",
		]);
		const off = swatches[0]?.offWanted;
		expect(off && isKnown(off) && off.is).toBeCloseTo(
			colorDifference({ l: 63, a: 5, b: 10 }, { l: 60, a: 5, b: 10 }),
			9,
		);
		expect(swatches[2]?.offWanted).toEqual({ missing: "cast and measure it" });
	});

	test("the starter's swatches agree, and invented rows are apart from one's own", () => {
		const { pigments } = swatchFit(studio);
		expect(pigments.map(({ pigment }) => pigment)).toEqual(
			expect.arrayContaining(["Umber", "Black", "Ocher"]),
		);
		for (const { odd } of pigments) expect(odd).toBeUndefined();
		const own = (studio.swatches ?? []).map((row) => ({ ...row, remark: "" }));
		const both = swatchFit({
			...studio,
			swatches: [...(studio.swatches ?? []), ...own],
		});
		expect(both.pigments).toHaveLength(2 * pigments.length);
	});
});
