import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Desk, Person } from "../../src/desk/contract";
import { basisOf } from "../../src/job/answers/basis";
import { saying } from "../../src/job/answers/known";
import {
	checkedStudio,
	mixNames,
	type StudioFile,
	studioPigments,
} from "../../src/job/studiofile";
import type { PanelStart } from "../../src/sheets/messages";
import { demo } from "../../templates/index";
import { starterStudio } from "../../templates/starterstudio";
import { cellOf, typed } from "../job/found";
import { openWorkbook } from "./workbook";

let desk: Desk;
const asked: string[] = [];
const person: Person = {
	alert: ({ text }) => {
		asked.push(text);
		return "OK";
	},
};
beforeEach(async () => {
	desk = await openWorkbook({ enabled: false, person });
	asked.length = 0;
});
afterEach(() => desk.dispose());

const start = () => desk.call("panelStart") as Promise<PanelStart>;

describe("the menu", () => {
	test("is built before anybody has allowed anything", () => {
		expect(
			desk.menus().map(({ items }) => items.map(({ label }) => label)),
		).toEqual([
			[
				"Use in this workbook",
				"Start a job",
				"Open the panel",
				"Check this job",
				"Record a pour",
				"Copy a job",
				"Close a job",
				"Open a closed job",
				"Remove a job",
			],
		]);
	});

	test("is built on installing too, and its building touches nothing else", async () => {
		const before = desk.state();
		await desk.call("onInstall");
		expect(desk.menus()).toHaveLength(1);
		expect(Object.keys(desk.counts().byName)).toEqual([
			"SpreadsheetApp.getUi",
			"Ui.createAddonMenu",
			"Menu.addItem",
			"Menu.addToUi",
		]);
		expect(desk.state()).toBe(before);
	});

	test("makes the functions work in a file, and says so", async () => {
		desk.type("Sheet1", "A1", '=READ_LENGTH("2 m")');
		await desk.settle();
		expect(desk.read("Sheet1", "A1")).toEqual([["#NAME?"]]);
		await desk.choose("Use in this workbook");
		desk.type("Sheet1", "A2", '=READ_LENGTH("2 m")');
		await desk.settle();
		// 2 m are 2000 mm
		expect(desk.read("Sheet1", "A2")).toEqual([[2000]]);
		expect(asked.join()).toContain("functions now work in this workbook");
	});

	test.each(["Start a job", "Open the panel"])(
		"%s opens the panel",
		async (label) => {
			await desk.choose(label);
			expect(desk.sidebar()?.title).toBe("Tonefold");
			expect(desk.sidebar()?.html).toContain('<div id="panel"');
		},
	);

	test("Start a job opens it at that view", async () => {
		await desk.choose("Start a job");
		expect(desk.sidebar()?.html).toContain(
			'<div id="opening" data-view="newjob" data-job="0"></div>',
		);
	});
});

