import { describe, expect, test } from "vitest";
import { callFunction } from "../../src/functions/call";
import { PIGMENT_HEADROOM } from "../../src/functions/headroom";
import { close } from "./close";

describe("PIGMENT_HEADROOM", () => {
	test("one row per tone; only pigments in it count; blank is 10%; over is negative", () => {
		close(
			callFunction(PIGMENT_HEADROOM, [
				[
					[0.02, 0.02],
					[0.07, 0],
					["", ""],
					[0, 0.05],
				],
				[["", 0.06]],
			]),
			// 6% − 4%; 10% − 7%; a blank row; 6% − 5%
			[[0.02], [0.03], [""], [0.01]],
		);
	});
	test("a maker's 15% is still 10%", () => {
		close(callFunction(PIGMENT_HEADROOM, [[[0.12]], [[0.15]]]), -0.02);
	});
	test("doses of binder are more of cement", () => {
		// 4% of binder that is half cement is 8% of cement
		close(callFunction(PIGMENT_HEADROOM, [[[0.04]], [[""]], 0.5]), 0.02);
	});
	test.each([
		[[[[0.1, 0.1]], [[0.1, 0.1, 0.1]]], "doses has 2 columns and maxima has 3"],
		[[[[0.1, 0.1]], [[0.1], [0.1]]], "maxima must be one row, got 2"],
	])("refuses other shapes", (args, message) => {
		expect(() => callFunction(PIGMENT_HEADROOM, args)).toThrow(message);
	});
});
