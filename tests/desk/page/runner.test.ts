/** What the panel's page finds as `google.script`, shown with a small add-on of its own. */
import type { Frame } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { deskUrl, sharedBrowser } from "../../run/once";
import { ADD_ON } from "./standin";
import { opened, type Visit, visit } from "./visit";

const MINUTE = 60_000;

let at: Visit;
let panel: Frame;

beforeAll(async () => {
	const size = { width: 1000, height: 700 };
	at = await visit(await sharedBrowser(), await deskUrl(), size, ADD_ON);
	await opened(at.page);
	const frame = await at.page.waitForSelector("#panel-page iframe");
	panel = (await frame.contentFrame()) as Frame;
	await panel.waitForFunction(() => typeof google === "object");
}, 3 * MINUTE);

afterAll(() => at?.page.close());

/** What becomes of a call: its answer or its error's message, and the user object. */
function called(name: string, ...args: unknown[]) {
	return panel.evaluate(
		([name, args]) =>
			new Promise((done) => {
				const run = google.script.run
					.withUserObject("mine")
					.withSuccessHandler((answer, user) => done({ answer, user }))
					.withFailureHandler((error, user) =>
						done({ error: error.message, user }),
					);
				(run[name] as (...args: unknown[]) => void)(...args);
			}),
		[name, args] as const,
	);
}

describe("google.script in the panel's page", { timeout: MINUTE }, () => {
	test("passes plain values, and the user object", async () => {
		expect(await called("echo", { a: [1, "x", null, true] })).toEqual({
			answer: { value: { a: [1, "x", null, true] }, calls: 1 },
			user: "mine",
		});
	});

	test("the script starts anew for every call", async () => {
		await called("echo", 1);
		expect(await called("echo", 2)).toMatchObject({ answer: { calls: 1 } });
	});

	test("an answer with a Date in it arrives as null", async () => {
		expect(await called("today")).toMatchObject({ answer: null });
	});

	test("what the script throws arrives as an error of the same words", async () => {
		expect(await called("fails")).toEqual({
			error: "The mold is not level.",
			user: "mine",
		});
	});

	test("a Date cannot be sent", async () => {
		const thrown = await panel.evaluate(() => {
			try {
				google.script.run.echo?.(new Date() as never);
				return "sent";
			} catch (error) {
				return String(error);
			}
		});
		expect(thrown).toContain("illegal value");
	});

	test("there is no way to a private function", async () => {
		expect(await panel.evaluate(() => "hidden_" in google.script.run)).toBe(
			false,
		);
	});

	test("each with… gives a new runner and leaves the old one as it was", async () => {
		const kept = await panel.evaluate(
			() =>
				new Promise((done) => {
					const plain = google.script.run.withSuccessHandler((_, user) =>
						done(user ?? "none"),
					);
					plain.withUserObject("other");
					(plain.echo as (value: number) => void)(1);
				}),
		);
		expect(kept).toBe("none");
	});

	test("thirty calls at once are all answered", async () => {
		const answers = await Promise.all(
			Array.from({ length: 30 }, (_, index) => called("echo", index)),
		);
		expect(
			answers.map((one) => (one as { answer: { value: number } }).answer.value),
		).toEqual(Array.from({ length: 30 }, (_, index) => index));
	});

	test("ten calls are on their way at a time, and run in an order of chance", async () => {
		await at.page.evaluate(() => {
			const { desk } = window;
			if (!desk) throw new Error("there is no desk");
			const own = desk.call;
			let open = 0;
			const seen = { most: 0, order: [] as unknown[] };
			Object.assign(window, { seen });
			desk.call = async (name, args, how) => {
				open += 1;
				seen.most = Math.max(seen.most, open);
				seen.order.push(args?.[0]);
				await new Promise((later) => setTimeout(later, 50));
				try {
					return await own(name, args, how);
				} finally {
					open -= 1;
				}
			};
		});
		// all sent in one go, as a page that does not wait sends them
		await panel.evaluate(
			() =>
				new Promise<void>((done) => {
					let left = 40;
					const run = google.script.run.withSuccessHandler(() => {
						left -= 1;
						if (left === 0) done();
					});
					for (let index = 0; index < 40; index++)
						(run.echo as (value: number) => void)(index);
				}),
		);
		const { most, order } = await at.page.evaluate(
			() =>
				(window as unknown as { seen: { most: number; order: number[] } }).seen,
		);
		expect(most).toBe(10);
		expect(order).toHaveLength(40);
		expect(order).not.toEqual([...order].sort((a, b) => a - b));
	});

	test("the page can touch nothing of the desk's", async () => {
		const reached = await panel.evaluate(() => {
			try {
				return String(window.parent.document.title);
			} catch {
				return "refused";
			}
		});
		expect(reached).toBe("refused");
	});

	test("a cell's function finds nothing that a bare script context has not", async () => {
		const { page } = at;
		await page.evaluate(async () => {
			window.desk?.type("Sheet1", "A1", "=NOT_BARE()");
			await window.desk?.settle();
		});
		expect(
			await page.evaluate(() => window.desk?.read("Sheet1", "A1")),
		).toEqual([[0]]);
	});

	test("the panel closes itself", async () => {
		await panel.evaluate(() => google.script.host.close());
		await at.page.locator("#panel").waitFor({ state: "hidden" });
		expect(at.complaints).toEqual([]);
	});
});
