import { describe, expect, test } from "vitest";
import type { CheckRow, JobChecks } from "../../src/sheets/messages";
import { executable, panelInBrowser } from "./opened";
import type { Answers } from "./page";
import { STUDIO } from "./studio";

const ROWS: CheckRow[] = [
	{
		what: "Pigment limit",
		result: "Look: dark has 7% of cement, over its limit of 6%",
		weight: 3,
		cell: "Tones!M11",
	},
	{
		what: "Load over capacity",
		result: "Look: load 1 is 110 kg, the mixer takes 100",
		weight: 2,
		cell: "Job!H48",
	},
	{ what: "Drying", result: "waits for wind", weight: 2, cell: "Cure!B9" },
	{ what: "Neighbors", result: "fine", weight: 1, cell: "" },
];

const checks = (rows: CheckRow[]): JobChecks => ({
	number: 3,
	title: "Two shelves",
	rows,
});

const READY: Answers = {
	panelStart: {
		gives: {
			...STUDIO,
			jobs: [
				{ number: 3, title: "Two shelves" },
				{ number: 4, title: "A bench" },
			],
			open: 4,
		},
	},
	keptDraft: { gives: "" },
	checkJob: { gives: checks(ROWS) },
	showCell: { gives: "3 Tones" },
};

describe.runIf(executable)("checks", { timeout: 60_000 }, () => {
	const { panel, page, shown, open, button, view } = panelInBrowser();

	async function atChecks(answers: Answers = READY) {
		await open(answers);
		await view("Checks");
	}

	test("what is wrong comes first, in words, each with its cell", async () => {
		await atChecks();
		await shown().getByText("2 things to look at").waitFor();
		expect(await shown().locator("li.card").allTextContents()).toEqual([
			expect.stringMatching(/^StopPigment limitdark has 7%/),
			expect.stringMatching(/^RiskyLoad over capacityload 1 is 110 kg/),
		]);
		expect(await panel().violations()).toEqual([]);
		await button("Go to Tones, M11").click();
		await expect
			.poll(() => panel().calls("showCell"))
			.toEqual([{ name: "showCell", args: [4, "Tones!M11"] }]);
		await shown().getByText("1 not known yet").click();
		await shown().getByText("waits for wind").waitFor();
		await shown().getByText("1 fine").click();
		await shown().getByText("Neighbors").waitFor();
		expect(await panel().violations()).toEqual([]);
	});

	test("none is said too", async () => {
		const fine = ROWS.map((row) => ({ ...row, result: "fine" }));
		await atChecks({ ...READY, checkJob: { gives: checks(fine) } });
		await shown().getByText("No check finds anything wrong").waitFor();
		expect(await shown().locator("li.card").count()).toBe(0);
	});

	test("it is checked again when one comes back, and for another job", async () => {
		await atChecks();
		await shown().getByText("2 things to look at").waitFor();
		panel().answer({ checkJob: { gives: checks(ROWS.slice(1)) } });
		await view("Functions");
		await view("Checks");
		await shown().getByText("One thing to look at").waitFor();
		await page().locator("#checks-job").selectOption("3");
		await shown().getByText("One thing to look at").waitFor();
		expect(
			panel()
				.calls("checkJob")
				.map(({ args }) => args),
		).toEqual([[4], [4], [3]]);
	});

	test("the keyboard alone is enough", async () => {
		await atChecks();
		await shown().getByText("2 things to look at").waitFor();
		const keys = page().keyboard;
		// from the tab: job, then the first cell
		await page().getByRole("tab", { name: "Checks" }).focus();
		await keys.press("Tab");
		await keys.press("Tab");
		await keys.press("Enter");
		await expect.poll(() => panel().calls("showCell")).toHaveLength(1);
	});

	test("a lost connection and a cell that is gone are told; the list stays", async () => {
		await atChecks({
			...READY,
			showCell: { fails: "Error: job 4 has no tab Tones any more" },
		});
		await button("Go to Tones, M11").click();
		await shown().getByText("has no tab Tones any more").waitFor();
		panel().answer({
			checkJob: { fails: "NetworkError: Connection failure due to HTTP 0" },
		});
		await button("Check again").click();
		await shown().getByText("The connection was lost.").waitFor();
		await shown().getByText("2 things to look at").waitFor();
		expect(await panel().violations()).toEqual([]);
	});

	test("without a job it leads to the first one", async () => {
		await atChecks({ ...READY, panelStart: { gives: STUDIO } });
		await shown().getByText("This workbook has no open job").waitFor();
		expect(await panel().violations()).toEqual([]);
		await button("Start a job").click();
		await page().getByLabel("Client").waitFor();
	});
});
