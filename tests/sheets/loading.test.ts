/** While cells calculate, each says `Loading...`: nothing is decided from one. */
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import { smallJob } from "./small/plan";
import { openSmall } from "./small/workbook";
import { openWorkbook } from "./workbook";

const LOADING = { loading: true };
const NOT_YET =
	"cells that are not calculated yet: wait a moment, then try again";

async function twice(
	act: (desk: Desk, how: { loading?: boolean }) => Promise<unknown>,
) {
	const results: unknown[] = [];
	for (const how of [{}, LOADING]) {
		const desk = await openSmall();
		await desk.call("createDemoJob", ["metric"]);
		results.push([await act(desk, how), desk.state()]);
		desk.dispose();
	}
	return results;
}

test.each([
	["another job", "createJob", [{ ...smallJob, title: "Other" }]],
	["a copy", "copyJob", [1]],
	["a removed job", "removeJob", [1]],
])(
	"%s is the same as once all is calculated",
	async (_, name, args) => {
		const [calculated, loading] = await twice((desk, how) =>
			desk.call(name, args, how),
		);
		expect(JSON.stringify(loading) === JSON.stringify(calculated)).toBe(true);
	},
	60_000,
);

test("an input that calculates is not copied", async () => {
	const desk = await openSmall();
	await desk.call("createDemoJob", ["metric"]);
	desk.type("1 Job", "C6", "=1+1");
	await desk.settle();
	const before = desk.state();
	await expect(desk.call("copyJob", [1], LOADING)).rejects.toThrow(NOT_YET);
	expect(desk.state()).toBe(before);
	desk.dispose();
}, 60_000);

test("a job that calculates is not closed", async () => {
	const desk = await openSmall();
	await desk.call("createDemoJob", ["metric"]);
	const before = desk.state();
	await expect(desk.call("closeJob", [1, true], LOADING)).rejects.toThrow(
		NOT_YET,
	);
	expect(desk.state()).toBe(before);
	desk.dispose();
}, 60_000);

let desk: Desk;
beforeAll(async () => {
	desk = await openWorkbook();
	await desk.call("createDemoJob", ["metric"]);
}, 120_000);
afterAll(() => desk.dispose());

test.each([
	["recordPour", [1]],
	["jobState", [1]],
	["jobFile", [1]],
	["answers", [1]],
	["showCell", [1, "Job.weights"]],
])(
	"%s is told from what is typed, and so the same as once all is calculated",
	async (name, args) => {
		const calculated = await desk.call(name, args);
		expect(await desk.call(name, args, LOADING)).toEqual(calculated);
	},
	60_000,
);

test("the panel opens with what it has once all is calculated", async () => {
	const calculated = await desk.call("panelStart");
	expect(await desk.call("panelStart", [], LOADING)).toEqual(calculated);
}, 60_000);
