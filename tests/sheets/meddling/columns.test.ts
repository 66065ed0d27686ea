import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Desk, SavedWorkbook } from "../../../src/desk/contract";
import { studioWithJob } from "../faults/strikes";
import { openWorkbook } from "../workbook";
import {
	columnsOf,
	deleteColumn,
	insertColumn,
	otherNumbers,
	shownIn,
} from "./meddle";

let saved: SavedWorkbook;
let desk: Desk;

beforeAll(async () => {
	saved = await studioWithJob();
	desk = await openWorkbook({ saved });
}, 60_000);
afterAll(() => desk.dispose());

/** Opened again: a workbook in which a column was taken out between answers may show too little. */
async function again() {
	desk.dispose();
	desk = await openWorkbook({ saved });
}

describe("a column put in at each place of a tab", { timeout: 120_000 }, () => {
	test.each([
		"Studio",
		"Mixes",
		"Pigments",
		"Swatches",
		"Stock",
		"Jobs",
		"1 Cure",
		"1 Cost",
		"1 Quote",
	])("%s shows no other number", async (tab) => {
		const before = shownIn(desk);
		for (let at = 0; at < columnsOf(desk, tab); at++) {
			await insertColumn(desk, tab, at);
			const other = otherNumbers(before, shownIn(desk), tab, at);
			expect(other, `before column ${at + 1}`).toEqual([]);
			await deleteColumn(desk, tab, at);
			if (JSON.stringify(shownIn(desk)) !== JSON.stringify(before))
				await again();
		}
	});

	// names lead to these tabs, and the local engine reads a moved name anew only in a workbook that it opens
	test.each([
		["1 Job", [0, 1, 3, 8, 10, 12, 16, 19, 21, 29, 34]],
		["1 Tones", [0, 1, 2, 3, 7, 10, 20, 25, 27, 31]],
		["1 Pour card", [0, 2, 4, 7, 11, 19, 21]],
	] as const)("%s shows no other number", async (tab, places) => {
		await again();
		const before = shownIn(desk);
		for (const at of places) {
			await insertColumn(desk, tab, at);
			const meddled = desk.save();
			desk.dispose();
			desk = await openWorkbook({ saved: meddled });
			const other = otherNumbers(before, shownIn(desk), tab, at);
			expect(other, `before column ${at + 1}`).toEqual([]);
			await again();
		}
	});
});

test("a column more between those of Pigments and Stock changes nothing at all", async () => {
	await again();
	const { "1 Tones": tones, "1 Cost": cost } = shownIn(desk);
	await insertColumn(desk, "Pigments", 5);
	await insertColumn(desk, "Stock", 1);
	const now = shownIn(desk);
	expect(now["1 Tones"]).toEqual(tones);
	expect(now["1 Cost"]).toEqual(cost);
}, 60_000);
