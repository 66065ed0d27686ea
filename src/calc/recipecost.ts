/** What the pigment of a recipe weighs and costs. */
import { sum } from "./sum";
import { pigmentKg } from "./tones";

/** Dry pigment, kg each, and its cost; undefined where a pigment that is used has no price. */
export function costOf({
	doses,
	binderShare,
	pricesPerKg,
	massKg,
}: {
	doses: readonly number[];
	binderShare: number;
	/** Of dry pigment. */
	pricesPerKg: readonly (number | undefined)[];
	/** Undosed mix. */
	massKg: number;
}): { pigmentsKg: number[]; cost: number | undefined } {
	const pigmentsKg = doses.map((dose) =>
		pigmentKg({ massKg, binderShare, dose }),
	);
	const costs = pigmentsKg.map((kg, i) =>
		kg === 0 ? 0 : kg * (pricesPerKg[i] ?? Number.NaN),
	);
	const cost = sum(costs);
	return { pigmentsKg, cost: Number.isNaN(cost) ? undefined : cost };
}
