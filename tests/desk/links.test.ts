import { describe, expect, it } from "vitest";
import { entry, open } from "./open";

/** A second tab, and in the first a link to its C7, with the label `14` the way the body has it. */
const linked = (label: string) =>
	entry(
		`var t = ss.insertSheet('14 Job'); s.getRange('A1').setFormula('=HYPERLINK("#gid=' + t.getSheetId() + '&range=C7"${label})'); return t.getSheetId();`,
	);

describe("a link to a tab", () => {
	it.each([
		['; "14"', "14"],
		["; 14", 14],
	])("with the label%s shows it, and leads there", async (label, shown) => {
		const desk = await open(linked(label));
		const id = await desk.call("run");
		expect(desk.read("Sheet1", "A1")).toEqual([[shown]]);
		expect(desk.display("Sheet1", "A1")).toEqual([["14"]]);
		expect(desk.errors()).toEqual([]);
		expect(desk.linkAt("Sheet1", "A1")).toEqual({
			address: `#gid=${id}&range=C7`,
			tab: "14 Job",
			range: "C7",
		});
	});

	it("without a label shows its address", async () => {
		const desk = await open(linked(""));
		const id = await desk.call("run");
		expect(desk.read("Sheet1", "A1")).toEqual([[`#gid=${id}&range=C7`]]);
	});

	it("may be put together from cells, and follows them", async () => {
		const desk = await open(
			entry(
				"var t = ss.insertSheet('B'); s.getRange('B1:B2').setValues([[t.getSheetId()], [s.getSheetId()]]); s.getRange('A1').setFormula('=HYPERLINK(\"#gid=\"&B1; \"go\")');",
			),
		);
		await desk.call("run");
		expect(desk.linkAt("Sheet1", "A1")?.tab).toBe("B");
		desk.type("Sheet1", "B1", String(desk.read("Sheet1", "B2")[0]?.[0]));
		await desk.settle();
		expect(desk.linkAt("Sheet1", "A1")?.tab).toBe("Sheet1");
	});
});

it("a link to elsewhere leads to no tab, and a cell without one nowhere", async () => {
	const desk = await open(entry(""));
	desk.type("Sheet1", "A1", '=HYPERLINK("https://example.com/","x")');
	await desk.settle();
	expect(desk.read("Sheet1", "A1")).toEqual([["x"]]);
	expect(desk.linkAt("Sheet1", "A1")).toEqual({
		address: "https://example.com/",
	});
	desk.type("Sheet1", "A1", "x");
	await desk.settle();
	expect(desk.linkAt("Sheet1", "A1")).toBeUndefined();
});

it("a link that reads an error shows it", async () => {
	const desk = await open(entry(""));
	desk.type("Sheet1", "A1", '=HYPERLINK("#gid="&1/0,"x")');
	await desk.settle();
	expect(desk.read("Sheet1", "A1")).toEqual([["#DIV/0!"]]);
});
