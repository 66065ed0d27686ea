/** The card of the load that is chosen. */
import { sameName } from "../../../calc/names";
import { LOAD } from "../../jobfile";
import { isBlank } from "../../reading/cells";
import type { Basis } from "../basis";
import {
	all,
	flat,
	from,
	is,
	type Known,
	look,
	missing,
	readField,
	type Said,
} from "../known";
import { type Load, loadsOf } from "../loads";
import { type CardAnswer, cardOf, firstWrong } from "./cardanswers";
import { ICE } from "./loadpour";
import { planCheck } from "./planfit";
import type { WeighOutLine } from "./weighline";

export interface ChosenCard extends CardAnswer {
	/** Whether the weights of every load belong to the plan. */
	allFit: Said;
}

/** Nothing is weighed by a card whose load is not chosen. */
export function chosenCard(basis: Basis): Known<ChosenCard> {
	const { job, units } = basis.given;
	const number = isBlank(job.load)
		? missing("choose the load")
		: readField({ load: LOAD }, "load", job, units);
	const chosen = from(
		all<[number, readonly Load[]]>([number, loadsOf(basis.loads)]),
		([wanted, every]): Known<Load> => {
			const load = every.find((one) => one.number === wanted);
			return load ? is(load) : look(`this job has no load ${wanted}`);
		},
	);
	return from(flat(chosen), (load) => {
		const card = cardOf(basis, load);
		const allFit = planCheck(basis);
		return { ...card, allFit, check: firstWrong([card.check, allFit]) };
	});
}

/** The weigh-out in the rows of the tab: the mix's ingredients, and ice in the last. */
export const weighOutRows = (
	lines: readonly WeighOutLine[],
	rows: number,
): (WeighOutLine | undefined)[] => {
	const isIce = ({ name }: WeighOutLine) => sameName(name, ICE);
	const own = lines.filter((line) => !isIce(line));
	return [
		...Array.from({ length: rows - 1 }, (_, i) => own[i]),
		lines.find(isIce),
	];
};
