/** The panel's Color: recipes beside what is wanted, one into a tone, a cast that corrects it, the next swatch. */
import { describe, expect, test } from "vitest";
import { basisOf } from "../../src/job/answers/basis";
import { isKnown } from "../../src/job/answers/known";
import { recipesOf, studioPalette } from "../../src/job/answers/recipes";
import { recipeWords } from "../../src/job/answers/recipewords";
import { starterStudio } from "../../templates/starterstudio";
import { stateWith } from "./mixer/card";
import { executable, panelInBrowser } from "./opened";
import type { Answers } from "./page";
import { STUDIO } from "./studio";

const GIVEN = stateWith({
	tones: [
		{ name: "light", share: 0.75, doses: { Umber: 0.01 } },
		{ name: "dark", share: 0.25, doses: { Umber: 0.03, Black: 0.005 } },
	],
});
const { mix } = GIVEN.job;
const STATE = {
	...GIVEN,
	studio: {
		...GIVEN.studio,
		swatchPigments: ["Umber", "Black"],
		swatches: (starterStudio("metric").swatches ?? [])
			.filter(({ doses = {} }) => !("Ocher" in doses || "White" in doses))
			.map((row) => ({ ...row, mix: String(mix) })),
	},
};

const READY: Answers = {
	panelStart: {
		gives: { ...STUDIO, jobs: [{ number: 3, title: "Two shelves" }], open: 3 },
	},
	keptDraft: { gives: "" },
	jobState: { gives: STATE },
	putRecipe: { gives: STATE },
	recordSwatch: { gives: 17 },
};

const WANTED = "60, 4, 12";
const lab = { l: 60, a: 4, b: 12 };

/** What the answers say: they have tests of their own. */
function expected() {
	const basis = basisOf(STATE.studio, STATE.job);
	const palette = studioPalette(basis);
	if (!isKnown(palette)) throw new Error(JSON.stringify(palette));
	return recipesOf(basis, palette.is, lab);
}

