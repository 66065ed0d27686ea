import { isDeepStrictEqual } from "node:util";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Desk, SavedWorkbook } from "../../../src/desk/contract";
import { openWorkbook, savedDemo } from "../workbook";
import {
	deleteColumn,
	insertColumn,
	otherNumbers,
	type Shown,
	sheetOf,
	shownIn,
} from "./meddle";

let saved: SavedWorkbook;
let desk: Desk;
let before: Shown;

beforeAll(async () => {
	saved = await savedDemo();
	desk = await openWorkbook({ saved });
	before = Object.assign({}, ...desk.tabs().map((tab) => shownIn(desk, tab)));
});
afterAll(() => desk.dispose());

/** The desk with the workbook as it was: one in which a column was taken out between answers may show too little. */
async function openWhole(tab: string) {
	const now = shownIn(desk, tab);
	if (
		Object.keys(now).every((name) => isDeepStrictEqual(now[name], before[name]))
	)
		return;
	desk.dispose();
	desk = await openWorkbook({ saved });
}

/** The desk with a column before each of these: the local engine reads a moved name anew only in a workbook that it opens. */
async function openWithColumns(
	...places: readonly [tab: string, at: number][]
) {
	desk.dispose();
	desk = await openWorkbook({ saved, quick: true });
	for (const [tab, at] of places) sheetOf(desk, tab).insertColumnsBefore(at, 1);
	const meddled = desk.save();
	desk.dispose();
	desk = await openWorkbook({ saved: meddled });
}

/** Numbers that are others since a column was put in. */
const others = (tab: string, at: number) =>
	otherNumbers(before, shownIn(desk, tab), tab, at);

describe("a column put in among those of a tab", { timeout: 600_000 }, () => {
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
		for (const at of places) {
			await openWhole(tab);
			await insertColumn(desk, tab, at);
			expect(others(tab, at), `before column ${at + 1}`).toEqual([]);
			await deleteColumn(desk, tab, at);
		}
	});

	// names lead to these tabs
	test.each([
		["1 Job", [0, 3, 10, 16, 18, 29]],
		["1 Tones", [0, 3, 7, 21, 27, 31]],
		["1 Pour card", [0, 4, 7, 19, 21]],
	] as const)("%s shows no other number", async (tab, places) => {
		for (const at of places) {
			await openWithColumns([tab, at]);
			expect(others(tab, at), `before column ${at + 1}`).toEqual([]);
		}
	});
});

test("a column more between those of Pigments and Stock changes nothing at all", async () => {
	await openWithColumns(["Pigments", 5], ["Stock", 1]);
	const now = shownIn(desk, "Jobs");
	expect(now["1 Tones"]).toEqual(before["1 Tones"]);
	expect(now["1 Cost"]).toEqual(before["1 Cost"]);
});
