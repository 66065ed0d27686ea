/** Which swatch to cast next, which one disagrees, and the tones of a family. */
import { describe, expect, test } from "vitest";
import { castBands } from "../../src/calc/castband";
import { vesselChains } from "../../src/calc/chains";
import { colorDifference } from "../../src/calc/ciede2000";
import type { Lab } from "../../src/calc/color";
import { absorptions, mixedColor, type Strength } from "../../src/calc/kubelka";
import { agreements, leftOutDifferences } from "../../src/calc/leaveout";
import { nextSwatch } from "../../src/calc/nextswatch";
import { paletteOf } from "../../src/calc/palette";
import { ladderBatchKg, swatchLadder } from "../../src/calc/swatchladder";
import { type SwatchRow, toneColors } from "../../src/calc/tonecolor";
import { toneFamily } from "../../src/calc/tonefamily";

const UNDOSED: Lab = { l: 72, a: 1.2, b: 7.5 };

/** Invented red and black of two-constant truth. */
const RED = strengths([0.7, 1.1, 1.6], [0.4, 0.35, 0.2]);
const BLACK = strengths([2.3, 2.3, 2], [0.3, 0.3, 0.28]);

function strengths(kappas: number[], sigmas: number[]): Strength[] {
	return kappas.map((kappa, j) => ({ kappa, sigma: sigmas[j] ?? 0 }));
}

const truth = ([red = 0, black = 0]: readonly number[]): Lab =>
	mixedColor(absorptions(UNDOSED), [
		{ strengths: RED, u: red / 0.05 },
		{ strengths: BLACK, u: black / 0.04 },
	]);

const rowsOf = (doses: readonly (readonly number[])[]): SwatchRow[] =>
	doses.map((each) => ({ doses: each, lab: truth(each) }));

const REDS = [0.01, 0.02, 0.03, 0.05].map((dose) => [dose, 0]);
const BLACKS = [0.012, 0.04].map((dose) => [0, dose]);

describe("how swatches agree", () => {
	const good = rowsOf([[0, 0], ...REDS, ...BLACKS]);

	test("swatches of one truth differ little from what the others say", () => {
		const [red, black] = agreements(good);
		expect(red?.mean).toBeLessThan(0.5);
		expect(red?.odd).toBeUndefined();
		// Without one of its two doses there is no fit of black to compare with.
		expect(black).toMatchObject({ mean: undefined, odd: undefined });
	});

	test.each([1, 2, 3, 4])("swatch %i, misread by 6 in L*, is found", (at) => {
		const misread = good.map((row, i) =>
			i === at ? { ...row, lab: { ...row.lab, l: row.lab.l + 6 } } : row,
		);
		const [red] = agreements(misread);
		expect(red?.odd?.row).toBe(at);
		const off = colorDifference(
			(misread[at] as SwatchRow).lab,
			(good[at] as SwatchRow).lab,
		);
		expect(Math.abs((red?.odd?.difference ?? 0) - off)).toBeLessThan(1.5);
	});

	test("two undosed ones are compared with each other", () => {
		const two = rowsOf([
			[0, 0],
			[0, 0],
		]).map((row, i) => ({ ...row, lab: { ...row.lab, l: row.lab.l + 2 * i } }));
		const apart = colorDifference(UNDOSED, { ...UNDOSED, l: 74 });
		expect(leftOutDifferences(two)[0]).toBeCloseTo(apart, 9);
	});
});

describe("a swatch from a photo", () => {
	test("counts a twenty-fifth of a meter's in the mean of a dose", () => {
		const rows: SwatchRow[] = [
			{ doses: [0], lab: { l: 70, a: 0, b: 0 } },
			{ doses: [0], lab: { l: 83, a: 0, b: 0 }, worth: 0.04 },
			{ doses: [0.05], lab: { l: 40, a: 0, b: 0 } },
		];
		// (70 + 0.04 × 83) / 1.04 = 70.5
		expect(paletteOf(rows).undosed.lab.l).toBeCloseTo(70.5, 9);
	});

	test("moves the fit less than a meter's would", () => {
		const off = (worth: number) => {
			const rows = rowsOf([[0, 0], ...REDS]);
			const wrong = { doses: [0.025, 0], lab: { l: 40, a: 5, b: 5 }, worth };
			return colorDifference(
				toneColors([...rows, wrong])([0.025, 0]),
				truth([0.025, 0]),
			);
		};
		expect(off(0.04)).toBeLessThan(off(1) / 3);
	});
});

