/** Colors from photos: a real one, and made ones of known truth. Sources and tolerances stand in the file. */
import { describe, expect, test } from "vitest";
import { colorDifference } from "../../../src/calc/ciede2000";
import type { Lab } from "../../../src/calc/color";
import {
	conditionOf,
	leftOutPatches,
	linearOf,
	type Patch,
	photoReader,
	type Triple,
} from "../../../src/calc/photofit";
import { readPhoto } from "../../../src/calc/photoread";
import { casesOf, labOf } from "./checks";

const mean = (numbers: readonly number[]): number =>
	numbers.reduce((sum, each) => sum + each, 0) / numbers.length;

const median = (numbers: readonly number[]): number => {
	const sorted = [...numbers].sort((a, b) => a - b);
	const middle = (sorted.length - 1) / 2;
	return (
		((sorted[Math.floor(middle)] ?? 0) + (sorted[Math.ceil(middle)] ?? 0)) / 2
	);
};

/** L*a*b* of linear sRGB, by IEC 61966-2-1's matrix and the CIE's formula. */
function labOfLinear([r = 0, g = 0, b = 0]: readonly number[]): Lab {
	const f = (t: number) =>
		t > (6 / 29) ** 3 ? Math.cbrt(t) : (841 / 108) * t + 4 / 29;
	const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
	const y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
	const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
	return { l: 116 * y - 16, a: 500 * (x - y), b: 200 * (y - z) };
}

describe("a real photo, each patch left out in turn", () => {
	const all = casesOf("photo-loo-real");
	const [, first] = all[0] ?? ["", undefined];
	const patches: Patch[] = first.inputs.reference_linear_rgb
		.map((light: number[], i: number) => ({
			lab: labOfLinear(light),
			rgb: first.inputs.test_linear_rgb[i],
		}))
		// Cyan is clipped.
		.filter((_: Patch, i: number) => i !== 17);

	test.each(all)("%s", (_, { inputs, expected, tolerance }) => {
		const off = leftOutPatches(patches, {
			affine: inputs.fit === "affine",
			weighed: inputs.row_weight !== "none",
			close: inputs.closeness !== "none",
		});
		expect(Math.abs(mean(off) - expected.mean)).toBeLessThanOrEqual(tolerance);
		expect(Math.abs(median(off) - expected.median)).toBeLessThanOrEqual(
			tolerance,
		);
		expect(Math.abs(Math.max(...off) - expected.max)).toBeLessThanOrEqual(
			tolerance,
		);
	});
});

interface Given {
	lab: number[];
	rgb8: Triple;
}

const patchesOf = ({ patches }: { patches: Given[] }): Patch[] =>
	patches
		.filter(({ rgb8 }) => rgb8.every((code) => code > 2 && code < 253))
		.map(({ lab, rgb8 }) => ({
			lab: labOf(lab),
			rgb: rgb8.map(linearOf) as unknown as Triple,
		}));

const coded = (rgb8: Triple) => ({ rgb8, spread: 0 });

describe("photos of known truth", () => {
	test.each(casesOf("photo-known"))("%s", (_, each) => {
		const { inputs, expected, tolerance } = each;
		const patches = patchesOf(inputs);
		expect(patches).toHaveLength(expected.patches_used);
		const plain = { affine: false, weighed: true, close: false };
		const read = photoReader(patches, plain);
		const recommended = readPhoto(
			inputs.patches.map(({ lab, rgb8 }: Given, i: number) => ({
				name: `patch ${i}`,
				lab: labOf(lab),
				...coded(rgb8),
			})),
		);
		if (!read || "refused" in recommended)
			throw new Error(JSON.stringify(recommended));
		for (const [i, rgb8] of inputs.samples_rgb8.entries()) {
			const lab = read(rgb8.map(linearOf) as unknown as Triple);
			const wanted: number[] = expected.samples_lab[i];
			for (const [k, value] of [lab.l, lab.a, lab.b].entries())
				expect(Math.abs(value - (wanted[k] ?? 0))).toBeLessThanOrEqual(
					tolerance.samples_lab,
				);
			const sample = recommended.read(coded(rgb8));
			if ("refused" in sample) throw new Error(sample.refused);
			expect(
				colorDifference(sample.lab, labOf(expected.true_lab[i])),
			).toBeLessThanOrEqual(tolerance.dE00_to_truth);
		}
		expect(
			Math.abs(mean(leftOutPatches(patches, plain)) - expected.loo_mean),
		).toBeLessThanOrEqual(tolerance.loo_mean);
	});
});

describe("which cards are refused", () => {
	test.each(casesOf("photo-refusal"))("%s", (_, { inputs, expected }) => {
		const read = readPhoto(
			inputs.patches.map(({ lab, rgb8 }: Given, i: number) => ({
				name: `patch ${i}`,
				lab: labOf(lab),
				...coded(rgb8),
			})),
		);
		expect("refused" in read ? "refuse" : "accept").toBe(expected);
	});

	test("the patches' condition is what tells: grays with one warm patch below 0.03", () => {
		const conditions = Object.fromEntries(
			casesOf("photo-refusal").map(([id, { inputs }]) => [
				id,
				conditionOf(patchesOf(inputs)),
			]),
		);
		expect(conditions["photo-refuse-grays-seven"]).toBeLessThan(0.03);
		expect(conditions["photo-accept-six"]).toBeGreaterThan(0.05);
	});
});