describe.runIf(executable)("color", { timeout: 60_000 }, () => {
	const { panel, shown, open, field, button, view } = panelInBrowser();

	async function atColor(answers: Answers = READY) {
		await open(answers);
		await view("Color");
		await field("Color: #b8a591, or L*, a*, b*").waitFor();
	}
	const wanted = (typed: string) =>
		field("Color: #b8a591, or L*, a*, b*").fill(typed);

	test("recipes are shown beside the wanted color, and one goes into a tone", async () => {
		await atColor();
		await wanted(WANTED);
		const [first] = expected();
		if (!first) throw new Error("no recipe");
		await shown()
			.getByRole("heading", { name: `Begin with: ${recipeWords(first)}` })
			.waitFor();
		await shown()
			.getByText(/expect the cast within ±/)
			.first()
			.waitFor();
		expect(await panel().violations()).toEqual([]);
		const card = shown().getByRole("article").first();
		expect(await card.getByRole("button").isDisabled()).toBe(true);
		await card.getByLabel("Into the tone").selectOption("dark");
		await card.getByRole("button").click();
		await card.getByText("dark has these doses now.").waitFor();
		expect(panel().calls("putRecipe")).toEqual([
			{
				name: "putRecipe",
				args: [
					{
						job: 3,
						tone: "dark",
						doses: Object.fromEntries(
							first.doses.map(({ name, typed }) => [
								name,
								Number(typed.toPrecision(4)),
							]),
						),
					},
				],
			},
		]);
	});

	test("a color out of reach says so, and how it is missed", async () => {
		await atColor();
		await wanted("50, 0, -40");
		await shown()
			.getByText(/out of reach.*than wanted/i)
			.first()
			.waitFor();
		await wanted("none");
		await shown()
			.getByText(/Type a color as/)
			.waitFor();
	});

	test("a swatch's color can be wanted", async () => {
		await atColor();
		await field("Or as a swatch").selectOption("2 · Umber 1%");
		expect(await field("Color: #b8a591, or L*, a*, b*").inputValue()).toBe(
			"#b8a591",
		);
	});

	test("a cast corrects the recipe, and both are kept as a chain", async () => {
		await atColor();
		await wanted(WANTED);
		await button("Take the first recipe above").click();
		await field("The cast as measured").fill("56, 4, 12");
		await shown()
			.getByText(/The cast is 3\.\d from what is/)
			.waitFor();
		await shown()
			.getByRole("heading", { name: /^Corrected: / })
			.waitFor();
		expect(await panel().violations()).toEqual([]);
		await button("Keep both on Swatches").click();
		await shown().getByText("Name the recipe").waitFor();
		expect(panel().calls("recordSwatch")).toEqual([]);
		await field("Name of the recipe").fill("Sand");
		await button("Keep both on Swatches").click();
		await shown()
			.getByText(/are in rows 17 and 17 of Swatches/)
			.waitFor();
		const [cast, corrected] = panel()
			.calls("recordSwatch")
			.map(({ args }) => args[0]);
		expect(cast).toMatchObject({
			mix,
			recipe: "Sand",
			wanted: WANTED,
			color: "56, 4, 12",
			ageDays: 28,
		});
		expect(corrected).toMatchObject({ recipe: "Sand", wanted: WANTED });
		expect(corrected).not.toHaveProperty("color");
		// The cast came out darker than was said: less pigment.
		const total = (swatch: unknown) =>
			Object.values((swatch as { doses: Record<string, number> }).doses).reduce(
				(sum, dose) => sum + dose,
				0,
			);
		expect(total(corrected)).toBeLessThan(total(cast));
	});

	test("the tone of several pigments is to be cast itself", async () => {
		await atColor();
		await shown()
			.getByText(/dark mixes several pigments: cast the tone/)
			.waitFor();
	});

	test("a pigment without a middle swatch gets a ladder, and a larger batch below 2 g", async () => {
		const swatches = STATE.studio.swatches.filter(
			({ doses = {} }) => !(doses.Umber === 0.01 || doses.Umber === 0.02),
		);
		await atColor({
			...READY,
			jobState: { gives: { ...STATE, studio: { ...STATE.studio, swatches } } },
		});
		// 0.3 of the strongest, 4%; binder is half of the mix: 2 kg × 50% × 1.2% = 12 g.
		await shown()
			.getByText(/^Umber at 1.2% of binder/)
			.waitFor();
		await shown()
			.getByText(/Add 12\.0 g dry, now 2\.012 kg/)
			.waitFor();
		await field("Doses of Umber, % of binder, rising").fill("0.1 1.2");
		// 2 kg × 50% × 0.1% = 1 g; 4 kg give 2 g.
		await shown()
			.getByText(/Add 1\.0 g dry, now 2\.001 kg; pull 0\.400 kg/)
			.waitFor();
		await shown()
			.getByText(/make 4\.000 kg/)
			.waitFor();
		expect(await panel().violations()).toEqual([]);
	});

	test("a pigment's color is shown against its dose, and a swatch that disagrees is named", async () => {
		const [last] = STATE.studio.swatches.slice(-1);
		const swatches = [
			...STATE.studio.swatches.map((row) =>
				row.doses?.Black === 0.02 ? { ...row, color: "#b0aeaa" } : row,
			),
			// With four doses the others can agree without the one.
			{ ...last, doses: { Black: 0.03 }, color: "#797775" },
		];
		await atColor({
			...READY,
			jobState: { gives: { ...STATE, studio: { ...STATE.studio, swatches } } },
		});
		await shown().getByText("Color against dose, and how").click();
		await shown()
			.getByRole("heading", { name: "Black, undosed to 4% of binder" })
			.waitFor();
		await shown()
			.getByText(/Look: the one of 2% disagrees by/)
			.waitFor();
		expect(await shown().locator(".curve").count()).toBe(2);
		expect(await panel().violations()).toEqual([]);
	});

	test("a tone has a family of paler ones, one of which goes into a tone", async () => {
		await atColor();
		await field("Strongest tone").selectOption("dark");
		await shown()
			.getByRole("heading", { name: /^L\* \d+: Umber 3% \+ Black 0.5%$/ })
			.waitFor();
		const steps = shown().getByRole("heading", { name: /^L\* \d+: Umber/ });
		expect(await steps.count()).toBe(3);
		const lightness = (await steps.allTextContents()).map((text) =>
			Number(/L\* (\d+)/.exec(text)?.[1]),
		);
		// Umber 0 of the starter is #e3dfd5: L* 88.8; each step is a third of the way there, shown whole.
		const way = 88.8 - (lightness[0] ?? 0);
		lightness.forEach((l, i) => {
			expect(Math.abs(l - (lightness[0] ?? 0) - (way * i) / 3)).toBeLessThan(
				1.1,
			);
		});
		expect(await panel().violations()).toEqual([]);
		const last = shown().getByRole("article").last();
		await last.getByLabel("Into the tone").selectOption("light");
		await last.getByRole("button").click();
		await last.getByText("light has these doses now.").waitFor();
	});

	test("without a swatch it says what to cast", async () => {
		const studio = { ...STATE.studio, swatches: [] };
		await atColor({ ...READY, jobState: { gives: { ...STATE, studio } } });
		await wanted(WANTED);
		await shown()
			.getByText(/not known yet: .*cast samples/i)
			.waitFor();
	});
});
