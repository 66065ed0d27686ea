/** Writing a job and reading it are inverse: hundreds of jobs as people might type them, without a workbook. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ingredientsOf } from "../../src/job/cells/jobcells";
import { repeatOrder } from "../../src/job/repeatorder";
import { demo } from "../../templates/index";
import { starterStudio } from "../../templates/starterstudio";
import { withStarts } from "./samejob";
import { anyJob, asTexts, readBack } from "./writtenjob";

describe.each(["metric", "us"] as const)("a job in %s", (units) => {
	const studio = starterStudio(units);
	const mix = String(studio.mixes[0]?.mix);
	const jobs = anyJob(units, mix, ingredientsOf(studio, mix));

	test("reads back as it was written", () => {
		fc.assert(
			fc.property(jobs, (job) => {
				const back = readBack(job, studio);
				expect(asTexts(back)).toEqual(asTexts(withStarts(job, back)));
			}),
			{ numRuns: 300 },
		);
	}, 120_000);

	test("read back and written again is the same", () => {
		fc.assert(
			fc.property(jobs, (job) => {
				const back = readBack(job, studio);
				expect(readBack(back, studio)).toEqual(back);
			}),
			{ numRuns: 50 },
		);
	}, 60_000);

	test("ordered again holds nothing of the pour that it was copied from", () => {
		fc.assert(
			fc.property(jobs, (job) => {
				const back = readBack(repeatOrder(job), studio);
				expect(back.pours).toBeUndefined();
				expect(back.cureLog).toBeUndefined();
				expect(back.payments).toBeUndefined();
				expect(asTexts(back.pieces)).toEqual(asTexts(job.pieces));
			}),
			{ numRuns: 50 },
		);
	}, 60_000);

	test("a row with nothing but the title of a table in it ends no table", () => {
		const { about: _, ...rest } = demo[units];
		const job = {
			...rest,
			pieces: [{ name: "Cutouts" }, { name: "Knockouts" }, ...rest.pieces],
			changes: [{ what: "Payments" }, { what: "Work" }, { what: "Rush" }],
		};
		const { pieces, changes, cutouts } = readBack(job, studio);
		expect(pieces).toHaveLength(rest.pieces.length + 2);
		expect(changes).toEqual(job.changes);
		expect(cutouts).toHaveLength(rest.cutouts?.length ?? 0);
	});

	test("the demo reads back as its file says", () => {
		const { about: _, ...job } = demo[units];
		const back = readBack(job, studio);
		const filled = {
			...job,
			tones: job.tones.map(({ doses = {}, ...tone }) =>
				Object.keys(doses).length > 0 ? { ...tone, doses } : tone,
			),
		};
		expect(asTexts(back)).toEqual(asTexts(withStarts(filled, back)));
	});
});
