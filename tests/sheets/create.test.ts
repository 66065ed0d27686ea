import { SheetDataValidationModel } from "@univerjs/sheets-data-validation";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import type { JobMade } from "../../src/sheets/messages";
import { columnLetters } from "../../src/sheets/reading/a1";
import { demo } from "../../templates/index";
import { cellsOf } from "../job/found";
import { openWorkbook } from "./workbook";

const STUDIO_TABS = [
	"Studio",
	"Mixes",
	"Pigments",
	"Swatches",
	"Stock",
	"Jobs",
	"Pour log",
];
const JOB_TABS = ["Job", "Mold", "Tones", "Pour card", "Cure", "Cost", "Quote"];

let desk: Desk;
beforeEach(async () => {
	desk = await openWorkbook();
});
afterEach(() => desk.dispose());

const create = (job: object = demo.metric) =>
	desk.call("createJob", [job]) as Promise<JobMade>;

describe("a job", { timeout: 60_000 }, () => {
	test("gets its tabs, the studio's before them, and its first tab is opened", async () => {
		expect(await create()).toEqual({
			number: 1,
			tabs: JOB_TABS.map((tab) => `1 ${tab}`),
		});
		expect(desk.tabs()).toEqual([
			"Sheet1",
			...STUDIO_TABS,
			...JOB_TABS.map((tab) => `1 ${tab}`),
		]);
		expect(
			desk.engine.api.getActiveWorkbook()?.getActiveSheet().getSheetName(),
		).toBe("1 Job");
	});

	test("stands in the cells as it was given", async () => {
		await create();
		const cells = (name: string) => {
			const { tab, range } = desk.named(`job1_${name}`) ?? {
				tab: "",
				range: "",
			};
			return desk.read(tab, range);
		};
		expect(cells("pieces")[2]?.slice(0, 8)).toEqual([
			"Vanity top",
			2,
			"rectangle",
			"980",
			"52 cm",
			"",
			"",
			"30",
		]);
		expect(desk.read(...cellsOf("Tones.pigments", 1, 4))).toEqual([
			["Umber", "Black", "", ""],
		]);
		expect(desk.read("1 Tones", "A21:F22")).toEqual([
			["Bark", 0.15, 0.04, 0.005, "", ""],
			["Slate", 0.2, "", 0.02, "", ""],
		]);
	});

	test("leaves the tabs of another as they are", async () => {
		await create();
		const before = desk.tabs().map((tab) => allCells(tab));
		expect(await create({ ...demo.metric, client: "Another" })).toEqual({
			number: 2,
			tabs: JOB_TABS.map((tab) => `2 ${tab}`),
		});
		expect(
			desk
				.tabs()
				.slice(0, before.length)
				.map((tab) => allCells(tab)),
		).toEqual(before);
		desk.type("2 Job", "C3", "Third");
		await desk.settle();
		expect(desk.read("1 Job", "C3")).toEqual([[demo.metric.client]]);
	});

	test("goes beside what is called like its tabs already", async () => {
		desk.engine.api.getActiveWorkbook()?.create("1 Job", 5, 5);
		expect((await create()).number).toBe(2);
	});

	test("is known by its names when its tabs are renamed", async () => {
		await create();
		for (const tab of JOB_TABS.map((name) => `1 ${name}`))
			desk.engine.api
				.getActiveWorkbook()
				?.getSheetByName(tab)
				?.setName(`Bar ${tab}`);
		expect((await create()).number).toBe(2);
		const { jobs } = (await desk.call("panelStart")) as { jobs: object[] };
		expect(jobs.map((job) => Object.values(job)[0])).toEqual([1, 2]);
	});

	test("finds the studio's tabs whatever they are called", async () => {
		await create();
		for (const tab of ["Studio", "Mixes", "Pigments"])
			desk.engine.api
				.getActiveWorkbook()
				?.getSheetByName(tab)
				?.setName(`Our ${tab.toLowerCase()}`);
		expect((await create()).number).toBe(2);
		// the person's own, seven of the studio, six of each job
		expect(desk.tabs()).toHaveLength(1 + 7 + 2 * 7);
		expect(offered("2 Tones", "B3")).toBe("='Our mixes'!$A$5:$A$64");
		expect(desk.formula("2 Job", "L3")).toContain("'Our studio'!");
	});

	test("offers the studio's mixes and pigments, wherever they were moved", async () => {
		await create();
		const workbook = desk.engine.api.getActiveWorkbook();
		workbook?.getSheetByName("Mixes")?.insertColumnsBefore(0, 1);
		workbook?.getSheetByName("Pigments")?.insertRowsBefore(2, 2);
		expect((await create()).number).toBe(2);
		expect([offered("2 Tones", "B3"), offered("2 Tones", "C18")]).toEqual([
			"='Mixes'!$B$5:$B$64",
			"='Pigments'!$A$7:$A$36",
		]);
	});

	test("is not kept from its studio by a name of the person's own", async () => {
		const workbook = desk.engine.api.getActiveWorkbook();
		workbook?.insertDefinedName("studio_rent", "Sheet1!$A$1");
		expect((await create()).number).toBe(1);
	});

	test("in other units than the workbook's is refused", async () => {
		await create();
		const before = desk.state();
		await expect(create(demo.us)).rejects.toThrow(
			'"units" is "us", but this workbook is in metric',
		);
		expect(desk.state()).toBe(before);
	});

	test("does not replace a tab of the person's that is called like the studio's", async () => {
		desk.engine.api.getActiveWorkbook()?.create("mixes", 5, 5);
		const before = desk.state();
		await expect(create()).rejects.toThrow("a tab named Mixes already");
		expect(desk.state()).toBe(before);
	});

	/** The cells that the dropdown of a cell takes its list from. */
	const offered = (tab: string, cell: string) => {
		const workbook = desk.engine.api.getActiveWorkbook();
		const range = workbook?.getSheetByName(tab)?.getRange(cell);
		return desk.engine.univer
			.__getInjector()
			.get(SheetDataValidationModel)
			.getRuleByLocation(
				workbook?.getId() ?? "",
				range?.getSheetId() ?? "",
				range?.getRow() ?? 0,
				range?.getColumn() ?? 0,
			)?.formula1;
	};

	// The row of a new job on the Jobs tab is the only thing that comes to what was there.
	const allCells = (tab: string) => {
		const sheet = desk.engine.api.getActiveWorkbook()?.getSheetByName(tab);
		if (tab === "Sheet1") return desk.display(tab, "A1:B2");
		if (tab === "Jobs") return desk.display(tab, "A5:R5");
		return desk.display(
			tab,
			`A1:${columnLetters((sheet?.getMaxColumns() ?? 1) - 1)}${sheet?.getMaxRows() ?? 1}`,
		);
	};
});

describe("what a person typed", { timeout: 60_000 }, () => {
	const TEXTS = [
		'=HYPERLINK("http://example.org","pay here")',
		"+1",
		"-x",
		"@x",
		"'quoted",
		"3-4",
		"007",
		"5%",
		"TRUE",
		"=1+1\n=2",
	];

	test("stays that text, and no formula, number or date", async () => {
		const [first] = demo.metric.pieces;
		await create({
			...demo.metric,
			client: TEXTS[0],
			title: TEXTS[9],
			cutouts: [],
			pieces: TEXTS.map((name) => ({ ...first, name })),
			tones: TEXTS.slice(0, 6).map((name) => ({ name, share: 0.1, doses: {} })),
		});
		expect(desk.read("1 Job", "C3:C4")).toEqual([[TEXTS[0]], [TEXTS[9]]]);
		expect(desk.read("1 Job", "A13:A22").flat()).toEqual(TEXTS);
		expect(desk.read("1 Tones", "A19:A24").flat()).toEqual(TEXTS.slice(0, 6));
		const cells = ["C3", "C4", ...TEXTS.map((_, index) => `A${13 + index}`)];
		expect(cells.filter((cell) => desk.formula("1 Job", cell))).toEqual([]);
	});
});
