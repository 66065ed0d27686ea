/** Jobs written into a workbook by the built script, and read out of it by the same. */
import fc from "fast-check";
import { expect } from "vitest";
import type { JobFile } from "../../../src/job/jobfile";
import type { UnitSystem } from "../../../src/job/reading/units";
import type { JobMade } from "../../../src/sheets/messages";
import { withStarts } from "../../job/samejob";
import { asTexts } from "../../job/writtenjob";
import { openWorkbook } from "../workbook";
import { soundJob } from "./soundjob";

export const LOCALES = ["en_US", "de_DE", "fr_FR", "pt_BR"] as const;

/** Each job goes into a workbook of its own, in which nothing calculates. */
export const inBook = (
	locale: (typeof LOCALES)[number],
	units: UnitSystem,
	numRuns: number,
) =>
	fc.assert(
		fc.asyncProperty(soundJob(units), async (job) => {
			const desk = await openWorkbook({ locale, quick: true });
			try {
				const { number } = (await desk.call("createJob", [job], {
					quick: true,
				})) as JobMade;
				const back = (await desk.call("jobFile", [number], {
					quick: true,
				})) as JobFile;
				expect(asTexts(back)).toEqual(asTexts(withStarts(job, back)));
			} finally {
				desk.dispose();
			}
		}),
		{ numRuns, endOnFailure: true },
	);
