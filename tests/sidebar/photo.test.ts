/** A color from a photo in the panel: a file of known colors is decoded, its corners are marked by keys, and it is read. */
import { describe, expect, test } from "vitest";
import { colorDifference } from "../../src/calc/ciede2000";
import { channelsOf, type Lab } from "../../src/calc/color";
import { uniform } from "../../src/calc/noise";
import { starterStudio } from "../../templates/starterstudio";
import { paintedPng } from "../desk/png";
import { casesOf, labOf } from "../published/colormatch/checks";
import { stateWith } from "./mixer/card";
import { executable, panelInBrowser } from "./opened";
import type { Answers } from "./page";
import { STUDIO } from "./studio";

/** The 24 patches of the published card (BSD-3-Clause, see the checks), six to a row. */
const CARD: number[][] = (
	casesOf("photo-known").find(([id]) => id === "photo-known-mild-24")?.[1]
		.inputs.patches ?? []
).map(({ lab }: { lab: number[] }) => lab);

const GIVEN = stateWith();
const STATE = {
	...GIVEN,
	studio: {
		...GIVEN.studio,
		settings: {
			...GIVEN.studio.settings,
			card_patches: CARD.map((lab) => lab.join(", ")).join(" | "),
			card_columns: 6,
			card_light: "D65",
		},
		swatchPigments: ["Umber", "Black"],
		swatches: (starterStudio("metric").swatches ?? [])
			.filter(({ doses = {} }) => !("Ocher" in doses || "White" in doses))
			.map((row) => ({ ...row, mix: String(GIVEN.job.mix) })),
	},
};

const READY: Answers = {
	panelStart: {
		gives: { ...STUDIO, jobs: [{ number: 3, title: "Two shelves" }], open: 3 },
	},
	keptDraft: { gives: "" },
	jobState: { gives: STATE },
	recordSwatch: { gives: 21 },
};

const [WIDTH, HEIGHT] = [800, 600];
/** The card lies from 100 to 720 across and 60 to 300 down: its left corners 20 pixels beside where the marks begin. */
const LEFT = 100;
const SAMPLE: Lab = { l: 58, a: 9, b: 17 };
const SECOND: Lab = { l: 60, a: 9, b: 17 };

/** A warm camera of some contrast, with noise; the light falls off to the right by 15%. */
function camera(lab: Lab, x: number, noise: number): number[] {
	const [cx, cy, cz] = channelsOf(lab);
	const light = [
		1.9 * cx - 0.7 * cy - 0.15 * cz,
		-0.6 * cx + 1.55 * cy + 0.05 * cz,
		0.05 * cx - 0.2 * cy + 0.95 * cz,
	];
	return light.map((each, i) => {
		const seen =
			0.8 * ([1.05, 1, 0.85][i] ?? 1) * each * (1 - (0.15 * x) / WIDTH);
		const code = 255 * Math.max(0, seen) ** (1.1 / 2.3) + 3 * (noise - 0.5);
		return Math.min(255, Math.max(0, Math.round(code)));
	});
}

function photo(change: (lab: Lab, patch: number) => Lab = (lab) => lab) {
	const next = uniform(3);
	const colors = CARD.map((lab, i) => change(labOf(lab), i));
	return {
		name: "beside-a-card.png",
		mimeType: "image/png",
		buffer: paintedPng(WIDTH, HEIGHT, (x, y) => {
			const column = Math.floor((x - LEFT) / ((720 - LEFT) / 6));
			const row = Math.floor((y - 60) / 60);
			const inCard = column >= 0 && column < 6 && row >= 0 && row < 4;
			const sample = y > 340 && x < 380 ? SAMPLE : y > 340 ? SECOND : undefined;
			const lab = inCard ? colors[6 * row + column] : sample;
			return camera(lab ?? { l: 40, a: 0, b: 0 }, x, next());
		}),
	};
}

