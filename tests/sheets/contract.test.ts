import { afterEach, describe, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { openHeadlessDesk } from "../../src/desk/headless";
import { registry } from "../../src/functions/index";
import { contractTab } from "../../src/sheets/contract/contracttab";
import { builtAddOn, openWorkbook } from "./workbook";

const TAB = "Contract check";
const CHECKED = `A5:C${contractTab(registry).rows}`;

let desk: Desk;
afterEach(() => desk.dispose());

async function checked(): Promise<void> {
	expect(await desk.call("contractCheck")).toBe(TAB);
	await desk.settle();
}

const count = () => desk.read(TAB, "A2")[0]?.[0];

/** Function and verdict of each line that has either. */
const verdicts = () =>
	desk
		.read(TAB, CHECKED)
		.map(([name, , verdict]) => [name, verdict])
		.filter(([name, verdict]) => name !== "" || verdict !== "");

/** A desk whose script has been changed. */
async function openChanged(change: (code: string) => string): Promise<void> {
	const addOn = await builtAddOn();
	const code = change(addOn.code);
	expect(code).not.toBe(addOn.code);
	desk = await openHeadlessDesk("", {
		addOn: { ...addOn, code },
		enabled: true,
	});
}

describe("the contract check", { timeout: 120_000 }, () => {
	test.each(["en_US", "de_DE"] as const)(
		"finds every function to agree in a %s file, and shows what each was asked",
		async (locale) => {
			desk = await openWorkbook({ locale });
			await checked();
			expect(desk.errors()).toEqual([]);
			expect(count()).toBe(`All ${registry.length} functions agree`);
			expect(verdicts()).toEqual(registry.map(({ name }) => [name, "agrees"]));
			const [[name, formula, , should] = []] = desk.display(TAB, "A5:D5");
			expect([name, formula, should]).toEqual([
				"READ_LENGTH",
				`READ_LENGTH("8' 1/2""";"us")`,
				"96.5",
			]);
		},
	);

	const other = "Look: it says something else";
	test.each([
		["a number off by a fiftieth", "UPLIFT", "1.02 * tonefold_.call", 0],
		["an error", "UPLIFT", "missing.call", 0],
		["a text for a number", "UPLIFT", '"17" || tonefold_.call', 0],
		["another text", "FAR_COLOR", '"#bcbcbd" || tonefold_.call', 0],
		["a row too few", "WEIGH_OUT", "[50, 50] || tonefold_.call", 2],
		["a row too many", "WEIGH_OUT", "[50, 50, 30, 1] || tonefold_.call", 3],
	])("finds %s, and nothing else", async (_, name, instead, below) => {
		await openChanged((code) =>
			code.replace(
				`{ return tonefold_.call("${name}"`,
				`{ return ${instead}("${name}"`,
			),
		);
		await checked();
		expect(count()).toBe("Look: rows that differ: 1");
		const all = desk.read(TAB, CHECKED);
		const at = all.findIndex(([first]) => first === name);
		expect(all.findIndex(([, , verdict]) => verdict === other)).toBe(
			at + below,
		);
		expect(all.filter(([, , verdict]) => verdict === other)).toHaveLength(1);
	});

	test("takes the place of its earlier tab, and leaves nothing else", async () => {
		desk = await openWorkbook();
		desk.type("Sheet1", "A1", "mine");
		const before = desk.state();
		await checked();
		await checked();
		expect(desk.tabs()).toEqual(["Sheet1", TAB]);
		const book = desk.engine.api.getActiveWorkbook();
		const tab = book?.getSheetByName(TAB);
		if (tab) book?.deleteSheet(tab);
		expect(desk.state()).toBe(before);
	});

	test("leaves a person's own tab of that name alone", async () => {
		desk = await openWorkbook();
		await checked();
		desk.type(TAB, "A1", "my contract");
		const before = desk.state();
		await expect(desk.call("contractCheck")).rejects.toThrow(
			"This workbook has a tab named Contract check already",
		);
		expect(desk.state()).toBe(before);
	});

	test("a fault leaves the workbook without it, and as it was", async () => {
		desk = await openWorkbook();
		const before = desk.state();
		await desk.call("contractCheck");
		const { services } = desk.counts();
		desk.dispose();
		for (let failAt = 1; failAt <= services; failAt += 6) {
			desk = await openWorkbook();
			await expect(desk.call("contractCheck", [], { failAt })).rejects.toThrow(
				"failed while accessing",
			);
			expect(desk.state(), `call ${failAt}`).toBe(before);
			desk.dispose();
		}
		desk = await openWorkbook();
	});

	test("is refused before anybody has allowed anything", async () => {
		desk = await openWorkbook();
		const before = desk.state();
		await expect(
			desk.call("contractCheck", [], { mode: "NONE" }),
		).rejects.toThrow("You do not have permission");
		expect(desk.state()).toBe(before);
	});

	test("waits its turn", async () => {
		desk = await openWorkbook();
		await desk.call("contractCheck");
		expect(desk.counts().byName["Lock.tryLock"]).toBe(1);
	});
});
