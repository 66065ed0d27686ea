/** Answers of a tab as its cells show them, and public functions called on what is shown. */
import { expect } from "vitest";
import { callFunction, functionNamed } from "../../../src/functions";
import { basisOf } from "../../../src/job/answers/basis";
import type { JobFile } from "../../../src/job/jobfile";
import type { StudioFile } from "../../../src/job/studiofile";
import {
	type Cell,
	type TabAnswer,
	type TabInput,
	tabCells,
} from "../../../src/job/tabs/tab";

export const inputOf = (
	studio: StudioFile,
	job: JobFile,
	regions: TabInput["regions"] = {},
): TabInput => ({ ...basisOf(studio, job), regions, units: job.units });

/** The values of a list, a row a label. */
export const listed = (answer: TabAnswer, input: TabInput): Cell[][] =>
	tabCells(answer, input);

/** The rows of a table under its headings. */
export const rowsOf = (answer: TabAnswer, input: TabInput): Cell[][] =>
	tabCells(answer, input).slice(1);

/** What a person's own formula gives. */
export function called(name: string, ...given: unknown[]): number {
	const fn = functionNamed(name);
	if (!fn) throw new Error(`There is no function ${name}`);
	return Number(callFunction(fn, given));
}

/** The same number, but for the last digits of binary arithmetic. */
export function expectSame(shown: Cell | undefined, own: number): void {
	expect(typeof shown).toBe("number");
	expect(Math.abs(Number(shown) - own)).toBeLessThanOrEqual(
		1e-9 * Math.max(1, Math.abs(own)),
	);
}

/** Labels or headings that name a public function. */
export const traceable = ({ shown }: TabAnswer): string[] => [
	...new Set(shown.flatMap(({ label, by }) => (by ? [`${label}: ${by}`] : []))),
];
