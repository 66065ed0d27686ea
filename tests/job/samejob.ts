/** The job that was written, with what a new job begins with where the file says nothing: by the fields' own declarations. */
import { GOODS_STARTS, PRICE, WHAT_IF_STARTS } from "../../src/job/fields/cost";
import { CURE } from "../../src/job/fields/cure";
import type { Field } from "../../src/job/fields/field";
import { JOB } from "../../src/job/fields/job";
import { OPERATION_KEYS, OPERATIONS } from "../../src/job/fields/operations";
import { LOOK } from "../../src/job/fields/tone";
import type { JobFile } from "../../src/job/jobfile";

const FIELDS: Readonly<Record<string, Field>> = {
	...JOB,
	...LOOK,
	...CURE,
	...PRICE,
};

/** The starts of fields that came back beside what was typed. */
const startsOf = (job: JobFile, back: JobFile) =>
	Object.fromEntries(
		Object.keys(back).flatMap((key) => {
			const start = FIELDS[key]?.start;
			const is = typeof start === "object" ? start[job.units] : start;
			return key in job || is === undefined ? [] : [[key, is]];
		}),
	);

/** Pigments that are dosed, in the order of their first dose. */
const dosed = ({ tones }: JobFile): string[] => [
	...new Set(tones.flatMap(({ doses = {} }) => Object.keys(doses))),
];

export function withStarts(job: JobFile, back: JobFile): JobFile {
	const pigments = dosed(job);
	return {
		load: 1,
		goods: GOODS_STARTS,
		...(pigments.length > 0 && { pigments }),
		...startsOf(job, back),
		...job,
		// a column a load: the order of the loads says nothing
		...(job.pours && {
			pours: [...job.pours].sort((a, b) => a.load - b.load),
		}),
		whatIfs: WHAT_IF_STARTS.map((start, at) => ({
			...start,
			...job.whatIfs?.[at],
		})),
		work: Object.fromEntries(
			OPERATION_KEYS.map((key) => [
				key,
				{ hoursEach: OPERATIONS[key].hoursEach, ...job.work?.[key] },
			]),
		),
	};
}
