/** What a change costs in a real sheet, where each round of custom calls takes the better part of a second. */
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { customNames, type Rounds, roundsOf } from "../bench/rounds";
import { openWorkbook } from "./workbook";

let desk: Desk;
let studio: Rounds;
let job: Rounds;
beforeAll(async () => {
	desk = await openWorkbook();
	await desk.call("createDemoJob", ["metric"]);
	job = roundsOf(desk, customNames, isOfJob);
	studio = roundsOf(desk, customNames, (tab) => !isOfJob(tab));
}, 120_000);
afterAll(() => desk.dispose());

const isOfJob = (tab: string) => tab.startsWith("1 ");

test("a job is answered by at most 20 custom calls", () => {
	// Every tab of a job asks for something.
	expect(job.calls).toBeGreaterThanOrEqual(6);
	expect(job.calls).toBeLessThanOrEqual(20);
});

test("none of a job's calls waits for another", () => {
	expect(job.depth).toBe(1);
});

test("a studio's calls wait for those of its jobs, and for no more", () => {
	expect(studio.calls).toBeGreaterThan(0);
	expect(studio.depth).toBe(2);
});

test("no formula is longer than 200 letters", () => {
	expect(job.formulas + studio.formulas).toBeGreaterThan(100);
	expect(Math.max(job.longest, studio.longest)).toBeLessThanOrEqual(200);
});
