/** What was typed on pour day of one load. */
import { InputError } from "../../../calc/errors";
import { sameName } from "../../../calc/names";
import type { Typed } from "../../fields/field";
import { POUR } from "../../fields/pour";
import type { PourInput } from "../../jobfile";
import { isBlank, numberIn } from "../../reading/cells";
import type { UnitSystem } from "../../reading/units";
import { weightTyped } from "../../reading/weights";
import type { Given } from "../given";
import { attempt, type Known, missing, readField } from "../known";

/** The ingredient that no mix lists. */
export const ICE = "Ice, crushed";

/** Nothing was typed of a load that has no row. */
export const pourOf = ({ job }: Pick<Given, "job">, load: number): PourInput =>
	(job.pours ?? []).find((pour) => Number(pour.load) === load) ?? { load };

/** A field of the load in SI; missing while it is blank. */
export const pourField = <K extends keyof typeof POUR & string>(
	{ units }: Given,
	pour: PourInput,
	key: K,
) => readField(POUR, key, pour, units);

/** A typed weight in the unit of its scale; missing while it is blank. */
export const weightIn = (
	name: string,
	typed: Typed | undefined,
	units: UnitSystem,
): Known<number> =>
	isBlank(typed)
		? missing(name)
		: attempt(() => weightTyped(name, typed, units));

export function weighedOf(
	{ weighed = {} }: PourInput,
	ingredient: string,
): Typed | undefined {
	return Object.entries(weighed).find(([name]) =>
		sameName(name, ingredient),
	)?.[1];
}

/** The reserve, and what was weighed at each step of the plan. */
export function stepWeights({ steps = {} }: PourInput): Known<{
	reserve: number | undefined;
	/** By step; undefined where it is still to come. */
	plan: readonly (number | undefined)[];
}> {
	return attempt(() => {
		const all = new Map<number, number>();
		for (const [key, typed] of Object.entries(steps)) {
			const step = Number(key);
			if (!Number.isInteger(step) || step < 0 || step > MOST_STEPS)
				throw new InputError(
					`a weight is typed for step ${key}, which no plan has`,
				);
			if (!isBlank(typed)) all.set(step, numberIn(`step ${key}`, typed));
		}
		const last = Math.max(0, ...all.keys());
		return {
			reserve: all.get(0),
			plan: Array.from({ length: last }, (_, i) => all.get(i + 1)),
		};
	});
}

/** No plan of the most tones and pigments is longer. */
const MOST_STEPS = 100;

/** Whether any weight was typed of the load. */
export const isWeighed = ({ weighed = {}, steps = {} }: PourInput): boolean =>
	[...Object.values(weighed), ...Object.values(steps)].some(
		(typed) => !isBlank(typed),
	);

/** Whether nothing more is done to it, so that it may be kept in the log. */
export const isFinished = ({
	finished,
}: Pick<PourInput, "finished">): boolean =>
	["yes", "as it is"].some((word) => sameName(String(finished ?? ""), word));
