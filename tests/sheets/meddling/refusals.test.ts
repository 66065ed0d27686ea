import { beforeAll, describe, expect, test } from "vitest";
import type { Desk, SavedWorkbook } from "../../../src/desk/contract";
import { studioWithJob } from "../faults/strikes";
import { openWorkbook } from "../workbook";
import { sheetOf } from "./meddle";

let saved: SavedWorkbook;

beforeAll(async () => {
	saved = await studioWithJob();
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
async function refusal(by: (desk: Desk) => void, name: string, arg: unknown) {
	const desk = await meddled(by);
	const before = desk.save();
	const said = await desk.call(name, [arg], { quick: true }).then(
		() => "",
		(error: Error) => error.message,
	);
	const differs = desk.differsFrom(before, { butShown: true });
	desk.dispose();
	expect(differs, `${name} said: ${said}`).toBeUndefined();
	return said;
}

const ENTRIES = [
	["createDemoJob", "metric"],
	["copyJob", 1],
	["closeJob", 1],
	["recordPour", 1],
	["mixerState", 1],
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
const widen = (tab: string) => (desk: Desk) => {
	sheetOf(desk, tab).insertColumnsBefore(1, 1);
};

describe.each(ENTRIES)("%s", { timeout: 120_000 }, (entry, arg) => {
	test.each(["Studio", "Mixes", "Pigments", "Jobs", "Pour log"])(
		"without the %s tab says which is gone",
		async (tab) => {
			expect(await refusal(remove(tab), entry, arg)).toMatch(
				/(is|tab perhaps too|perhaps gone).*: bring it back with File, Version history$/,
			);
		},
	);

	test.each(["Studio", "Mixes", "Pigments", "Jobs", "Pour log"])(
		"with a column more on the %s tab says where",
		async (tab) => {
			expect(await refusal(widen(tab), entry, arg)).toMatch(
				new RegExp(
					`^On the ${tab} tab rows or columns were added, .* Undo that, then try again$`,
				),
			);
		},
	);

	test("without the name of the settings says so", async () => {
		expect(await refusal(unname("studio_settings"), entry, arg)).toMatch(
			/^The name studio_settings is gone/,
		);
	});
});

describe("a job", { timeout: 120_000 }, () => {
	test.each([
		"title",
		"mix_total",
		"pieces",
		"binder",
		"pigments",
		"load",
		"dates",
		"price",
		"total",
	])("without its name %s is not copied, but named", async (name) => {
		expect(await refusal(unname(`job1_${name}`), "copyJob", 1)).toMatch(
			new RegExp(`^The name job1_${name} is gone`),
		);
	});

	test.each(["1 Job", "1 Tones", "1 Pour card", "1 Cure", "1 Cost"])(
		"with a column more on %s is not copied, but told where",
		async (tab) => {
			expect(await refusal(widen(tab), "copyJob", 1)).toMatch(
				new RegExp(`^On the ${tab} tab rows or columns were added`),
			);
		},
	);

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
