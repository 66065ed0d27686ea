import { describe, expect, test } from "vitest";
import { basisOf } from "../../../src/job/answers/basis";
import { planNumberOf } from "../../../src/job/answers/card/planfit";
import { orNull } from "../../../src/job/answers/known";
import { panelHtml } from "../../run/once";
import { executable, panelInBrowser } from "../opened";
import type { Answers } from "../page";
import { STUDIO } from "../studio";
import { cardScript, JOB_FILE, pour, STUDIO_FILE, stateWith } from "./card";

const JOBS = [
	{ number: 3, title: "Two shelves" },
	{ number: 4, title: "A bench" },
];
const LOST = { fails: "NetworkError: Connection failure due to HTTP 0" };

/** The number that the first weight writes down on a card of this job. */
const PLAN = orNull(planNumberOf(basisOf(STUDIO_FILE, JOB_FILE))) ?? "";

const answersOf = (card: ReturnType<typeof cardScript>): Answers => ({
	panelStart: { gives: { ...STUDIO, jobs: JOBS, open: 3 } },
	keptDraft: { gives: "" },
	keepDraft: { gives: 0 },
	jobState: { does: card.jobState },
	chooseLoad: { does: card.chooseLoad },
	weigh: { does: card.weigh },
});

describe.runIf(executable)("at the mixer", { timeout: 60_000 }, () => {
	const { panel, page, open, field, button, view } = panelInBrowser();

	async function atTheMixer(card = cardScript()) {
		await open(answersOf(card));
		await view("At the mixer");
		await button("Go on to weighing").click();
		await page().getByText("Step 1 of 7").waitFor();
		return card;
	}
	const step = () => page().locator(".step").textContent();
	const done = () => button(/^(Done|Yes)/).click();
	const at = (number: number) =>
		page().getByText(`Step ${number} of 7`, { exact: true }).waitFor();

	test("a load from the first bag to the last tone, as the card then has it", async () => {
		const card = await atTheMixer();
		expect(await step()).toMatch(/Weigh\s*Dry mix\s*88.0 kg/);
		expect(await panel().violations()).toEqual([]);
		await button("Done: 88.0 kg").click();
		await at(2);
		await field("The scale says").fill("22,0");
		await button("Done: 22.0 kg").click();
		await at(3);
		expect(await step()).toMatch(/Pull off\s*reserve, undosed\s*10.0 kg/);
		await button("Water goes in now").click();
		await page()
			.getByText(/(59|60) min left/)
			.waitFor();
		await done();
		await at(4);
		expect(await step()).toMatch(/Add\s*Umber to the mixer\s*500.0 g/);
		await field("The scale says").fill("525");
		// 75 × (1 + 50% × 1.05%)
		await page().getByText("Then: pull off light 75.4 kg").waitFor();
		await done();
		await at(5);
		// 5% of 75 kg, on a scale of 0.1 kg
		await page()
			.getByText("5% too strong: fold in 3.8 kg of the reserve")
			.waitFor();
		expect(await panel().violations()).toEqual([]);
		await done();
		await at(6);
		// 75.4 for 75.394 leaves 24.994 kg: × 50% × (4% − 1.05%) = 368.7 g
		expect(await step()).toMatch(/Add\s*Umber to the mixer\s*368.7 g/);
		await done();
		await at(7);
		await button("Done").click();
		await page().getByText("Load 1 is through").waitFor();
		await button("Last tone placed now").click();
		await page()
			.getByText(/last tone placed \d\d:\d\d/)
			.waitFor();
		expect(await panel().violations()).toEqual([]);
		await expect
			.poll(() => card.load(1))
			.toMatchObject({
				weighed: { "Dry mix": 88, Water: 22 },
				steps: { 0: 10, 1: 525, 2: 75.4, 3: 368.7 },
				planNumber: PLAN,
				waterInAt: expect.stringMatching(/^\d\d:\d\d$/),
				lastPlacedAt: expect.stringMatching(/^\d\d:\d\d$/),
			});
		await button("Go to load 2").click();
		await button("Go on to weighing").click();
		await at(1);
		expect(await panel().calls("chooseLoad")).toEqual([
			{ name: "chooseLoad", args: [3, 2] },
		]);
	});

	test("a tone too strong: what was folded in is written, and the tone is as wanted", async () => {
		const card = cardScript(
			stateWith({
				pours: [
					pour(1, {
						weighed: { "Dry mix": 88, Water: 22 },
						steps: { 0: 10, 1: 525, 2: 75.4 },
						planNumber: PLAN,
					}),
					pour(2),
				],
			}),
		);
		await open(answersOf(card));
		await view("At the mixer");
		await at(6);
		await page().getByText("Reserve left: 10 kg").waitFor();
		expect(await field("How much").inputValue()).toBe("3.8");
		expect(await panel().violations()).toEqual([]);
		await field("How much").fill("11");
		await button("It was folded in").click();
		await page()
			.getByText("11 kg folded in is more than the 10 kg that is left")
			.waitFor();
		await field("How much").fill("3.8");
		await button("It was folded in").click();
		await page().getByText("light: folded in 3.8 kg").waitFor();
		await page().getByText("Reserve left: 6.2 kg").waitFor();
		await expect
			.poll(() => card.load(1).corrections)
			.toEqual([{ tone: "light", foldedIn: 3.8 }]);
		// 75 kg × 1.05% in 78.8 kg are 0.9994%.
		expect(await page().getByText("too strong").count()).toBe(0);
		await button("Take back").click();
		await page().getByText("light: 5% too strong").first().waitFor();
		await expect.poll(() => card.load(1).corrections).toEqual([{}]);
	});

	test("temperatures and ice come first: how warm the mix will be, and what to do", async () => {
		const card = cardScript();
		await open(answersOf(card));
		await view("At the mixer");
		await page().getByText("Temperatures and ice").waitFor();
		await page()
			.getByText("not known yet: type the temperature of the dry material")
			.first()
			.waitFor();
		expect(await panel().violations()).toEqual([]);
		await field("Dry material is at, °C").fill("30");
		await field("Water is at, °C").fill("22");
		await field("Cool with ice").focus();
		// ACI 305R: (0.22 · 88 · 30 + 22 · 22) / (0.22 · 88 + 22) = 25.7; wanted are 20.
		await page().getByText("The mix will be at: 25.7 °C").waitFor();
		await page().getByText("Look: warmer than wanted").waitFor();
		await field("Cool with ice").selectOption("yes");
		await button("Go on to weighing").focus();
		await page().getByText("The mix will be at: 20 °C").waitFor();
		await expect
			.poll(() => card.load(1))
			.toMatchObject({ dryTemperature: 30, waterTemperature: 22, ice: "yes" });
		await button("Go on to weighing").click();
		// Ice is weighed like an ingredient.
		await page().getByText("Step 1 of 8").waitFor();
	});

	test("targets are large enough for a gloved finger, and text for an arm's length", async () => {
		await atTheMixer();
		await done();
		await at(2);
		await page().getByText("Notes for load 1").click();
		const small = await page().evaluate(() =>
			[
				...document.querySelectorAll(
					"#view-mixer :is(button, select, input, summary)",
				),
			]
				.map((each) => each.getBoundingClientRect())
				.filter(({ height, width }) => height < 56 || width < 56)
				.map(({ height, width }) => `${width} × ${height}`),
		);
		expect(small).toEqual([]);
		const size = await page()
			.locator(".amount")
			.evaluate((amount) =>
				Number.parseFloat(getComputedStyle(amount).fontSize),
			);
		expect(size).toBeGreaterThanOrEqual(40);
		expect(await field("The scale says").getAttribute("inputmode")).toBe(
			"decimal",
		);
	});

	test("undo takes the weight off the card and back into the field", async () => {
		const card = await atTheMixer();
		await field("The scale says").fill("90");
		await done();
		await at(2);
		// 22 × 90 / 88
		expect(await step()).toContain("22.5 kg");
		await button("Undo").click();
		await at(1);
		expect(await field("The scale says").inputValue()).toBe("90");
		await expect.poll(() => card.load(1).weighed).toEqual({});
		await field("The scale says").fill("88");
		await done();
		await at(2);
		expect(await step()).toContain("22.0 kg");
		await button("Back").click();
		await page().getByText("The scale said 88.0 kg.").waitFor();
		await field("The scale says").fill("88.1");
		await button("Change to 88.1 kg").click();
		await at(2);
		await expect.poll(() => card.load(1).weighed).toEqual({ "Dry mix": 88.1 });
	});

	test("a key missed is asked about, and what cannot be is said at the field", async () => {
		const card = await atTheMixer();
		await field("The scale says").fill("8.8");
		await done();
		expect(await page().getByRole("alert").textContent()).toContain(
			"90% less than asked for",
		);
		await field("The scale says").fill("eighty");
		await button("Done: 88.0 kg").click();
		expect(await page().getByRole("alert").textContent()).toContain(
			'"eighty" is not a weight',
		);
		expect(await panel().violations()).toEqual([]);
		expect(panel().calls("weigh")).toEqual([]);
		await field("The scale says").fill("60");
		await done();
		await button("Yes, 60.0 kg").click();
		await at(2);
		await expect.poll(() => card.load(1).weighed).toEqual({ "Dry mix": 60 });
	});

	test("more than is in the mixer is refused before it is written", async () => {
		const card = cardScript(
			stateWith({
				pours: [
					pour(1, {
						weighed: { "Dry mix": 88, Water: 22 },
						steps: { 1: 500 },
						planNumber: PLAN,
					}),
				],
			}),
		);
		await open(answersOf(card));
		await view("At the mixer");
		await at(5);
		await field("The scale says").fill("130");
		await done();
		expect(await page().getByRole("alert").textContent()).toContain(
			"weighed is more than there is, got 130 kg: 100.5 kg is left in the mixer",
		);
		expect(panel().calls("weigh")).toEqual([]);
	});

	test("it goes on where a partner, or this panel before it was closed, has left off", async () => {
		const card = cardScript(
			stateWith({
				load: 2,
				pours: [
					pour(1),
					pour(2, {
						weighed: { "Dry mix": 88, Water: 22 },
						steps: { 1: 500, 2: 75.4 },
						planNumber: PLAN,
					}),
				],
			}),
		);
		await open(answersOf(card));
		await view("At the mixer");
		await at(6);
		expect(await field("Load").inputValue()).toBe("2");
		await page().getByText("Shelf 2").waitFor();
	});

	test("a load that is through is said to be finished, and can then be recorded", async () => {
		const card = cardScript(
			stateWith({
				pours: [
					pour(1, {
						weighed: { "Dry mix": 88, Water: 22 },
						steps: { 1: 500, 2: 75.4, 3: 375 },
						planNumber: PLAN,
					}),
				],
			}),
		);
		await open(answersOf(card));
		await view("At the mixer");
		await at(7);
		await button("Done").click();
		await page().getByText("Load 1 is through").waitFor();
		expect(card.load(1).finished).toBeUndefined();
		await button("record this pour").click();
		await expect.poll(() => card.load(1).finished).toBe("yes");
		expect(
			await page().getByRole("tab", { selected: true }).textContent(),
		).toBe("Record");
		expect(await panel().violations()).toEqual([]);
	});

	test("what somebody types on the card is taken up within ten seconds or on return", async () => {
		const card = cardScript();
		await open(answersOf(card));
		await page().clock.install();
		await view("At the mixer");
		await button("Go on to weighing").click();
		await at(1);
		card.type({ load: 1, cell: { weighed: "Dry mix" }, value: 90 });
		await page().evaluate(() => window.dispatchEvent(new Event("focus")));
		await page().getByText("load 1, Dry mix: 90").waitFor();
		await at(2);
		expect(await step()).toContain("22.5 kg");
		expect(await panel().violations()).toEqual([]);
		await button("Seen").click();
		card.type({ load: 1, cell: { weighed: "Water" }, value: 22.5 });
		await page().clock.runFor(10_000);
		await page().getByText("load 1, Water: 22.5").waitFor();
	});

	test("without a connection one goes on; it is said, and written when it is back", async () => {
		const card = await atTheMixer();
		panel().answer({ weigh: LOST, jobState: LOST });
		await done();
		await page()
			.getByText("The connection was lost. 1 entry is kept")
			.waitFor();
		await at(2);
		await done();
		await page().getByText("2 entries are kept").waitFor();
		await at(3);
		expect(await panel().violations()).toEqual([]);
		expect(card.load(1).weighed).toBeUndefined();
		// to another view and back
		await view("Functions");
		await view("At the mixer");
		await page().getByText("2 entries are kept").waitFor();
		panel().answer(answersOf(card));
		await button("Try now").click();
		await expect
			.poll(() => card.load(1).weighed)
			.toEqual({ "Dry mix": 88, Water: 22 });
		expect(await page().getByRole("alert").count()).toBe(0);
	});

	test("a cell that holds something else is not overwritten, and that is said", async () => {
		const card = await atTheMixer();
		card.type({ load: 1, cell: { weighed: "Dry mix" }, value: 87 });
		await done();
		await page().getByText("Load 1 holds 87 there by now").waitFor();
		await button("Back").click();
		await page().getByText("The scale said 87.0 kg.").waitFor();
		expect(card.load(1).weighed).toEqual({ "Dry mix": 87 });
	});

	test("several accounts, and a job that is gone, are told in words", async () => {
		await open({
			...answersOf(cardScript()),
			jobState: { fails: "Error code PERMISSION_DENIED" },
		});
		await view("At the mixer");
		await page().getByText("Several accounts are signed in").waitFor();
		expect(await panel().violations()).toEqual([]);
		panel().answer({ jobState: { fails: "Error: Job 3 is closed" } });
		await button("Try now").click();
		await page().getByText("Job 3 is closed").waitFor();
	});

	test("weights of another plan are a loud word", async () => {
		const card = cardScript(
			stateWith({
				tones: [
					{ name: "light", share: 0.75, doses: { Umber: 0.01 } },
					// 6% of cement, which is 80% of binder: at most 4.8% of binder.
					{ name: "dark", share: 0.25, doses: { Umber: 0.05 } },
				],
				pours: [pour(1, { steps: { 1: 500 }, planNumber: 1234 })],
			}),
		);
		await open(answersOf(card));
		await view("At the mixer");
		await page().getByText("begun with plan 1234").waitFor();
		await page().getByText("dark is over its pigment limit").waitFor();
	});

	test.each([
		'<img src=x onerror="document.title=1">',
		'=HYPERLINK("http://x")',
		"🪨 وعاء حجري",
		"x".repeat(10_000),
	])("a name is text and nothing else: %.30s", async (text) => {
		const [dry, water] = STUDIO_FILE.mixes;
		const card = cardScript(
			stateWith(
				{
					title: text,
					pieces: [{ ...JOB_FILE.pieces[0], name: text }],
					tones: [
						{ name: text, share: 0.75, doses: { Umber: 0.01 } },
						{ name: "dark", share: 0.25, doses: { Umber: 0.04 } },
					],
				},
				{ mixes: [{ ...dry, ingredient: text }, { ...water }] },
			),
		);
		await open(answersOf(card));
		await view("At the mixer");
		await button("Go on to weighing").click();
		await at(1);
		expect(await page().locator(".what bdi").textContent()).toBe(text);
		expect(await page().locator("img").count()).toBe(0);
		expect(
			await page().evaluate(() => document.documentElement.scrollWidth),
		).toBeLessThanOrEqual(300);
	});

	test("the keyboard alone is enough, and each step is spoken", async () => {
		const card = await atTheMixer();
		await page().getByRole("tab", { name: "At the mixer" }).focus();
		const keys = page().keyboard;
		// job, load, then the field
		for (let press = 0; press < 3; press++) await keys.press("Tab");
		await keys.type("88");
		await keys.press("Enter");
		await at(2);
		expect(await page().locator(".step").getAttribute("role")).toBe("status");
		await keys.press("Shift+Tab");
		await keys.press("Tab");
		expect(await page().evaluate(() => document.activeElement?.id)).toBe(
			"scale-said",
		);
		await keys.press("Tab");
		await keys.press("Enter");
		await at(3);
		await expect
			.poll(() => card.load(1).weighed)
			.toEqual({ "Dry mix": 88, Water: 22 });
	});

	test("notes go to the card when they are left", async () => {
		const card = await atTheMixer();
		await page().getByText("Notes for load 1").click();
		await field("Weighed by").fill("the two of us");
		await field("Spread, mm").fill("245,5");
		await field("Remarks").focus();
		await expect
			.poll(() => card.load(1))
			.toMatchObject({ weighedBy: "the two of us", spread: 245.5 });
		expect(await panel().violations()).toEqual([]);
	});

	test("a menu entry opens the panel at a view and a job", async () => {
		const html = `${await panelHtml()}<div id="opening" data-view="mixer" data-job="4"></div>`;
		await open(answersOf(cardScript({ ...stateWith(), number: 4 })), html);
		await page().getByText("Temperatures and ice").waitFor();
		expect(await page().locator("#mixer-job").inputValue()).toBe("4");
		expect(panel().calls("jobState")[0]?.args).toEqual([4]);
	});
});
