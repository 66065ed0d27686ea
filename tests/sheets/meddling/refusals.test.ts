import { beforeAll, describe, expect, test } from "vitest";
import type { Desk, SavedWorkbook } from "../../../src/desk/contract";
import { openWorkbook, savedDemo } from "../workbook";
import { sheetOf } from "./meddle";

let saved: SavedWorkbook;

beforeAll(async () => {
	saved = await savedDemo();
}, 60_000);

const workbookOf = (desk: Desk) => {
	const workbook = desk.engine.api.getActiveWorkbook();
	if (!workbook) throw new Error("There is no workbook");
	return workbook;
};

/** The desk after a partner did this to it, nothing calculated. */
async function meddled(by: (desk: Desk) => void): Promise<Desk> {
	const desk = await openWorkbook({ saved, quick: true });
	by(desk);
	return desk;
}

/** What a person is told; the workbook is as it was before. */
async function refusal(
	by: (desk: Desk) => void,
	name: string,
	...args: unknown[]
) {
	const desk = await meddled(by);
	const before = desk.save();
	const said = await desk.call(name, args, { quick: true }).then(
		() => "",
		(error: Error) => error.message,
	);
	const differs = desk.differsFrom(before, { butShown: true });
	desk.dispose();
	expect(differs, `${name} said: ${said}`).toBeUndefined();
	return said;
}

const ENTRIES = [
	["createDemoJob", ["metric"]],
	["copyJob", [1]],
	// whatever is open
	["closeJob", [1, true]],
	["recordPour", [1]],
	["jobState", [1]],
] as const;

const rename = (tab: string, to: string) => (desk: Desk) => {
	sheetOf(desk, tab).setName(to);
};
const remove = (tab: string) => (desk: Desk) => {
	workbookOf(desk).deleteSheet(sheetOf(desk, tab));
};
const unname = (name: string) => (desk: Desk) => {
	workbookOf(desk).deleteDefinedName(name);
};
/** Types something else over the heading or label of a column: the first one of the region. */
const reword = (tab: string, cell: string) => (desk: Desk) => {
	sheetOf(desk, tab).getRange(cell).setValue("My own word");
};

/** What an entry point reads of the studio; the Pour log only where a load could be in it, Jobs where a row is written. */
const NEEDS: Readonly<Record<string, readonly string[]>> = {
	createDemoJob: ["Studio", "Mixes", "Pigments", "Jobs"],
	copyJob: ["Studio", "Mixes", "Pigments", "Jobs"],
	closeJob: ["Studio", "Mixes", "Pigments", "Jobs"],
	recordPour: ["Studio", "Mixes", "Pigments", "Pour log"],
	jobState: ["Studio", "Mixes", "Pigments", "Pour log"],
};

const BRING_BACK =
	/^The name \w+ is gone, and its cells or their tab perhaps too: bring it back with File, Version history$/;

describe.each(ENTRIES)("%s", { timeout: 120_000 }, (entry, args) => {
	test.each(NEEDS[entry] ?? [])(
		"without the %s tab says what to bring back",
		async (tab) => {
			expect(await refusal(remove(tab), entry, ...args)).toMatch(BRING_BACK);
		},
	);

	test("without the name of the settings says so", async () => {
		expect(await refusal(unname("studio_settings"), entry, ...args)).toMatch(
			BRING_BACK,
		);
	});

	test.each([
		["Studio", "Currency", "A5", /the label .* is gone: bring it back/],
		["Mixes", "Parts", "C4", /the heading Parts is gone: bring it back/],
		["Pigments", "Form", "B4", /the heading Form is gone: bring it back/],
	])(
		"with %s's %s worded otherwise says where",
		async (tab, _, cell, words) => {
			const said = await refusal(reword(tab, cell), entry, ...args);
			expect(said).toMatch(words);
			expect(said).toMatch(new RegExp(`^On the ${tab} tab `));
		},
	);

	test("in a workbook of 0.1 leaves it alone", async () => {
		expect(await refusal(unname("studio_version"), entry, ...args)).toMatch(
			/^Tonefold 0\.1 made the tabs of this workbook/,
		);
	});

	test("in a workbook of a later version leaves it alone", async () => {
		const later = (desk: Desk) => {
			const { tab, range } = desk.named("studio_version") ?? {
				tab: "",
				range: "",
			};
			sheetOf(desk, tab).getRange(range).setValue("9.0.0");
		};
		expect(await refusal(later, entry, ...args)).toMatch(
			/^Tonefold 9\.0\.0 made the tabs of this workbook/,
		);
	});
});

describe("a job", { timeout: 120_000 }, () => {
	test.each([
		"head",
		"pieces",
		"tones",
		"card",
		"load",
		"cure",
		"cost",
		"quote",
	])("without its name %s is not copied, but named", async (name) => {
		expect(await refusal(unname(`job1_${name}`), "copyJob", 1)).toMatch(
			new RegExp(`^The name job1_${name} is gone`),
		);
	});

	test.each([
		["1 Job", "A12", "the heading Piece is gone"],
		["1 Job", "A3", "the label Client is gone"],
		["1 Tones", "A3", "the label Mix is gone"],
		["1 Quote", "C3", "the label Date is gone"],
	])(
		"on %s with %s worded otherwise is not copied",
		async (tab, cell, words) => {
			const said = await refusal(
				(desk) => {
					sheetOf(desk, tab).getRange(cell).setValue("My own word");
				},
				"copyJob",
				1,
			);
			expect(said).toBe(
				`On the ${tab} tab ${words}: bring it back, for ${words.includes("label") ? "what stands beside it" : "its column"} is not read without`,
			);
		},
	);

	test("with a column in its line on the Jobs tab is not made", async () => {
		expect(
			await refusal(
				(desk) => sheetOf(desk, "Jobs").insertColumnsBefore(3, 1),
				"copyJob",
				1,
			),
		).toMatch(
			/^On the Jobs tab columns were added or moved .* Undo that, then try again$/,
		);
	});

	/** What was typed stays what it was, wherever a person puts a column or a row in. */
	test.each([
		["Studio", 1],
		["Mixes", 1],
		["Pigments", 0],
		["1 Job", 1],
		["1 Job", 5],
		["1 Tones", 1],
		["1 Tones", 3],
		["1 Pour card", 5],
		["1 Pour card", 8],
		["1 Cure", 1],
		["1 Cost", 1],
		["1 Cost", 2],
		["1 Quote", 3],
	])("with a column more on %s at %d reads as it did", async (tab, at) => {
		const desk = await meddled(() => undefined);
		const job = await desk.call("jobFile", [1], { quick: true });
		sheetOf(desk, tab).insertColumnsBefore(at, 1);
		expect(await desk.call("jobFile", [1], { quick: true })).toEqual(job);
		sheetOf(desk, tab).insertRowsBefore(2, 1);
		expect(await desk.call("jobFile", [1], { quick: true })).toEqual(job);
		desk.dispose();
	});

	test.each([
		["Pigments", "Colors"],
		["Jobs", "Orders"],
		["Studio", "Shop"],
		["1 Job", "Kitchen"],
	])("is copied where %s is called %s", async (tab, to) => {
		const desk = await meddled(rename(tab, to));
		await desk.call("copyJob", [1]);
		expect(desk.errors()).toEqual([]);
		expect(desk.display("2 Pour card", "C6:C10")).toEqual(
			desk.display("1 Pour card", "C6:C10"),
		);
		desk.dispose();
	});
});
