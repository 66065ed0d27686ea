import { describe, expect, test } from "vitest";
import { executable, panelInBrowser } from "../opened";
import type { Answers } from "../page";
import { STUDIO, withSettings } from "../studio";

const JOB = {
	units: "metric",
	client: "Guesthouse",
	title: "Two bars",
	waste: 0.05,
	mix: "Plain mix",
	pieces: [
		{
			name: "Bar",
			quantity: 2,
			shape: "L",
			a: 2000,
			b: "1500 mm",
			c: 1000,
			d: 700,
			thickness: 40,
			notch: "back right",
		},
	],
	knockouts: [{ piece: "Bar", what: "Sink", volume: 5 }],
	tones: [{ name: "Base", share: 1, doses: { Umber: 0.025 } }],
};

const ANSWERS: Answers = {
	panelStart: { gives: STUDIO },
	keptDraft: { gives: "" },
	keepDraft: { gives: 0 },
	createJob: { gives: { number: 3, tabs: ["3 Job"] } },
};

describe.runIf(executable)("a job from a file", { timeout: 60_000 }, () => {
	const { panel, page, shown, open, field, button } = panelInBrowser();

	async function withText(text: string): Promise<void> {
		await shown().getByText("Start from a file").click();
		await field("Or its text").fill(text);
		await button("Use this text").click();
	}

	test("fills the form, and is written with what the form has no entry for", async () => {
		await open(ANSWERS);
		await withText(JSON.stringify(JOB));
		await shown().getByText("The form below has this job now.").waitFor();
		expect(await panel().violations()).toEqual([]);
		expect(await field("Client").inputValue()).toBe("Guesthouse");
		expect(await field("B, width").inputValue()).toBe("1500 mm");
		expect(await field("Notch at").inputValue()).toBe("back right");
		expect(await field("Umber, of binder").inputValue()).toBe("2.5");
		await field("Client").fill("Another");
		await button("Write the job").click();
		await shown().getByText("Job 3 is written").waitFor();
		expect(panel().calls("createJob")).toEqual([
			{ name: "createJob", args: [{ ...JOB, client: "Another" }] },
		]);
	});

	test("can be a file of the computer's", async () => {
		await open(ANSWERS);
		await shown().getByText("Start from a file").click();
		await field("A job that was kept as a file").setInputFiles({
			name: "bars.json",
			mimeType: "application/json",
			buffer: Buffer.from(JSON.stringify(JOB)),
		});
		await shown().getByText("The form below has this job now.").waitFor();
		expect(await field("Title").inputValue()).toBe("Two bars");
	});

	test("with mistakes is refused with each of them, and the form stays", async () => {
		await open(ANSWERS);
		await field("Client").fill("Typed");
		await withText(
			JSON.stringify({
				...JOB,
				title: "",
				mix: "Old mix",
				pieces: [{ ...JOB.pieces[0], c: 3000, weight: 3 }],
			}),
		);
		const told = shown().getByRole("alert").getByRole("listitem");
		await told.first().waitFor();
		expect(await told.allTextContents()).toEqual([
			'missing field "title"',
			expect.stringMatching(/^unknown field "pieces\[0\]\.weight"/),
			'"mix": mix "Old mix" is not on the Mixes tab: there are "Plain mix"',
		]);
		expect(await panel().violations()).toEqual([]);
		expect(
			await page().evaluate(() => document.documentElement.scrollWidth),
		).toBeLessThanOrEqual(300);
		expect(await field("Client").inputValue()).toBe("Typed");
		await field("Or its text").fill("no job");
		await button("Use this text").click();
		await shown().getByText("its text is not JSON").waitFor();
		expect(panel().calls("createJob")).toEqual([]);
	});

	test("gives back what was typed before it", async () => {
		await open(ANSWERS);
		await field("Client").fill("Typed");
		await withText(JSON.stringify(JOB));
		await button("Back to what was there").click();
		expect(await field("Client").inputValue()).toBe("Typed");
		expect(await field("Title").inputValue()).toBe("");
	});

	test("of other units is refused once the workbook has its own, and chooses them before", async () => {
		const inInches = {
			...JOB,
			units: "us",
			pieces: [
				{ name: "Bar", quantity: 1, shape: "round", a: "3 ft", thickness: 2 },
			],
			knockouts: undefined,
		};
		await open(ANSWERS);
		await withText(JSON.stringify(inInches));
		await shown()
			.getByText('"units" is "us", but this workbook is in metric')
			.waitFor();
		await panel().close();
		await open({
			...ANSWERS,
			panelStart: {
				gives: {
					...STUDIO,
					unitsFixed: false,
					inOtherUnits: withSettings({ units: "us" }).studio,
				},
			},
		});
		await withText(JSON.stringify(inInches));
		await shown().getByText("In inches, or as").waitFor();
		expect(await field("US: in, lb").isChecked()).toBe(true);
	});
});
