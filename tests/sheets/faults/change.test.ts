import { beforeAll, describe, expect, test } from "vitest";
import type { SavedWorkbook } from "../../../src/desk/contract";
import type { MixerState } from "../../../src/sheets/messages";
import { openWorkbook } from "../workbook";
import { struckAtEach, studioWithJob } from "./strikes";

const PNG =
	"data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

let before: SavedWorkbook;
beforeAll(async () => {
	before = await studioWithJob();
});

const WORKS = [
	["copying", "copyJob", [1]],
	["closing", "closeJob", [1]],
	["removing", "removeJob", [1]],
	["recording a pour", "recordPour", [1]],
	["putting a picture", "putPicture", [1, PNG]],
] as const;

describe("a service that fails at any call", { timeout: 1_200_000 }, () => {
	test.each(WORKS)(
		"of %s leaves all or nothing of it",
		async (_, name, args) => {
			const { calls } = await struckAtEach({ before, name, args });
			expect(calls).toBeGreaterThan(10);
		},
	);

	test("of weighing leaves all or nothing of it", async () => {
		const desk = await openWorkbook({ saved: before });
		const { planNumber } = (await desk.call("mixerState", [1])) as MixerState;
		desk.dispose();
		const weighing = {
			job: 1,
			load: 1,
			column: "weights",
			row: 1,
			value: 3,
			believed: "",
			planNumber,
		};
		const work = { before, name: "mixerWeigh", args: [weighing] };
		expect((await struckAtEach(work)).calls).toBeGreaterThan(10);
	});
});
