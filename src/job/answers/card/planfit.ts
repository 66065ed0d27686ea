/** Whether the weights that were typed belong to the plan as it is now. */
import { planNumber } from "../../../calc/plannumber";
import { batchShares } from "../../../calc/tones";
import type { PourInput } from "../../jobfile";
import type { Basis } from "../basis";
import {
	all,
	from,
	is,
	isKnown,
	type Known,
	look,
	type Said,
	saidOf,
} from "../known";
import { isWeighed, pourField } from "./loadpour";

/** `none` is typed beside the weights, or the `same` number or an `other`; undefined while nothing is weighed. */
export type PlanFit = "none" | "same" | "other" | undefined;

export const planNumberOf = ({ tones, mix, pigments }: Basis): Known<number> =>
	from(
		all([tones.asWeighed, mix.ingredients, mix.binderShare] as [
			typeof tones.asWeighed,
			typeof mix.ingredients,
			Known<number>,
		]),
		([wet, rows, binderShare]) => {
			// Fails where no tone takes a part of the mix.
			batchShares(wet);
			return planNumber(
				wet,
				pigments.map(({ name }) => name),
				{ parts: rows.map(({ parts }) => parts), binderShare },
			);
		},
	);

export function planFit(
	{ given }: Basis,
	pour: PourInput,
	plan: number,
): PlanFit {
	if (!isWeighed(pour)) return undefined;
	const typed = pourField(given, pour, "planNumber");
	if ("missing" in typed) return "none";
	return isKnown(typed) && typed.is === plan ? "same" : "other";
}

/** What the fit means to whoever weighs. */
export const fitSaid = (fit: PlanFit): Said =>
	saidOf(
		fit === "other"
			? look(
					"weights were typed for another plan: bring back the tones, or clear the weights of that load",
				)
			: fit === "none"
				? look(
						"type the plan number where a load has weights, so that a later change shows",
					)
				: is("fine"),
	);

/** Whether the weights of every load that was poured belong to the plan. */
export function planCheck(basis: Basis): Said {
	const plan = planNumberOf(basis);
	if (!isKnown(plan)) return saidOf(plan);
	const fits = (basis.given.job.pours ?? []).map((pour) =>
		planFit(basis, pour, plan.is),
	);
	return fitSaid(
		fits.find((fit) => fit === "other") ?? fits.find((fit) => fit === "none"),
	);
}
