import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { bundlePanel } from "../../../src/build/panel";
import { findBrowser } from "../../../src/desk/browser";
import type { JobState } from "../../../src/sheets/messages";
import { sharedBrowser } from "../../run/once";
import { violationsOf } from "../page";
import { STATE } from "./job";

const executable = findBrowser();
const SOON = { timeout: 30_000 };

describe.runIf(executable)(
	"the picture in Chromium",
	{ timeout: 60_000 },
	() => {
		let browser: Browser;
		let html: string;
		const complaints: string[] = [];

		beforeAll(async () => {
			browser = await sharedBrowser();
			html = await bundlePanel(join(import.meta.dirname, "mounted.tsx"));
		}, 60_000);

		async function open(state: JobState = STATE): Promise<Page> {
			const page = await browser.newPage({
				viewport: { width: 300, height: 800 },
			});
			page.on("pageerror", (error) => complaints.push(String(error)));
			page.on("console", (message) => complaints.push(message.text()));
			await page.addInitScript((given) => {
				(window as unknown as { state: unknown }).state = given;
			}, state);
			await page.route("http://panel.test/", (route) =>
				route.fulfill({ body: html, contentType: "text/html" }),
			);
			await page.goto("http://panel.test/");
			return page;
		}

		/** How many pixels of each color the canvas has, and its size. */
		async function canvasOf(page: Page) {
			await page.locator("canvas[data-drawn=fine]").waitFor(SOON);
			return page.evaluate(() => {
				const canvas = document.querySelector("canvas") as HTMLCanvasElement;
				const { width, height } = canvas;
				// A copy made for reading, so that the page's own canvas is not read back.
				const copy = Object.assign(document.createElement("canvas"), {
					width,
					height,
				}).getContext("2d", { willReadFrequently: true });
				copy?.drawImage(canvas, 0, 0);
				const data = copy?.getImageData(0, 0, width, height).data;
				const counts: Record<string, number> = {};
				let left = 0;
				let light = 0;
				for (let i = 0; data && i < data.length; i += 4) {
					const color = data[i + 3] ? data.slice(i, i + 3).join() : "clear";
					counts[color] = (counts[color] ?? 0) + 1;
					light += data[i + 1] ?? 0;
					if (color === "clear" && (i / 4) % width < width / 2) left++;
				}
				light /= width * height - (counts.clear ?? 0);
				return { width, height, counts, left, light, png: canvas.toDataURL() };
			});
		}

		test("in the light of its tones, notch and cutout clear, the notch on its side", async () => {
			const page = await open();
			const above = await canvasOf(page);
			expect([above.width, above.height]).toEqual([560, 280]);
			const clear = above.counts.clear ?? 0;
			// 1.2 × 0.4 of 2 × 1 m is the notch, 0.5 × 0.4 m the cutout
			expect(clear / (560 * 280)).toBeCloseTo(0.34, 2);
			// of light from Bark #7a5d47 to Shell #d9d3c8: nearer to that of which there is three times as much
			expect(above.light).toBeGreaterThan(150);
			expect(above.light).toBeLessThan(211);
			const image = page.getByRole("img");
			expect(await image.getAttribute("aria-label")).toBe(
				"Bar. The finished piece, seen from above. Tones: Shell 75%, Bark 25%.",
			);
			await page
				.getByLabel("Seen", { exact: true })
				.selectOption("as the mold sees it");
			const mold = await canvasOf(page);
			expect(mold.counts.clear).toBe(clear);
			// Pixels on the middle line belong to one half only: a column either way.
			expect(Math.abs(mold.left + above.left - clear)).toBeLessThanOrEqual(280);
			expect(mold.left).toBeGreaterThan(above.left);
			expect(await image.getAttribute("aria-label")).toContain("mirrored");
			expect(await violationsOf(page)).toEqual([]);
			await page.close();
		});

		test("folds and arrangements by keyboard, there and back, and onto the Quote", async () => {
			const page = await open();
			const first = await canvasOf(page);
			const shown = () =>
				expect.poll(async () => (await canvasOf(page)).png, SOON);
			await page.getByRole("button", { name: "More folds" }).focus();
			await page.keyboard.press("Enter");
			await shown().not.toBe(first.png);
			await page.getByRole("button", { name: "Fewer folds" }).press("Space");
			await shown().toBe(first.png);
			await page
				.getByRole("button", { name: "Another arrangement" })
				.press("Enter");
			await shown().not.toBe(first.png);
			await page
				.getByRole("button", { name: "Earlier arrangement" })
				.press("Enter");
			await shown().toBe(first.png);
			await page
				.getByRole("button", { name: "Put it on the Quote" })
				.press("Enter");
			const put = () =>
				page.evaluate(() => (window as unknown as { put: string[] }).put);
			await expect.poll(put, SOON).toHaveLength(1);
			const [png = ""] = await put();
			expect(png).toMatch(/^data:image\/png;base64,/);
			// half of 1600 pixels; width and height follow the first 16 bytes of a PNG
			const bytes = Buffer.from(png.split(",")[1] ?? "", "base64");
			expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([
				800, 400,
			]);
			// what Sheets takes
			expect(bytes.length).toBeLessThan(2_000_000);
			await page.close();
		});

		test("another piece, unknown colors and a mistake are told", async () => {
			const page = await open({
				...STATE,
				job: {
					...STATE.job,
					pieces: [
						{
							name: "=1+1<img>",
							quantity: 1,
							shape: "L",
							a: 100,
							b: 100,
							c: 200,
							d: 50,
							thickness: 20,
						},
						...STATE.job.pieces,
					],
				},
				studio: { ...STATE.studio, swatches: [] },
			});
			expect(await page.getByRole("alert").textContent()).toContain(
				"C must be below A",
			);
			await page.getByLabel("Piece", { exact: true }).selectOption("Tray");
			await page
				.getByText("An impression: every pour folds its own way")
				.waitFor();
			await page.getByText("Gray is a placeholder for all tones").waitFor();
			await page.getByText("seen into from above").waitFor();
			expect(await violationsOf(page)).toEqual([]);
			const width = await page.evaluate(
				() => document.documentElement.scrollWidth,
			);
			expect(width).toBeLessThanOrEqual(300);
			await page.close();
		});

		test("nothing was complained of", () => {
			expect(complaints).toEqual([]);
		});
	},
);
