import { describe, expect, test } from "vitest";
import { openWorkbook } from "../workbook";
import { struckAtEach, studioWithJob } from "./strikes";

describe("a service that fails at any call of creating a job", {
	timeout: 1_200_000,
}, () => {
	test("in a blank workbook leaves it blank", async () => {
		const desk = await openWorkbook();
		const before = desk.save();
		desk.dispose();
		const { calls } = await struckAtEach({
			before,
			name: "createDemoJob",
			args: ["metric"],
		});
		expect(calls).toBeGreaterThan(200);
	});

	test("beside another job leaves the workbook as it was", async () => {
		const { calls } = await struckAtEach({
			before: await studioWithJob(),
			name: "createDemoJob",
			args: ["metric"],
		});
		expect(calls).toBeGreaterThan(100);
	});
});
