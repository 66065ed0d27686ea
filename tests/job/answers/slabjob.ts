/** The job of one slab and two tones as a file, and its answers; the numbers by hand are in tests/sheets/onejob.ts. */
import { type Basis, basisOf } from "../../../src/job/answers/basis";
import type { Known } from "../../../src/job/answers/known";
import type { JobFile, PourInput } from "../../../src/job/jobfile";
import type { StudioFile } from "../../../src/job/studiofile";
import { starterStudio } from "../../../templates/starterstudio";
import { slab } from "../../sheets/onejob";

export const studio: StudioFile = starterStudio("metric");

/** Rows of the slab's mix. */
export const ROWS = studio.mixes.filter(({ mix }) => mix === slab.mix);

/** The studio with the slab's sand as damp as this. */
export const withDampSand = (damp: object): StudioFile => ({
	...studio,
	mixes: studio.mixes.map((row) =>
		row === ROWS[2] ? { ...row, ...damp } : row,
	),
});

export const slabCore = (
	changes: Partial<JobFile> = {},
	its: StudioFile = studio,
): Basis => basisOf(its, { ...(slab as JobFile), ...changes });

export const poured = (...pours: PourInput[]): Basis => slabCore({ pours });

/** The value of what must be known. */
export function known<T>(answer: Known<T>): T {
	if ("is" in answer) return answer.is;
	throw new Error(JSON.stringify(answer));
}
