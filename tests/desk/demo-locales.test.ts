import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import type { CellValue, Desk } from "../../src/desk/desk";
import { openHeadlessDesk } from "../../src/desk/headless";
import { jobTabs, studioTabs } from "../../templates";
import { cellOf } from "../job/found";

const DIST = fileURLToPath(new URL("../../dist", import.meta.url));

function everything(desk: Desk): [string, CellValue[][]][] {
	return desk.tabs().map((tab) => {
		const sheet = desk.engine.api.getActiveWorkbook()?.getSheetByName(tab);
		if (!sheet) throw new Error(`there is no tab ${tab}`);
		const all = sheet.getRange(0, 0, sheet.getMaxRows(), sheet.getMaxColumns());
		return [tab, desk.read(tab, all.getA1Notation())];
	});
}

/** Every formula anew. */
async function recalculated(desk: Desk): Promise<void> {
	const formulas = desk.engine.api.getFormula();
	formulas.executeCalculation();
	await formulas.onCalculationEnd();
	await desk.settle();
}

/** The first piece becomes another, typed as a person does. */
async function edited(desk: Desk): Promise<void> {
	const length = cellOf("Job.pieces", 0, 3);
	expect(desk.read(...length)).toEqual([["2150"]]);
	desk.type(...length, "2500");
	await desk.settle();
}

it("the demo's workbook holds the same values in files of every locale, and no error", async () => {
	const workbooks = [];
	const changed = [];
	for (const locale of ["en_US", "de_DE", "fr_FR", "pt_BR"] as const) {
		const desk = await openHeadlessDesk(DIST, { locale, enabled: true });
		try {
			await desk.call("createDemoJob", ["metric"]);
			expect(desk.errors()).toEqual([]);
			workbooks.push(everything(desk));
			await recalculated(desk);
			expect(everything(desk)).toEqual(workbooks.at(-1));
			await edited(desk);
			expect(desk.errors()).toEqual([]);
			changed.push(everything(desk));
		} finally {
			desk.dispose();
		}
	}
	const [first, ...others] = workbooks;
	for (const other of others) expect(other).toEqual(first);
	for (const other of changed) expect(other).toEqual(changed[0]);
	expect(changed[0]).not.toEqual(first);
	// it holds something: the tabs of a studio and of a job, with numbers in them
	const numbers = first?.flatMap(([, rows]) =>
		rows.flat().filter((value) => typeof value === "number"),
	);
	expect(first?.map(([tab]) => tab)).toEqual(
		expect.arrayContaining([
			...studioTabs.map(({ name }) => name),
			...jobTabs.map(({ name }) => `1 ${name}`),
		]),
	);
	expect(numbers?.length).toBeGreaterThan(200);
}, 480_000);
