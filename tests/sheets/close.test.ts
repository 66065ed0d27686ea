/** A closed job keeps its tabs, and nothing of a live one. */
import { expect, test } from "vitest";
import { openSmall } from "./small/workbook";

test("keeps what leads to its tabs, and no name, formula or copy of them", async () => {
	const desk = await openSmall();
	await desk.call("createDemoJob", ["metric"]);
	desk.type("Sheet1", "A1", "='1 Job'!C4");
	await desk.settle();
	const tabs = desk.tabs();
	const [row] = desk.display("Jobs", "A5:R5");
	await desk.call("closeJob", [1, true]);
	expect(desk.tabs()).toEqual(tabs);
	expect(desk.display("Jobs", "A5:R5")).toEqual([row]);
	expect(desk.read("Sheet1", "A1")).toEqual([["Slab"]]);
	expect(desk.linkAt("Jobs", "A5")?.tab).toBe("1 Job");
	const names = desk.engine.api
		.getActiveWorkbook()
		?.getDefinedNames()
		.map((name) => name.getName());
	expect(names?.filter((name) => /job1/.test(name))).toEqual(["job1_closed"]);
	for (const cell of ["A1", "D3", "D4", "D6", "B11", "R11"])
		expect(desk.formula("1 Job", cell)).toBe("");
	expect(desk.read("1 Job", "A1")).toEqual([
		['=HYPERLINK("http://example.org","x")'],
	]);
	expect(desk.errors()).toEqual([]);
	desk.dispose();
}, 60_000);

test("jobs are made, closed and removed for a script that keeps no properties with the file", async () => {
	const desk = await openSmall({ bound: false });
	await desk.call("createDemoJob", ["metric"]);
	await desk.call("copyJob", [1]);
	await desk.call("closeJob", [1, true]);
	await desk.call("removeJob", [1]);
	expect(desk.tabs().filter((tab) => /^\d/.test(tab))).toEqual([
		"2 Job",
		"2 Tones",
		"2 Pour card",
	]);
	desk.dispose();
}, 60_000);
