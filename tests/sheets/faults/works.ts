/** What changes a workbook with a job in it, and how it is called. */
import type { SavedWorkbook } from "../../../src/desk/contract";
import { basisOf } from "../../../src/job/answers/basis";
import { planNumberOf } from "../../../src/job/answers/card/planfit";
import { orNull } from "../../../src/job/answers/known";
import type { JobState, Weighing } from "../../../src/sheets/messages";
import { openWorkbook } from "../workbook";

export const PNG =
	"data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

export const SWATCH = {
	mix: "White casting mix",
	finish: "honed",
	sealed: "bare",
	state: "dry",
	doses: { Umber: 0.01 },
	color: "52.1, 8.0, 14.2",
	ageDays: 28,
	date: "2027-03-09",
	remark: "=1+1",
};

/** Those that need no more than a job; the small one and the demo have a tone Shell. */
export const WORKS = [
	["creating a job", "createDemoJob", ["metric"]],
	["copying", "copyJob", [1]],
	["closing", "closeJob", [1, true]],
	["removing", "removeJob", [1]],
	["recording a sample", "recordSwatch", [SWATCH]],
	[
		"writing a recipe",
		"putRecipe",
		[{ job: 1, tone: "Shell", doses: { Umber: 0.021 } }],
	],
] as const;

/** Those that need the Pour card or the Quote, too. */
export const POUR_WORKS = [
	["recording a pour", "recordPour", [1]],
	["putting a picture", "putPicture", [1, PNG]],
	["putting a drawing", "putDrawing", [1, PNG]],
] as const;

/** The workbook with one weight on the Pour card, so that there is a pour to record. */
export async function withWeight(saved: SavedWorkbook): Promise<SavedWorkbook> {
	const args = [await weighing(saved)];
	const desk = await openWorkbook({ saved });
	await desk.call("weigh", args);
	const weighed = desk.save();
	desk.dispose();
	return weighed;
}

/** The first weight of the first load. */
export async function weighing(saved: SavedWorkbook): Promise<Weighing> {
	const desk = await openWorkbook({ saved });
	const { job, studio } = (await desk.call("jobState", [1])) as JobState;
	desk.dispose();
	return {
		job: 1,
		load: 1,
		cell: { step: 1 },
		value: 2.5,
		believed: "",
		planNumber: orNull(planNumberOf(basisOf(studio, job))) ?? "",
	};
}
