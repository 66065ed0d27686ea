import { describe, expect, test } from "vitest";
import { executable, panelInBrowser } from "../opened";
import type { Answers } from "../page";
import { STUDIO } from "../studio";

/** What the script keeps, as it would in a person's properties. */
function keeper() {
	let kept = "";
	const answers: Answers = {
		panelStart: { gives: STUDIO },
		keptDraft: { does: () => kept },
		keepDraft: {
			does: (text: string) => {
				kept = text;
				return text.length;
			},
		},
		createJob: { gives: { number: 3, tabs: ["3 Job"] } },
	};
	return { answers, kept: () => kept };
}

describe.runIf(executable)("an unfinished job", { timeout: 60_000 }, () => {
	const { panel, page, shown, open, field, button } = panelInBrowser();

	test("is there again after another dialog took the panel away", async () => {
		const { answers, kept } = keeper();
		await open(answers);
		await field("Client").fill('=HYPERLINK("x") 🪨');
		await field("Name").fill("Bar");
		await field("A, length").fill("8' 1/2\"");
		await field("Umber").check();
		await field("Umber, of binder").fill("2,5%");
		// what opens over the panel takes the focus
		await page().evaluate(() => window.dispatchEvent(new Event("blur")));
		await expect.poll(kept).toContain("2,5%");
		await panel().close();
		await open(answers);
		await shown().getByText("Your unfinished job is here again.").waitFor();
		expect(await field("Client").inputValue()).toBe('=HYPERLINK("x") 🪨');
		expect(await field("A, length").inputValue()).toBe("8' 1/2\"");
		expect(await field("Umber, of binder").inputValue()).toBe("2,5%");
		expect(await panel().violations()).toEqual([]);
		await button("Start over").click();
		expect(await field("Client").inputValue()).toBe("");
		await expect.poll(kept).toBe("");
	});

	test("is kept a moment after the last key, without another reason", async () => {
		const { answers, kept } = keeper();
		await open(answers);
		await field("Client").fill("A cafe");
		await expect.poll(kept).toContain("A cafe");
		expect(panel().calls("keepDraft")).toHaveLength(1);
	});

	test("is forgotten once it is written", async () => {
		const { answers, kept } = keeper();
		await open(answers);
		await field("Client").fill("A cafe");
		await field("Title").fill("A shelf");
		await field("Name").fill("Shelf");
		await field("A, length").fill("1200");
		await field("B, width").fill("300");
		await field("Thickness").fill("30");
		await field("Tone").fill("Plain");
		await page().evaluate(() => window.dispatchEvent(new Event("blur")));
		await expect.poll(kept).toContain("1200");
		await button("Write the job").click();
		await shown().getByText("Job 3 is written").waitFor();
		await expect.poll(kept).toBe("");
	});

	test("that cannot be kept says so, and keeps on trying with the next key", async () => {
		const { answers, kept } = keeper();
		await open({
			...answers,
			keepDraft: { fails: "NetworkError: Connection failure due to HTTP 0" },
		});
		await field("Client").fill("A cafe");
		await page().evaluate(() => window.dispatchEvent(new Event("blur")));
		await shown()
			.getByText("If this panel closes, what you typed is lost")
			.waitFor();
		expect(await panel().violations()).toEqual([]);
		panel().answer(answers);
		await field("Title").fill("A shelf");
		await page().evaluate(() => window.dispatchEvent(new Event("blur")));
		await expect.poll(kept).toContain("A shelf");
		expect(await shown().getByText("If this panel closes").count()).toBe(0);
	});

	test("is not needed: without what was kept the form begins blank", async () => {
		await open({ ...keeper().answers, keptDraft: { fails: "Error: no" } });
		expect(await field("Client").inputValue()).toBe("");
	});
});
