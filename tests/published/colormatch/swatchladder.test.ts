/** Ladders of swatches and the next swatch, worked out apart: source and tolerance stand in the file. */
import { describe, expect, test } from "vitest";
import { nextSwatch } from "../../../src/calc/nextswatch";
import { swatchLadder } from "../../../src/calc/swatchladder";
import { casesOf, palette } from "./checks";

describe("a ladder out of one batch", () => {
	test.each(casesOf("swatch-ladder"))("%s", (_, each) => {
		const { inputs, expected, tolerance } = each;
		const steps = swatchLadder({
			massKg: inputs.undosed_batch_kg,
			binderShare: inputs.binder_share,
			swatchKg: inputs.undosed_kg_per_swatch,
			doses: inputs.doses.map((dose: number) => [dose]),
		});
		expect(steps).toHaveLength(expected.steps.length);
		for (const [i, wanted] of expected.steps.entries()) {
			const step = steps[i];
			if (!step) throw new Error("a step is missing");
			const near = (got: number, value: number, allowed: number) =>
				expect(Math.abs(got - value)).toBeLessThanOrEqual(allowed);
			near(
				1000 * (step.addKg[0] ?? 0),
				wanted.add_pigment_g,
				// Printed to hundredths of a gram.
				tolerance.g,
			);
			near(step.scaleKg, wanted.scale_shows_kg, tolerance.kg);
			if (wanted.pull_kg_on_scale === "rest")
				expect(step.pullKg).toBeUndefined();
			else near(step.pullKg ?? 0, wanted.pull_kg_on_scale, tolerance.kg);
		}
		expect(steps.at(-1)?.undosedKg).toBeCloseTo(expected.left_undosed_kg, 9);
	});
});

describe("the next swatch", () => {
	test.each(casesOf("next-swatch"))("%s", (_, { inputs, expected }) => {
		const cast = inputs.swatches.map(({ doses }: { doses: number[] }) => doses);
		const next = nextSwatch(palette(inputs), inputs.tones, cast);
		if (expected.cast_the_tone_itself)
			expect(next).toMatchObject({ what: "tone", doses: expected.doses });
		else {
			if (next.what !== "middle") throw new Error(`got ${next.what}`);
			expect(inputs.pigments[next.column]).toBe(expected.pigment);
			expect(next.dose).toBeGreaterThanOrEqual(expected.dose_from);
			expect(next.dose).toBeLessThanOrEqual(expected.dose_to);
		}
	});
});
