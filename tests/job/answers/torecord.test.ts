/** Which loads go into the Pour log, and which are written anew. */
import { describe, expect, test } from "vitest";
import { toRecord } from "../../../src/job/answers/card/torecord";
import { wholeFrom } from "../../../src/job/answers/whole";
import { asReached } from "../../../src/job/asreached";
import type { LoggedRow } from "../../../src/job/fields/log";
import type { PourInput } from "../../../src/job/jobfile";
import { slab } from "../../sheets/onejob";
import { poured, studio } from "./slabjob";

const recorded = (
	pour: Partial<PourInput>,
	logged: readonly LoggedRow[] = [],
) => toRecord(wholeFrom(poured({ load: 1, ...pour })), 7, logged);

const WEIGHED = { steps: { 1: 80 } };

describe("a load", () => {
	test.each([
		[{}, "Load 1 has no weights yet"],
		[WEIGHED, /^Load 1 is not finished/],
		[{ ...WEIGHED, finished: "no" }, /^Load 1 is not finished/],
		[{ ...WEIGHED, finished: "yes", spread: "wide" }, undefined],
	])("of %j is left out, or not: %s", (pour, left) => {
		const [one] = recorded(pour);
		if (left === undefined) expect(one?.row).toBeDefined();
		else expect(one?.left).toMatch(left);
	});

	test.each(["yes", "as it is", "AS IT IS"])(
		"that is said to be finished, %s, is recorded",
		(finished) => {
			expect(recorded({ ...WEIGHED, finished })).toMatchObject([
				{ load: 1, row: { load: 1, job: 7 } },
			]);
		},
	);
});

describe("a load that the log has", () => {
	const finished = { ...WEIGHED, finished: "yes" };
	const row = recorded(finished)[0]?.row ?? {};

	test("as it is, is not written again, whatever was noted beside it", () => {
		expect(recorded(finished, [row])).toEqual([]);
		const noted = { ...row, cost: 900, estimate: 1, result: "good" };
		expect(recorded(finished, [noted])).toEqual([]);
	});

	test("otherwise, is written anew, and keeps what was noted", () => {
		const noted = { ...row, cost: 900, result: "good" };
		expect(recorded({ ...finished, lots: "K-7" }, [noted])).toEqual([
			{
				load: 1,
				isAgain: true,
				row: { ...row, cost: 900, result: "good", lots: "K-7" },
			},
		]);
	});

	test("of another load, is not taken for it", () => {
		expect(recorded(finished, [{ ...row, load: 2 }])).toMatchObject([
			{ load: 1, row },
		]);
	});
});

describe("a job as it was reached", () => {
	test("has the doses that came out: 5% more pigment in one tone", () => {
		const whole = wholeFrom(poured());
		const card = whole.cards()[0];
		const umber =
			card && "is" in card.steps ? (card.steps.is[2]?.amount ?? 0) : 0;
		const job = {
			...slab,
			pours: [{ load: 1, steps: { 2: umber * 1.05 } }],
		} as never;
		const { tones } = asReached(studio, job);
		expect(tones[0]?.doses).toEqual({});
		// 4% and a twentieth more
		expect(tones[1]?.doses?.Umber).toBeCloseTo(0.042, 6);
		expect(tones.map(({ share }) => share)).toEqual([0.75, 0.25]);
	});

	test("is refused where nothing was weighed", () => {
		expect(() => asReached(studio, slab as never)).toThrow(
			"No load of this job was weighed: copy it as it was planned",
		);
	});
});
