/** What a job's tabs have no cell for: nothing of a file may get lost unseen when it is written. */
import { sameName } from "../../calc/names";
import { OPERATION_KEYS } from "../fields/operations";
import { JOB_SHAPE, type JobFile, MOST, type PourInput } from "../jobfile";
import { isBlank } from "../reading/cells";
import type { StudioFile } from "../studiofile";
import { CARD_ROWS, ingredientsOf } from "./jobcells";
import { pigmentColumns } from "./jobslots";

/** A sentence for each part that has no room. */
export function roomMistakes(job: JobFile, studio: StudioFile): string[] {
	const ingredients = ingredientsOf(studio, job.mix);
	return [
		...Object.entries(JOB_SHAPE.lists ?? {}).flatMap(([key, { most }]) => {
			const rows = job[key as keyof JobFile] as readonly unknown[] | undefined;
			return tooMany(`"${key}" has`, rows?.length ?? 0, most, "rows");
		}),
		...tooMany(
			"the tones use",
			pigmentColumns(job).length,
			MOST.pigments,
			"pigments",
		),
		...Object.keys(job.work ?? {})
			.filter((key) => !(OPERATION_KEYS as readonly string[]).includes(key))
			.map((key) => `"work.${key}" is none of ${OPERATION_KEYS.join(", ")}`),
		...(job.pours ?? []).flatMap((pour, index, pours) =>
			pourMistakes(pour, index, pours, ingredients),
		),
	];
}

const tooMany = (
	what: string,
	count: number,
	most: number,
	of: string,
): string[] =>
	count > most ? [`${what} ${count} ${of}: there is room for ${most}`] : [];

function pourMistakes(
	{ load, weighed = {}, steps = {} }: PourInput,
	index: number,
	pours: readonly PourInput[],
	ingredients: readonly string[],
): string[] {
	const path = `pours[${index}]`;
	const first = pours.findIndex((pour) => pour.load === load);
	const typed = (values: object) =>
		Object.entries(values)
			.filter(([, value]) => !isBlank(value))
			.map(([key]) => key);
	return [
		...(first < index
			? [`"${path}" is of load ${load}, as "pours[${first}]"`]
			: []),
		...typed(weighed)
			.filter((name) => !ingredients.some((own) => sameName(own, name)))
			.map(
				(name) =>
					`"${path}.weighed.${name}" is no ingredient of the mix: there are ${ingredients.join(", ")}`,
			),
		...typed(steps)
			.filter((step) => !STEPS.includes(step))
			.map(
				(step) =>
					`"${path}.steps.${step}" is no step: there are 0 to ${CARD_ROWS.steps - 1}`,
			),
	];
}

const STEPS = Array.from({ length: CARD_ROWS.steps }, (_, step) =>
	String(step),
);
