import { describe, expect, test } from "vitest";
import { executable, panelInBrowser } from "./opened";
import type { Answers } from "./page";
import { STATE } from "./picture/job";
import { STUDIO } from "./studio";

const READY: Answers = {
	panelStart: {
		gives: {
			...STUDIO,
			jobs: [{ number: STATE.number, title: "Two pieces" }],
			open: STATE.number,
		},
	},
	keptDraft: { gives: "" },
	jobState: { gives: STATE },
	putPicture: { gives: "1 Quote" },
};

describe.runIf(executable)("picture", { timeout: 60_000 }, () => {
	const { panel, shown, page, open, button, view } = panelInBrowser();

	async function atPicture(answers: Answers = READY) {
		await open(answers);
		await view("Picture");
		await shown().locator("canvas").waitFor();
	}

	test("it is drawn of the job, and put on its Quote as a PNG", async () => {
		await atPicture();
		await shown().getByText("An impression").waitFor();
		expect(await panel().violations()).toEqual([]);
		await button("Put it on the Quote").click();
		await shown().getByText("It is on 1 Quote.").waitFor();
		expect(panel().calls("putPicture")).toEqual([
			{
				name: "putPicture",
				args: [
					STATE.number,
					expect.stringMatching(
						/^data:image\/png;base64,[A-Za-z0-9+/=]{1000,}$/,
					),
				],
			},
		]);
		expect(await panel().violations()).toEqual([]);
	});

	test("by the keyboard alone, once however often it is pressed", async () => {
		await atPicture({ ...READY, putPicture: { silent: true } });
		await button("Put it on the Quote").focus();
		await page().keyboard.press("Enter");
		await shown().getByText("Putting it there").waitFor();
		await page().keyboard.press("Enter");
		expect(panel().calls("putPicture")).toHaveLength(1);
	});

	test("what cannot be put there is told; the picture stays", async () => {
		await atPicture({
			...READY,
			putPicture: { fails: "NetworkError: Connection failure due to HTTP 0" },
		});
		await button("Put it on the Quote").click();
		await shown()
			.getByText("The connection was lost. Look at the Quote.")
			.waitFor();
		expect(await shown().locator("canvas").count()).toBe(1);
		expect(await panel().violations()).toEqual([]);
	});

	test("a job that cannot be read is told, and tried again", async () => {
		await open({ ...READY, jobState: { fails: "Error: Job 1 has no Tones" } });
		await view("Picture");
		await shown().getByText("Job 1 has no Tones.").waitFor();
		panel().answer(READY);
		await button("Try again").click();
		await shown().locator("canvas").waitFor();
	});
});
