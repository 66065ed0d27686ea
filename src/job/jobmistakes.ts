/** What keeps a file from being a job of a studio: every mistake, at its field. */
import { InputError } from "../calc/errors";
import { basisOf } from "./answers/basis";
import { fieldMistakes, JOB_SHAPE, type JobFile } from "./jobfile";
import { isShaped, type Mistake } from "./mistakes";
import { refusals } from "./refusals";
import type { StudioFile } from "./studiofile";

/** The job, when nothing of it is wrong. @throws InputError with a line for each mistake. */
export function checkedJob(studio: StudioFile, input: unknown): JobFile {
	const mistakes = jobMistakes(studio, input);
	if (mistakes.length > 0) throw new InputError(mistakes.join("\n"));
	return input as JobFile;
}

/** A sentence for each mistake of a file, which names its field. */
export function jobMistakes(studio: StudioFile, input: unknown): string[] {
	const typed = fieldMistakes(input);
	const sentences = typed.map(({ say }) => say);
	if (!isJobLike(input)) return sentences;
	const isFine = ({ path }: Mistake) =>
		!typed.some((one) => rowOf(one.path) === rowOf(path));
	return [
		...sentences,
		...otherUnits(studio, input),
		...refusals(basisOf(studio, input))
			.filter(isFine)
			.map(({ path, say }) => `"${path}": ${say}`),
	];
}

/** Sound enough to be worked out: its fields may hold anything. */
const isJobLike = (input: unknown): input is JobFile =>
	isShaped(input, JOB_SHAPE) &&
	["metric", "us"].includes((input as JobFile).units);

const otherUnits = (
	{ settings: { units } }: StudioFile,
	job: JobFile,
): string[] =>
	units === undefined || units === job.units
		? []
		: [`"units" is "${job.units}", but this workbook is in ${units}`];

/** `pieces[2]` of `pieces[2].a`; a field of the job itself is a row of its own. */
const rowOf = (path: string): string => path.replace(/\..*$/, "");
