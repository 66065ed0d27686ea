/** Invented swatches and stock are the demo's alone. */
import { describe, expect, test } from "vitest";
import { orNull, saying } from "../../../src/job/answers/known";
import { wholeOf } from "../../../src/job/answers/whole";
import { starterStudio } from "../../../templates/starterstudio";
import { demoJob } from "./demofiles";

describe.each(["metric", "us"] as const)("in %s", (units) => {
	const studio = starterStudio(units);
	const demo = demoJob(units);
	const own = { ...demo, client: "Own client" };

	test("the demo takes colors and stock from the invented rows", () => {
		const whole = wholeOf(studio, demo);
		expect(orNull(whole.colors().tones[0]?.color ?? { missing: "" })).toMatch(
			/^#/,
		);
		const cement = whole.buy().find(({ name }) => name === "White cement");
		expect(orNull(cement?.onHand ?? { missing: "" })).toBeGreaterThan(0);
	});

	test("a job of the studio's own takes none, and says what is missing", () => {
		const whole = wholeOf(studio, own);
		for (const { color } of whole.colors().tones)
			expect(saying(color)).toMatch(
				/^not known yet: no swatch of the studio's own/,
			);
		for (const { onHand } of whole.buy()) expect(orNull(onHand)).toBe(0);
	});

	test("rows of its own count beside invented ones, and those do not", () => {
		const kept = studio.swatches ?? [];
		const shelf = [
			...(studio.stock ?? []),
			{ material: "White cement", onHand: 7 },
		];
		const swatches = kept.map(({ remark: _, ...row }) => row);
		const whole = wholeOf({ ...studio, stock: shelf, swatches }, own);
		expect(orNull(whole.colors().tones[0]?.color ?? { missing: "" })).toMatch(
			/^#/,
		);
		const cement = whole.buy().find(({ name }) => name === "White cement");
		expect(orNull(cement?.onHand ?? { missing: "" })).toBe(7);
	});
});