describe("what the panel starts with", { timeout: 60_000 }, () => {
	test("is the starter before there are studio tabs, and nothing is written", async () => {
		const before = desk.state();
		const { units, unitsFixed, studio, inOtherUnits, jobs } = await start();
		expect([units, unitsFixed, jobs]).toEqual(["us", false, []]);
		expect(mixNames(studio).length).toBeGreaterThanOrEqual(3);
		expect(studioPigments(studio)).toContain("Umber");
		expect([studio, inOtherUnits].map((one) => one?.settings.units)).toEqual([
			"us",
			"metric",
		]);
		expect(desk.state()).toBe(before);
	});

	test("is the studio's own afterwards, with its jobs", async () => {
		await desk.call("createDemoJob", ["metric"]);
		desk.type(...cellOf("Studio.currency"), "CHF");
		desk.type("Pigments", "E5", "");
		desk.type("Pigments", "H5", "30");
		desk.type("Mixes", "A5", "My mix");
		const now = await start();
		expect(now).toMatchObject({
			units: "metric",
			unitsFixed: true,
			studio: { settings: { currency: "CHF", units: "metric" } },
			jobs: [{ number: 1, title: "Breakfast room and two baths" }],
		});
		expect(now.inOtherUnits).toBeUndefined();
		// as typed, blanks left out
		expect(now.studio.mixes[0]).toMatchObject({
			mix: "My mix",
			ingredient: "Portland cement",
			parts: 583,
			specificGravity: 3.15,
			binderShare: 1,
			cementShare: 1,
			pack: 25,
			packPrice: 9,
		});
		expect(now.studio.pigments[0]).toMatchObject({
			name: "Umber",
			pack: 1000,
			packPrice: 30,
		});
		expect(now.studio.pigments[0]).not.toHaveProperty("maximum");
	});

	test("has the studio's numbers as they are typed: what is none is said where it counts", async () => {
		await desk.call("createDemoJob", ["metric"]);
		const wrong: [tab: string, cell: string, text: string, sentence: RegExp][] =
			[
				[...cellOf("Studio.mixer_capacity"), "", /: mixer capacity/],
				[...cellOf("Studio.air"), "little", /^Look: .*air .* got "little"/],
				[
					"Mixes",
					"C6",
					"some",
					/Fly ash on the Mixes tab: parts must be a number, got "some"$/,
				],
				["Pigments", "E6", "much", /Black on the Pigments tab: maximum dose/],
			];
		for (const [tab, cell, text, sentence] of wrong) {
			const right = String(desk.read(tab, cell)[0]?.[0]);
			await typed(desk, [tab, cell, text]);
			const { studio } = await start();
			const mix = mixNames(studio)[0] ?? "";
			const { loads, tones } = basisOf(studio, { ...demo.metric, mix });
			const said = [loads.castings, tones.rows[0]?.headroom].map(
				(known) => known && saying(known),
			);
			expect(said.join("\n")).toMatch(new RegExp(sentence.source, "m"));
			await typed(desk, [tab, cell, right]);
		}
	});

	test("is a sentence when the units are none", async () => {
		await desk.call("createDemoJob", ["metric"]);
		desk.type(...cellOf("Studio.units"), "imperial");
		await expect(start()).rejects.toThrow(
			/^Units on the Studio tab must be metric or us: undo/,
		);
	});

	test("is a sentence when a studio tab is gone", async () => {
		await desk.call("createDemoJob", ["metric"]);
		const workbook = desk.engine.api.getActiveWorkbook();
		const mixes = workbook?.getSheetByName("Mixes");
		if (mixes) workbook?.deleteSheet(mixes);
		await expect(start()).rejects.toThrow(
			"The name studio_mixes is gone, and its cells or their tab perhaps too",
		);
		await expect(desk.call("createDemoJob", ["metric"])).rejects.toThrow(
			"The name studio_mixes is gone, and its cells or their tab perhaps too",
		);
	});
});

test("the studio's file is what its tabs hold, and a studio file", async () => {
	await desk.choose("Use in this workbook");
	await desk.call("createDemoJob", ["metric"]);
	const file = (await desk.call("studioFile")) as StudioFile;
	const { jobs, closedDays, log, ...typed } = file;
	const starter = JSON.parse(
		JSON.stringify(starterStudio("metric"), (_, value) =>
			value === "" ? undefined : value,
		),
	);
	expect(typed).toEqual(starter);
	expect([closedDays, log]).toEqual([undefined, []]);
	expect(jobs).toMatchObject([
		{ job: 1, title: demo.metric.title, pour: demo.metric.pourDate },
	]);
	expect(checkedStudio(file)).toBe(file);
});

test.each([
	["en_US", ","],
	["de_DE", ";"],
	["fr_FR", ";"],
	["pt_BR", ";"],
] as const)("in %s arguments stand apart by %s", async (locale, separator) => {
	desk.dispose();
	desk = await openWorkbook({ locale });
	expect((await start()).separator).toBe(separator);
});

describe("a formula put in", () => {
	test("goes into the current cell and says where", async () => {
		desk.select("Sheet1", "C4");
		expect(await desk.call("insertFormula", ['=READ_LENGTH("2 m")'])).toBe(
			"C4",
		);
		expect(desk.formula("Sheet1", "C4")).toBe('=READ_LENGTH("2 m")');
	});

	test("never replaces what is there", async () => {
		desk.type("Sheet1", "C4", "mine");
		desk.select("Sheet1", "C4");
		await expect(
			desk.call("insertFormula", ["=READ_LENGTH(1)"]),
		).rejects.toThrow("C4 is not blank");
		expect(desk.read("Sheet1", "C4")).toEqual([["mine"]]);
	});

	test.each([["READ_LENGTH(1)"], [""], [7], [null]])(
		"%j is none",
		async (text) => {
			await expect(desk.call("insertFormula", [text])).rejects.toThrow(
				"A formula starts with =",
			);
		},
	);
});

describe("called from a cell", () => {
	test.each([
		'=createDemoJob("metric")',
		"=onOpen()",
		"=useInThisWorkbook()",
		"=startAJob()",
		"=panelStart()",
		'=insertFormula("=1+1")',
	])("%s fails and harms nothing", async (formula) => {
		await desk.choose("Use in this workbook");
		asked.length = 0;
		desk.type("Sheet1", "B2", formula);
		await desk.settle();
		expect(desk.tabs()).toEqual(["Sheet1"]);
		expect(desk.read("Sheet1", "B2")).toEqual([["#ERROR!"]]);
		expect(asked).toEqual([]);
		expect(desk.sidebar()).toBeUndefined();
	});
});