describe("the next swatch", () => {
	const ends = rowsOf([
		[0, 0],
		[0.05, 0],
		[0, 0.04],
	]);
	const cast = ends.map(({ doses }) => doses);

	test("is a middle one where the tones are known least, and it makes them known better", () => {
		const tone = { name: "Brick", doses: [0.02, 0] };
		const next = nextSwatch(paletteOf(ends), [tone], cast);
		expect(next).toMatchObject({ what: "middle", column: 0, tone: "Brick" });
		const better = paletteOf([...ends, ...rowsOf([[0.015, 0]])]);
		expect(castBands(better)(tone.doses)).toBeLessThan(
			castBands(paletteOf(ends))(tone.doses),
		);
	});

	test("is none of a pigment that no tone uses", () => {
		const tone = { name: "Slate", doses: [0, 0.01] };
		expect(nextSwatch(paletteOf(ends), [tone], cast)).toMatchObject({
			what: "middle",
			column: 1,
		});
	});

	test("is a stronger one for a tone past the strongest", () => {
		const tone = { name: "Night", doses: [0, 0.06] };
		expect(nextSwatch(paletteOf(ends), [tone], cast)).toEqual({
			what: "strongest",
			column: 1,
			dose: 0.06,
			tone: "Night",
		});
	});

	test("would not tell much once the tones of several pigments are cast", () => {
		const doses = [0.02, 0.004];
		const all = rowsOf([[0, 0], ...REDS, ...BLACKS, doses]);
		const tones = [{ name: "Bark", doses }];
		const known = all.map((row) => row.doses);
		expect(nextSwatch(paletteOf(all), tones, known)).toEqual({
			what: "enough",
		});
		expect(nextSwatch(paletteOf(all), tones, known.slice(0, -1))).toMatchObject(
			{ what: "tone", tone: "Bark" },
		);
	});
});

describe("a ladder", () => {
	test("of a batch large enough adds at least 2 g a step, and no more than that in one", () => {
		const ladder = {
			binderShare: 0.48,
			swatchKg: 0.3,
			doses: [[0.002], [0.006], [0.02]],
		};
		const massKg = ladderBatchKg(ladder);
		const added = swatchLadder({ ...ladder, massKg }).map(
			({ addKg }) => addKg[0] ?? 0,
		);
		// The first step is the smallest: 2 g / (48% × 0.2%) = 2.0833 kg.
		expect(massKg).toBeCloseTo(2.0833, 3);
		expect(Math.min(...added)).toBeCloseTo(0.002, 9);
	});

	test("uses up its pigment: what is in the swatches is what was added", () => {
		const doses = [
			[0.01, 0],
			[0.01, 0.004],
			[0.03, 0.01],
		];
		const [massKg, binderShare, swatchKg] = [2, 0.5, 0.4];
		const steps = swatchLadder({ massKg, binderShare, swatchKg, doses });
		for (const pigment of [0, 1]) {
			const added = steps.reduce(
				(sum, { addKg }) => sum + (addKg[pigment] ?? 0),
				0,
			);
			const inside =
				binderShare *
				(swatchKg * ((doses[0]?.[pigment] ?? 0) + (doses[1]?.[pigment] ?? 0)) +
					(massKg - 2 * swatchKg) * (doses[2]?.[pigment] ?? 0));
			expect(added).toBeCloseTo(inside, 12);
		}
	});

	test.each([
		["falls", 2, [[0.02], [0.01]], "doses must rise"],
		["is of too small a batch", 0.5, [[0.01], [0.02]], "at least 2 times"],
	])("is refused where it %s", (_, massKg, doses, message) => {
		expect(() =>
			swatchLadder({ massKg, binderShare: 0.5, swatchKg: 0.4, doses }),
		).toThrow(message);
	});
});

describe("a family of tones", () => {
	const colorOf = toneColors(rowsOf([[0, 0], ...REDS, ...BLACKS]));
	const strongest = [0.03, 0.012];

	test("goes to the bare mix in even steps of lightness", () => {
		const family = toneFamily(colorOf, strongest, 4);
		const lightness = [...family, [0, 0]].map((doses) => colorOf(doses).l);
		const steps = lightness.slice(1).map((l, i) => l - (lightness[i] ?? 0));
		for (const step of steps) expect(step).toBeCloseTo(steps[0] ?? 0, 4);
		expect(family[0]).toEqual(strongest);
	});

	test("is made in one vessel by one pull-off plan", () => {
		const tones = toneFamily(colorOf, strongest, 4).map((doses, i) => ({
			name: `tone ${i}`,
			share: 0.25,
			doses,
		}));
		expect(vesselChains(tones)).toEqual([[3, 2, 1, 0]]);
	});

	test("has no steps where the strongest is as light as the bare mix", () => {
		expect(() => toneFamily(colorOf, [0.0001, 0], 3)).toThrow(
			"as light as the bare mix",
		);
	});
});
