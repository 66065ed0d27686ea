/** A recipe goes into a tone on the Tones tab, and nowhere else. */
import { afterEach, beforeEach, expect, test } from "vitest";
import type { Desk } from "../../src/desk/contract";
import type { JobState } from "../../src/sheets/messages";
import { openWorkbook } from "./workbook";

let desk: Desk;
beforeEach(async () => {
	desk = await openWorkbook();
	await desk.call("createDemoJob", ["metric"]);
}, 120_000);
afterEach(() => desk.dispose());

const put = (tone: string, doses: Record<string, number>) =>
	desk.call("putRecipe", [{ job: 1, tone, doses }]) as Promise<JobState>;
const tonesOf = ({ job }: JobState) => job.tones;

test("its doses stand beside the tone, a new pigment in a free column, and no other tone is changed", async () => {
	const before = tonesOf((await desk.call("jobState", [1])) as JobState);
	const state = await put("slate", { Black: 0.0123, Ocher: 0.004 });
	const after = tonesOf(state);
	expect(after.find(({ name }) => name === "Slate")?.doses).toEqual({
		Black: 0.0123,
		Ocher: 0.004,
	});
	const others = (tones: typeof before) =>
		tones.filter(({ name }) => name !== "Slate");
	expect(others(after)).toEqual(others(before));
	expect(state.job.pigments).toEqual(["Umber", "Black", "Ocher"]);
	expect(desk.errors()).toEqual([]);
}, 120_000);

test("it is refused for a tone that is not there, and for more pigments than have a column", async () => {
	await expect(put("Nowhere", { Black: 0.01 })).rejects.toThrow(
		"The Tones tab has no tone Nowhere",
	);
	await expect(
		put("Slate", { Ocher: 0.01, White: 0.01, Green: 0.01 }),
	).rejects.toThrow("no free column for Ocher and White and Green");
}, 120_000);

test("a chain of a recipe is kept on Swatches: the cast, and what is still to be cast", async () => {
	const row = {
		mix: "White casting mix",
		finish: "cast",
		sealed: "bare",
		state: "dry",
		recipe: "Sand",
		wanted: "70, 4, 14",
	};
	const cast = {
		...row,
		doses: { Umber: 0.01 },
		color: "68, 4, 14",
		ageDays: 28,
	};
	const at = (await desk.call("recordSwatch", [cast])) as number;
	await desk.call("recordSwatch", [{ ...row, doses: { Umber: 0.009 } }]);
	const { studio } = (await desk.call("jobState", [1])) as JobState;
	expect(studio.swatches?.slice(-2)).toMatchObject([
		{ ...cast },
		{ ...row, doses: { Umber: 0.009 } },
	]);
	await desk.settle();
	const noted = (heading: string, down: number) => {
		const [headings = []] = desk.display("Swatches", "A5:Y5");
		const row = desk.display("Swatches", `A${at + down}:Y${at + down}`)[0];
		return row?.[headings.indexOf(heading)];
	};
	expect(noted("In its recipe", 0)).toBe("cast 1 of 2");
	expect(noted("In its recipe", 1)).toBe("cast 2, start from it");
	expect(noted("Not good for", 1)).toBe("anything yet: measure it");
	// CIEDE2000 of 2 in L* at a mean of 69: 2 / (1 + 0.015 × 19² / √(20 + 19²)) = 1.566
	expect(Number(noted("Off wanted by", 0))).toBeCloseTo(1.57, 1);
}, 120_000);