describe.runIf(executable)("a photo", { timeout: 90_000 }, () => {
	const { panel, page, shown, open, field, button, view } = panelInBrowser();

	async function atPhoto(file: ReturnType<typeof photo>) {
		await open(READY);
		await view("Color");
		await shown().getByText("A color from a photo").click();
		await field("The photo").setInputFiles(file);
		await shown()
			.getByRole("img", { name: /beside-a-card.png, 800 by/ })
			.waitFor();
	}
	const corner = (name: string) =>
		shown().getByRole("button", { name: new RegExp(`^${name}: `) });

	async function markCard() {
		for (const place of ["top left", "bottom left"]) {
			await corner(`Card, ${place}`).focus();
			await page().keyboard.press("Shift+ArrowRight");
		}
	}

	test("is read after its corners are moved by arrow keys, under a magnifier", async () => {
		await atPhoto(photo());
		await corner("Card, top left").focus();
		await shown()
			.getByRole("img", { name: /Around the corner/ })
			.waitFor();
		await page().keyboard.press("ArrowDown");
		expect(await corner("Card, top left").getAttribute("aria-label")).toBe(
			"Card, top left: 80, 61",
		);
		await page().keyboard.press("ArrowUp");
		await markCard();
		expect(await corner("Card, top left").getAttribute("aria-label")).toBe(
			"Card, top left: 100, 60",
		);
		await shown()
			.getByText(/card check \d/)
			.waitFor();
		expect(await panel().violations()).toEqual([]);
		const read = async () =>
			labOf(
				((await shown().locator("[role=status] strong").textContent()) ?? "")
					.split(",")
					.map(Number),
			);
		expect(colorDifference(await read(), SAMPLE)).toBeLessThan(3);
		await button("Compare a second sample").click();
		const said = shown().getByText(/The two samples differ by/);
		const [, differ] =
			/by ([\d.]+)/.exec((await said.textContent()) ?? "") ?? [];
		const really = colorDifference(SAMPLE, SECOND);
		expect(Math.abs(Number(differ) - really)).toBeLessThan(1.5);
		await button("Want this color").click();
		expect(
			colorDifference(
				labOf(
					(await field("Color: #b8a591, or L*, a*, b*").inputValue())
						.split(",")
						.map(Number),
				),
				SAMPLE,
			),
		).toBeLessThan(3);
	});

	test("a sample goes into Swatches, marked as from a photo, and the photo nowhere", async () => {
		await atPhoto(photo());
		await markCard();
		const add = button("Add to Swatches, from a photo");
		expect(await add.isDisabled()).toBe(true);
		await shown().locator("#photo-dose-Umber").fill("1.5");
		await add.click();
		await shown()
			.getByText(/in row 21 of Swatches, marked as from a photo/)
			.waitFor();
		const [{ args } = { args: [] }] = panel().calls("recordSwatch");
		expect(args[0]).toMatchObject({ read: "photo", doses: { Umber: 0.015 } });
		expect(JSON.stringify(args).length).toBeLessThan(400);
	});

	test("a corner is dragged by the pointer", async () => {
		await atPhoto(photo());
		await corner("Sample, bottom left").scrollIntoViewIfNeeded();
		const box = await corner("Sample, top left").boundingBox();
		if (!box) throw new Error("no corner");
		await page().mouse.move(box.x + 12, box.y + 12);
		await page().mouse.down();
		await page().mouse.move(box.x + 32, box.y + 22, { steps: 4 });
		await page().mouse.up();
		const label = await corner("Sample, top left").getAttribute("aria-label");
		const [, x = "0", y = "0"] = /: (\d+), (\d+)/.exec(label ?? "") ?? [];
		// It began at 80, 360.
		expect(Number(x)).toBeGreaterThan(100);
		expect(Number(y)).toBeGreaterThan(370);
	});

	test("a card of other colors under the marks is refused in words", async () => {
		await atPhoto(photo((_, i) => labOf(CARD[(i * 7 + 5) % 24] as number[])));
		await markCard();
		await shown()
			.getByText(/Not read: the patches do not fit/)
			.waitFor();
	});

	test("a file that is no picture says so", async () => {
		await open(READY);
		await view("Color");
		await shown().getByText("A color from a photo").click();
		await field("The photo").setInputFiles({
			name: "notes.png",
			mimeType: "image/png",
			buffer: Buffer.from("no picture"),
		});
		await shown()
			.getByText(/cannot read the file as a picture/)
			.waitFor();
	});
});
