import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Desk, SavedWorkbook } from "../../../src/desk/contract";
import { openWorkbook, savedDemo } from "../workbook";
import { deleteColumn, insertColumn, otherNumbers, shownIn } from "./meddle";

let saved: SavedWorkbook;
let desk: Desk;

beforeAll(async () => {
	saved = await savedDemo();
	desk = await openWorkbook({ saved });
}, 60_000);
afterAll(() => desk.dispose());

/** Opened again: a workbook in which a column was taken out between answers may show too little. */
async function again() {
	desk.dispose();
	desk = await openWorkbook({ saved });
}

/** The local engine reads a moved name anew only in a workbook that it opens. */
async function openAgain() {
	const meddled = desk.save();
	desk.dispose();
	desk = await openWorkbook({ saved: meddled });
}

describe("a column put in among those of a tab", { timeout: 120_000 }, () => {
	test.each([
		["Studio", [0, 1, 2, 4]],
		["Mixes", [0, 1, 2, 6, 11]],
		["Pigments", [0, 1, 2, 3, 4, 5, 6, 7]],
		["Swatches", [0, 1, 4, 5, 12, 14]],
		["Stock", [0, 1, 2, 5, 6]],
		["Jobs", [0, 1, 2, 6, 11, 16, 20, 26]],
		["1 Cure", [0, 1, 2, 3, 8, 11, 13]],
		["1 Cost", [0, 1, 2, 3, 5, 8]],
		["1 Quote", [1, 3, 4]],
	] as const)("%s shows no other number", async (tab, places) => {
		await again();
		const before = shownIn(desk, tab);
		for (const at of places) {
			await insertColumn(desk, tab, at);
			const other = otherNumbers(before, shownIn(desk, tab), tab, at);
			expect(other, `before column ${at + 1}`).toEqual([]);
			await deleteColumn(desk, tab, at);
			if (desk.errors().length > 0) await again();
		}
	});

	// names lead to these tabs
	test.each([
		["1 Job", [0, 3, 10, 16, 18, 29]],
		["1 Tones", [0, 3, 7, 21, 27, 31]],
		["1 Pour card", [0, 4, 7, 19, 21]],
	] as const)("%s shows no other number", async (tab, places) => {
		await again();
		const before = shownIn(desk, tab);
		for (const at of places) {
			await insertColumn(desk, tab, at);
			await openAgain();
			const other = otherNumbers(before, shownIn(desk, tab), tab, at);
			expect(other, `before column ${at + 1}`).toEqual([]);
			await again();
		}
	});
});

test("a column more between those of Pigments and Stock changes nothing at all", async () => {
	await again();
	const { "1 Tones": tones, "1 Cost": cost } = shownIn(desk, "Jobs");
	await insertColumn(desk, "Pigments", 5);
	await insertColumn(desk, "Stock", 1);
	await openAgain();
	const now = shownIn(desk, "Jobs");
	expect(now["1 Tones"]).toEqual(tones);
	expect(now["1 Cost"]).toEqual(cost);
}, 60_000);
