/** The demo job and a new studio as files; each test changes its own copy. */
import { readFileSync } from "node:fs";
import { expect } from "vitest";
import { basisOf } from "../../../src/job/answers/basis";
import { cureAnswer } from "../../../src/job/answers/cure/cure";
import { isKnown, type Known, saying } from "../../../src/job/answers/known";
import { moldAnswer } from "../../../src/job/answers/mold/mold";
import { buyAnswer } from "../../../src/job/answers/money/buy";
import { costAnswer } from "../../../src/job/answers/money/cost";
import { jobLine } from "../../../src/job/answers/money/jobline";
import { quoteAnswer } from "../../../src/job/answers/money/quote";
import type { Typed } from "../../../src/job/fields/field";
import type { SettingKey } from "../../../src/job/fields/settings";
import { fieldMistakes, type JobFile } from "../../../src/job/jobfile";
import type { UnitSystem } from "../../../src/job/reading/units";
import type { StudioFile } from "../../../src/job/studiofile";
import { starterStudio } from "../../../templates/starterstudio";

const FILES: Record<UnitSystem, string> = {
	metric: "templates/demo/guesthouse.json",
	us: "templates/demo/guesthouse-us.json",
};

export const demoJob = (units: UnitSystem): JobFile =>
	JSON.parse(readFileSync(FILES[units], "utf8"));

export interface Changed {
	job?: Partial<JobFile>;
	settings?: Partial<Record<SettingKey, Typed>>;
	studio?: Partial<StudioFile>;
}

/** The answers of the demo with these changes. */
export function answersOf(units: UnitSystem, changed: Changed = {}) {
	const studio = starterStudio(units);
	const own = {
		...studio,
		...changed.studio,
		settings: { ...studio.settings, ...changed.settings },
	};
	const job = { ...demoJob(units), ...changed.job };
	expect(fieldMistakes(job)).toEqual([]);
	const basis = basisOf(own, job);
	const cure = cureAnswer(basis);
	const cost = costAnswer(basis, cure, moldAnswer(basis));
	const quote = quoteAnswer(basis, cost);
	return {
		cure,
		cost,
		quote,
		buy: buyAnswer(basis, cost),
		line: jobLine(basis, cure, cost, quote),
	};
}

/** The number or text. @throws Error with what is said in its place. */
export function known<T>(value: Known<T>): T {
	if (!isKnown(value)) throw new Error(saying(value));
	return value.is;
}
