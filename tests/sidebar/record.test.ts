import { json } from "node:stream/consumers";
import { describe, expect, test } from "vitest";
import { toRecord } from "../../src/job/answers/card/torecord";
import { wholeOf } from "../../src/job/answers/whole";
import { cardScript, pour, stateWith } from "./mixer/card";
import { executable, panelInBrowser } from "./opened";
import type { Answers } from "./page";
import { STUDIO } from "./studio";

/** Light and dark as in card.ts, dark with a little black in it; what was weighed of the first load. */
const STATE = stateWith({
	tones: [
		{ name: "light", share: 0.75, doses: { Umber: 0.01 } },
		{ name: "dark", share: 0.25, doses: { Umber: 0.04, Black: 0.005 } },
	],
	pours: [pour(1, { steps: { 1: 500, 2: 75.4 }, finished: "yes" }), pour(2)],
});

/** What the log has of the first load. */
const LOGGED = toRecord(wholeOf(STATE.studio, STATE.job), 3, []).flatMap(
	({ row }) => (row ? [row] : []),
);

const READY: Answers = {
	panelStart: {
		gives: { ...STUDIO, jobs: [{ number: 3, title: "Two shelves" }], open: 3 },
	},
	keptDraft: { gives: "" },
	jobState: { gives: STATE },
	recordPour: { gives: { loads: [1], left: ["Load 2 has no weights."] } },
	recordSwatch: { gives: 17 },
};

