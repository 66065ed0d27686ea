/** What was weighed or noted and may not be on the card yet, laid over the job file. */
import { nameKey, sameName } from "../../calc/names";
import { pourOf, weighedOf } from "../../job/answers/card/loadpour";
import {
	addedIn,
	addedText,
	CORRECTION_PARTS,
	correctionKey,
} from "../../job/cells/jobcells";
import type { Typed } from "../../job/fields/field";
import type { CorrectionInput, JobFile, PourInput } from "../../job/jobfile";
import { isBlank } from "../../job/reading/cells";
import type { CardCell, Weighing } from "../../sheets/messages";

export type Place = Pick<Weighing, "load" | "cell">;

export const samePlace = (one: Place, other: Place): boolean =>
	one.load === other.load && cellKey(one.cell) === cellKey(other.cell);

function cellKey(cell: CardCell): string {
	if ("weighed" in cell) return `weighed ${nameKey(cell.weighed)}`;
	if ("correction" in cell) return correctionKey(cell.correction, cell.part);
	return "step" in cell ? `step ${cell.step}` : `note ${cell.note}`;
}

/** What stands at a place; `""` where nothing does. */
export function typedAt(job: JobFile, { load, cell }: Place): Typed {
	const pour = pourOf({ job }, load);
	if ("weighed" in cell) return weighedOf(pour, cell.weighed) ?? "";
	if ("correction" in cell) {
		const { added, ...typed } = pour.corrections?.[cell.correction - 1] ?? {};
		return cell.part === "added" ? addedText(added) : (typed[cell.part] ?? "");
	}
	return (
		("step" in cell ? pour.steps?.[String(cell.step)] : pour[cell.note]) ?? ""
	);
}

/** The job once this is written; a load that begins has the plan's number written down, too. */
export function withWeighing(
	job: JobFile,
	{ load, cell, value, planNumber }: Omit<Weighing, "job" | "believed">,
): JobFile {
	const before = pourOf({ job }, load);
	const after = withCell(before, cell, value);
	const begins =
		!("note" in cell) && value !== "" && isBlank(before.planNumber);
	const pour = begins && planNumber !== "" ? { ...after, planNumber } : after;
	const pours = job.pours ?? [];
	return {
		...job,
		pours: pours.includes(before)
			? pours.map((each) => (each === before ? pour : each))
			: [...pours, pour],
	};
}

function withCell(pour: PourInput, cell: CardCell, value: Typed): PourInput {
	if ("note" in cell) {
		const { [cell.note]: _, ...rest } = pour;
		return value === "" ? rest : { ...rest, [cell.note]: value };
	}
	if ("correction" in cell) return withPart(pour, cell, value);
	return "step" in cell
		? { ...pour, steps: withEntry(pour.steps, String(cell.step), value) }
		: { ...pour, weighed: withEntry(pour.weighed, cell.weighed, value) };
}

/** Corrections before it keep their places. */
function withPart(
	pour: PourInput,
	{ correction, part }: Extract<CardCell, { correction: unknown }>,
	value: Typed,
): PourInput {
	const { corrections = [] } = pour;
	const rows = Array.from(
		{ length: Math.max(correction, corrections.length) },
		(_row, i): CorrectionInput => {
			const row = corrections[i] ?? {};
			if (i !== correction - 1) return row;
			const { [part]: _, ...rest } = row;
			if (value === "") return rest;
			return { ...rest, [part]: part === "added" ? addedIn(value) : value };
		},
	);
	return { ...pour, corrections: rows };
}

type Weights = Readonly<Record<string, Typed>>;

/** A blank entry is left out. */
const withEntry = (
	weights: Weights = {},
	name: string,
	value: Typed,
): Weights => ({
	...Object.fromEntries(
		Object.entries(weights).filter(([own]) => !sameName(own, name)),
	),
	...(value !== "" && { [name]: value }),
});

/** Places whose weights are other ones in `after` than in `before`: somebody typed them on the card. */
export const changedPlaces = (before: JobFile, after: JobFile): Place[] =>
	[...weightPlaces(before), ...weightPlaces(after)].filter(
		(place, index, all) =>
			typedAt(before, place) !== typedAt(after, place) &&
			all.findIndex((each) => samePlace(each, place)) === index,
	);

const weightPlaces = ({ pours = [] }: JobFile): Place[] =>
	pours.flatMap(({ load, weighed = {}, steps = {}, corrections = [] }) => [
		...Object.keys(weighed).map((name) => ({ load, cell: { weighed: name } })),
		...Object.keys(steps).map((step) => ({
			load,
			cell: { step: Number(step) },
		})),
		...corrections.flatMap((row, i) =>
			CORRECTION_PARTS.filter((part) => part in row).map((part) => ({
				load,
				cell: { correction: i + 1, part },
			})),
		),
	]);
