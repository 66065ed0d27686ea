import { describe, expect, test } from "vitest";
import type { JobFile } from "../../src/job/jobfile";
import type { JobState } from "../../src/sheets/messages";
import guesthouse from "../../templates/demo/guesthouse.json";
import { soundJob, soundStudio } from "../job/answers/soundjob";
import { executable, panelInBrowser } from "./opened";
import type { Answers } from "./page";
import { STUDIO } from "./studio";

const DEMO: JobFile = {
	...(guesthouse as JobFile),
	pieces: soundJob().pieces,
};

const stateOf = (changes: Partial<JobFile>): JobState => ({
	number: 3,
	job: { ...DEMO, ...changes },
	studio: soundStudio(),
	recorded: [],
	logged: [],
});

/** The third tone dosed far over what its pigment's maker allows, and waste for neither reserve nor vessels. */
const OVERDOSED = DEMO.tones.map((tone, i) =>
	i === 2 ? { ...tone, doses: { Umber: 0.12 } } : tone,
);
const WRONG = stateOf({ tones: OVERDOSED, waste: 0 });

/** Whatever the checks ask for is typed. */
const KNOWN = stateOf({
	pours: [1, 2, 3].map((load) => ({
		load,
		dryTemperature: 18,
		waterTemperature: 15,
		mixTemperature: 18,
	})),
	dryingAir: 20,
	dryingHumidity: 0.6,
	dryingMix: 18,
	dryingWind: 2,
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
	jobState: { gives: WRONG },
	showCell: { gives: "3 Tones" },
};

describe.runIf(executable)("checks", { timeout: 60_000 }, () => {
	const { panel, page, shown, open, button, view } = panelInBrowser();

	async function atChecks(answers: Answers = READY) {
		await open(answers);
		await view("Checks");
	}

	test("what is wrong comes first, then what is not known, in words, each with its cell", async () => {
		await atChecks();
		await shown().getByText("3 things to look at").waitFor();
		expect(await shown().locator("li.card").allTextContents()).toEqual([
			expect.stringMatching(/^StopPigment limit of every tonea tone is over/),
			expect.stringMatching(/^RiskyWaste covers reserve.*waste is less than/),
			expect.stringMatching(
				/^To knowNeighboring tones.*over the pigment limit/,
			),
		]);
		expect(await panel().violations()).toEqual([]);
		await button("Go to Tones: Pigment limit").click();
		await expect
			.poll(() => panel().calls("showCell"))
			.toEqual([{ name: "showCell", args: [4, "Tones.headroom"] }]);
		await shown().getByText("4 not known yet").waitFor();
		await shown().getByText("type the mix temperature").waitFor();
		await button("Go to Cure: Drying before it is covered").click();
		await expect
			.poll(() => panel().calls("showCell")[1]?.args)
			.toEqual([4, "Cure.dryingAir"]);
		await shown()
			.getByText(/^\d+ fine$/)
			.click();
		await shown().getByText("Tone shares add up to 100%").waitFor();
		expect(await panel().violations()).toEqual([]);
	});

	test("none is said too, and that some are not known", async () => {
		await atChecks({ ...READY, jobState: { gives: KNOWN } });
		await shown()
			.getByText("No check finds anything wrong", { exact: true })
			.waitFor();
		expect(await shown().locator("li.card").count()).toBe(0);
		expect(await shown().getByText("not known yet").count()).toBe(0);
		panel().answer({ jobState: { gives: stateOf({}) } });
		await button("Check again").click();
		await shown()
			.getByText("No check finds anything wrong so far", { exact: true })
			.waitFor();
		await shown().getByText("3 not known yet").waitFor();
	});

	test("it is checked again when one comes back, and for another job", async () => {
		await atChecks();
		await shown().getByText("3 things to look at").waitFor();
		panel().answer({ jobState: { gives: stateOf({ waste: 0 }) } });
		await view("Functions");
		await view("Checks");
		await shown().getByText("One thing to look at").waitFor();
		await page().locator("#checks-job").selectOption("3");
		await shown().getByText("One thing to look at").waitFor();
		expect(
			panel()
				.calls("jobState")
				.map(({ args }) => args),
		).toEqual([[4], [4], [3]]);
	});

	test("the keyboard alone is enough", async () => {
		await atChecks();
		await shown().getByText("3 things to look at").waitFor();
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
		await button("Go to Tones: Pigment limit").click();
		await shown().getByText("has no tab Tones any more").waitFor();
		panel().answer({
			jobState: { fails: "NetworkError: Connection failure due to HTTP 0" },
		});
		await button("Check again").click();
		await shown().getByText("The connection was lost.").waitFor();
		await shown().getByText("3 things to look at").waitFor();
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