describe.runIf(executable)("record", { timeout: 60_000 }, () => {
	const { panel, page, shown, open, field, button, view } = panelInBrowser();

	async function atRecord(answers: Answers = READY) {
		await open(answers);
		await view("Record");
		await field("Doses of the tone").waitFor();
	}
	const color = () => page().getByLabel("Color: #b8a591, or L*, a*, b*");

	test("a pour says what it will write, then what it has written and left", async () => {
		await atRecord();
		await shown().getByText("2 weights").waitFor();
		await shown().getByText("not weighed").waitFor();
		expect(await panel().violations()).toEqual([]);
		expect(panel().calls("recordPour")).toEqual([]);
		panel().answer({
			jobState: { gives: { ...STATE, recorded: [1], logged: LOGGED } },
		});
		await button("Write load 1 to the Pour log").click();
		await shown().getByText("The Pour log now has load 1.").waitFor();
		await shown().getByText("Load 2 has no weights.").waitFor();
		await shown().getByText("in the log", { exact: true }).waitFor();
		expect(await button("Nothing new to record").isDisabled()).toBe(true);
		expect(panel().calls("recordPour")).toEqual([
			{ name: "recordPour", args: [3] },
		]);
		expect(await panel().violations()).toEqual([]);
	});

	test("a load that changed since is written anew, and a half-weighed one can be left as it is", async () => {
		const changed = stateWith({
			pours: [
				pour(1, { steps: { 1: 550, 2: 75.4 }, finished: "yes" }),
				pour(2, { steps: { 1: 500 } }),
			],
			tones: STATE.job.tones,
		});
		const card = cardScript({ ...changed, recorded: [1], logged: LOGGED });
		await atRecord({
			...READY,
			jobState: { does: card.jobState },
			weigh: { does: card.weigh },
			recordPour: { gives: { loads: [2], again: [1], left: [] } },
		});
		await shown().getByText("changed since it was recorded").waitFor();
		await button("Leave load 2 as it is").click();
		await shown().getByText("Load 2 is left as it is.").waitFor();
		expect(card.load(2).finished).toBe("as it is");
		await button("Write loads 1 and 2 to the Pour log").click();
		await shown()
			.getByText("What the log says of load 1 is written anew.")
			.waitFor();
		expect(await panel().violations()).toEqual([]);
	});

	test("a sample of a poured tone takes the dose that it reached", async () => {
		// 550 g in 50 kg of binder: 1.1%.
		await atRecord({
			...READY,
			jobState: {
				gives: stateWith({ pours: [pour(1, { steps: { 1: 550 } }), pour(2)] }),
			},
		});
		await field("Doses of the tone").selectOption("light, load 1 as reached");
		expect(await field("Umber").inputValue()).toBe("1.1");
		await field("Doses of the tone").selectOption("light, as planned");
		expect(await field("Umber").inputValue()).toBe("1");
	});

	test("a load of a plain tone has its ingredients' weights alone, and can be recorded", async () => {
		await atRecord({
			...READY,
			jobState: {
				gives: stateWith({
					tones: [{ name: "plain", share: 1 }],
					pours: [
						pour(1, {
							weighed: { "Dry mix": 88, Water: 22 },
							finished: "yes",
						}),
					],
				}),
			},
		});
		await shown().getByText("2 weights").waitFor();
		await button("Write load 1 to the Pour log").click();
		await shown().getByText("The Pour log now has load 1.").waitFor();
	});

	test("a load that was weighed is recorded once somebody says that it is finished", async () => {
		const card = cardScript(
			stateWith({ pours: [pour(1, { steps: { 1: 500 } }), pour(2)] }),
		);
		await atRecord({
			...READY,
			jobState: { does: card.jobState },
			weigh: { does: card.weigh },
		});
		await shown().getByText("1 weight, not finished").waitFor();
		expect(await button("Nothing new to record").isDisabled()).toBe(true);
		expect(await panel().violations()).toEqual([]);
		await button("Load 1 is finished").click();
		await button("Write load 1 to the Pour log").waitFor();
		expect(card.load(1).finished).toBe("yes");
		expect(panel().calls("recordPour")).toEqual([]);
	});

	test("the job is kept as a file, and copied as its text", async () => {
		await atRecord();
		const saving = page().waitForEvent("download");
		await shown().getByRole("link", { name: "Save job-3.json" }).click();
		const file = await saving;
		expect(file.suggestedFilename()).toBe("job-3.json");
		expect(await json(await file.createReadStream())).toEqual(STATE.job);
		await shown().getByText("As text").click();
		await button("Copy the text").click();
		await shown()
			.getByText(/^It is (copied|selected)/)
			.waitFor();
		expect(JSON.parse(await field("The file's text").inputValue())).toEqual(
			STATE.job,
		);
		expect(
			await page().evaluate(() => String(document.getSelection()).length),
		).toBeGreaterThan(100);
		expect(await panel().violations()).toEqual([]);
	});

	test("a measured color takes its doses from the tone, and says its row first", async () => {
		await atRecord();
		await field("Doses of the tone").selectOption("dark, as planned");
		expect(await field("Umber").inputValue()).toBe("4");
		expect(await field("Black").inputValue()).toBe("0.5");
		await color().fill("52.1, 8.0, 14.2");
		await field("Finish").selectOption("honed");
		await field("Sealed").selectOption("sealed");
		await field("Age, days").fill("28");
		await field("Lot").fill("B7");
		await shown()
			.getByText(
				"Plain mix · 4% Umber + 0.5% Black · honed, sealed, dry · 52.1, 8.0, 14.2 · 28 days old · lot B7",
			)
			.waitFor();
		expect(await panel().violations()).toEqual([]);
		expect(panel().calls("recordSwatch")).toEqual([]);
		await button("Add to Swatches").click();
		await shown().getByText("It is in row 17 of Swatches.").waitFor();
		expect(panel().calls("recordSwatch")).toEqual([
			{
				name: "recordSwatch",
				args: [
					{
						mix: "Plain mix",
						finish: "honed",
						sealed: "sealed",
						state: "dry",
						doses: { Umber: 0.04, Black: 0.005 },
						color: "52.1, 8.0, 14.2",
						ageDays: 28,
						lot: "B7",
					},
				],
			},
		]);
	});

	test("mistakes stand at their fields", async () => {
		await atRecord();
		await color().fill("brown");
		await field("Age, days").fill("old");
		await field("Umber").fill("a pinch");
		await button("Add to Swatches").click();
		for (const told of [
			'color must be #rrggbb or "L*, a*, b*"',
			'age must be a number of days, 0 or more, got "old"',
			'Umber must be a percentage of binder, got "a pinch"',
		])
			await shown().getByText(told).waitFor();
		expect(await panel().violations()).toEqual([]);
		expect(panel().calls("recordSwatch")).toEqual([]);
		await color().fill("#5b4636");
		expect(await color().getAttribute("aria-invalid")).toBeNull();
	});

	test("a lost answer keeps what was typed and says where to look", async () => {
		await atRecord({
			...READY,
			recordSwatch: { fails: "NetworkError: Connection failure due to HTTP 0" },
			recordPour: { fails: "Error code PERMISSION_DENIED" },
		});
		await color().fill("#5b4636");
		await button("Add to Swatches").click();
		await shown()
			.getByText("Look at Swatches before adding it again")
			.waitFor();
		expect(await color().inputValue()).toBe("#5b4636");
		await button(/^Write load 1/).click();
		await shown().getByText("Several accounts are signed in").waitFor();
		expect(await panel().violations()).toEqual([]);
	});

	test.each(['=HYPERLINK("http://x")', '<img src=x onerror="1">', "🪨 وعاء"])(
		"%s is text and nothing else",
		async (text) => {
			await atRecord({
				...READY,
				jobState: {
					gives: stateWith({
						tones: [{ name: text, share: 1, doses: { Umber: 0.01 } }],
					}),
				},
			});
			await field("Doses of the tone").selectOption(text);
			await color().fill("#5b4636");
			await field("Remark").fill(text);
			await field("Lot").fill(text);
			await page()
				.locator(".will", { hasText: `lot ${text}` })
				.waitFor();
			await button("Add to Swatches").click();
			await shown().getByText("It is in row 17").waitFor();
			expect(panel().calls("recordSwatch")[0]?.args[0]).toMatchObject({
				remark: text,
				lot: text,
			});
			expect(await page().locator("img").count()).toBe(0);
		},
	);

	test("the keyboard alone is enough", async () => {
		await atRecord();
		await page().locator("#sample-tone").focus();
		const keys = page().keyboard;
		await keys.press("ArrowDown");
		await color().focus();
		await keys.type("#d9cbb3");
		await button("Add to Swatches").focus();
		await keys.press("Enter");
		await shown().getByText("It is in row 17").waitFor();
		expect(panel().calls("recordSwatch")[0]?.args[0]).toMatchObject({
			doses: { Umber: 0.01 },
			color: "#d9cbb3",
		});
	});
});
