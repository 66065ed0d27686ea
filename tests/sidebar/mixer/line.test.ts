import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { PanelCalls } from "../../../src/sheets/messages";
import { openLine } from "../../../src/sidebar/mixer/line";
import type { Ask } from "../../../src/sidebar/script";
import { cardScript } from "./card";

const DRY = { load: 1, cell: { weighed: "Dry mix" } } as const;
const WATER = { load: 1, cell: { weighed: "Water" } } as const;
const LOST = "NetworkError: Connection failure due to HTTP 0";

beforeEach(() => {
	vi.useFakeTimers();
});
afterEach(() => {
	vi.useRealTimers();
});

/** A line to a card; answers come when the test lets time pass. */
async function opened() {
	const card = cardScript();
	const calls: string[] = [];
	let fails: (name: string) => string | undefined = () => undefined;
	/** Done by the script, but the answer is lost. */
	let loses = false;
	const ask = (async (name: keyof PanelCalls, ...args: never[]) => {
		calls.push(name);
		await new Promise((done) => setTimeout(done, 100));
		const failed = fails(name);
		if (failed) throw new Error(failed);
		const answer = (
			card as never as Record<string, (...all: never[]) => unknown>
		)[name]?.(...args);
		if (loses) throw new Error(LOST);
		return answer;
	}) as Ask;
	const line = openLine(ask, 3, () => {});
	await vi.advanceTimersByTimeAsync(200);
	return {
		card,
		calls,
		line,
		fail: (how: typeof fails) => {
			fails = how;
		},
		lose: (on: boolean) => {
			loses = on;
		},
		weighed: () => line.shown().now?.job.pours?.[0]?.weighed,
		pass: (ms: number) => vi.advanceTimersByTimeAsync(ms),
	};
}

test("what is weighed is shown at once and written in order while more is weighed", async () => {
	const { line, card, weighed, calls, pass } = await opened();
	line.write(DRY, 88);
	line.write(WATER, 22);
	expect(weighed()).toEqual({ "Dry mix": 88, Water: 22 });
	expect(line.shown().waiting).toBe(2);
	expect(calls.filter((name) => name === "weigh")).toHaveLength(1);
	await pass(500);
	expect(line.shown()).toMatchObject({ waiting: 0, refused: [], taken: [] });
	expect(card.load(1).weighed).toEqual({ "Dry mix": 88, Water: 22 });
});

test("without a connection nothing is lost, and it is written when it is back", async () => {
	const { line, card, weighed, fail, pass } = await opened();
	fail(() => LOST);
	line.write(DRY, 88);
	line.write(WATER, 23);
	line.write(WATER, 22);
	await pass(60_000);
	expect(line.shown().failure?.text).toBe("The connection was lost.");
	expect(line.shown().waiting).toBe(2);
	expect(weighed()).toEqual({ "Dry mix": 88, Water: 22 });
	fail(() => undefined);
	await pass(20_000);
	expect(line.shown()).toMatchObject({ waiting: 0, failure: undefined });
	expect(card.load(1).weighed).toEqual({ "Dry mix": 88, Water: 22 });
});

test("a lost answer is no lost weight: writing it again finds it there", async () => {
	const { line, card, lose, pass } = await opened();
	lose(true);
	line.write(DRY, 88);
	await pass(300);
	expect(card.load(1).weighed).toEqual({ "Dry mix": 88 });
	expect(line.shown().waiting).toBe(1);
	lose(false);
	await pass(5_000);
	expect(line.shown()).toMatchObject({ waiting: 0, refused: [], taken: [] });
});

test("an answer that never comes is taken for lost", async () => {
	const never = new Promise(() => {});
	const ask = (async (name: string) =>
		name === "jobState" ? cardScript().state() : never) as unknown as Ask;
	const line = openLine(ask, 3, () => {});
	await vi.advanceTimersByTimeAsync(10);
	line.write(DRY, 88);
	await vi.advanceTimersByTimeAsync(50_000);
	expect(line.shown().failure?.text).toBe("The connection was lost.");
	expect(line.shown().waiting).toBe(1);
});

test("a weight that somebody typed meanwhile is not overwritten, and is told", async () => {
	const { line, card, weighed, pass } = await opened();
	card.type({ ...DRY, value: 87 });
	line.write(DRY, 88);
	await pass(500);
	expect(weighed()).toEqual({ "Dry mix": 87 });
	expect(line.shown().refused).toEqual([
		"Load 1 holds 87 there by now; 88 was not written",
	]);
	line.seen();
	expect(line.shown().refused).toEqual([]);
});

test("what is typed on the card is taken up, and named", async () => {
	const { line, card, weighed, pass } = await opened();
	card.type({ ...WATER, value: 22 });
	line.look();
	await pass(200);
	expect(weighed()).toEqual({ Water: 22 });
	expect(line.shown().taken).toEqual([WATER]);
	line.write(WATER, 22.1);
	await pass(200);
	expect(line.shown().taken).toEqual([]);
	expect(card.load(1).weighed?.Water).toBe(22.1);
});

test("what was read before a weight was written does not bring the old back", async () => {
	const { line, weighed, pass } = await opened();
	line.write(DRY, 88);
	await pass(50);
	line.look();
	await pass(20);
	expect(weighed()).toEqual({ "Dry mix": 88 });
	await pass(300);
	expect(weighed()).toEqual({ "Dry mix": 88 });
	expect(line.shown().taken).toEqual([]);
});

test("one that the script refuses in words stays, and goes when it can", async () => {
	const { line, fail, pass } = await opened();
	fail((name) => (name === "weigh" ? "Error: Job 3 is closed" : undefined));
	line.write(DRY, 88);
	await pass(300);
	expect(line.shown().failure?.text).toBe("Job 3 is closed.");
	expect(line.shown().waiting).toBe(1);
	fail(() => undefined);
	line.tryNow();
	await pass(300);
	expect(line.shown()).toMatchObject({ waiting: 0, failure: undefined });
});

test("the same value again is not written", async () => {
	const { line, calls, pass } = await opened();
	line.write(DRY, "");
	await pass(300);
	expect(calls).toEqual(["jobState"]);
});
