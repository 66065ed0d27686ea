import { describe, expect, test } from "vitest";
import { callFunction } from "../../src/functions/call";
import { DOSE_UNCERTAINTY } from "../../src/functions/weighing";
import { close } from "./close";

describe("DOSE_UNCERTAINTY", () => {
	test("two weighings of the mix count √2 times", () => {
		// Only the mix: √2 × √2 × 1/√12 / 1 = √(1/3); the pigment's own part is 1e-6 of it.
		expect(callFunction(DOSE_UNCERTAINTY, [1e6, 1, 1, 1, 2])).toBeCloseTo(
			Math.sqrt(1 / 3),
			9,
		);
	});
	test("the mix scale in pounds changes nothing, since it is a ratio", () => {
		close(
			callFunction(DOSE_UNCERTAINTY, [2, 0.1, 10, 0.1, 1, "us"]),
			callFunction(DOSE_UNCERTAINTY, [2, 0.1, 10, 0.1, 1, "metric"]),
		);
	});
	test("half a weighing is refused", () => {
		expect(() => callFunction(DOSE_UNCERTAINTY, [2, 0.1, 9, 1, 1.5])).toThrow(
			"weighings must be a whole number, 1 or more, got 1.5",
		);
	});
});
