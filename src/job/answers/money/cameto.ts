/** Cost as it came out, once hours or receipts are typed. */
import { sum } from "../../../calc/sum";
import { PRICE } from "../../fields/cost";
import { type Given, setting } from "../given";
import {
	all,
	flat,
	from,
	fromBoth,
	isKnown,
	type Known,
	missing,
	readField,
} from "../known";
import type { CostLine } from "./costlines";
import type { PlanAnswer } from "./whatifs";
import type { WorkAnswer } from "./workhours";

interface Done {
	work: WorkAnswer;
	plan: Known<PlanAnswer>;
	lines: readonly CostLine[];
	changeCost: Known<number>;
}

/**
 * By the hours it took and what was spent; what nobody typed is as estimated. A remake is no longer set aside.
 *
 * What change orders cost is in those hours and receipts: it is not added again.
 */
export function cameToOf(
	given: Given,
	{ work, plan, lines, changeCost }: Done,
): Known<number> {
	const { job, units } = given;
	const spent = readField(PRICE, "spent", job, units);
	const took = all(work.rows.map((row) => row.took));
	if (!isKnown(took)) return took;
	const noHours = took.is.every((hours) => hours === undefined);
	if ("missing" in spent && noHours)
		return missing("type the hours it took, or the money");
	if (
		("missing" in spent || noHours) &&
		!(isKnown(changeCost) && changeCost.is === 0)
	)
		return isKnown(changeCost)
			? missing(
					`type ${noHours ? "the hours it took" : "what was spent on materials"} too: change orders cost both`,
				)
			: changeCost;
	const amountOf = (...keys: CostLine["key"][]): Known<number> =>
		from(
			all(
				lines
					.filter(({ key }) => keys.includes(key))
					.map(({ amount }) => amount),
			),
			sum,
		);
	const materials =
		"missing" in spent ? amountOf("mix", "pigment", "sealer", "goods") : spent;
	const share = flat(from(plan, ({ assumed }) => assumed));
	const hours = fromBoth(
		all(work.rows.map((row) => row.hours)),
		share,
		(planned, assumed) =>
			sum(planned.map((each, i) => took.is[i] ?? each * assumed.hours)),
	);
	return from(
		all<[number, number, number, number, number]>([
			materials,
			hours,
			setting(given, "labor_rate"),
			setting(given, "overhead"),
			amountOf("travel", "cardFee"),
		]),
		([bought, many, rate, overhead, other]) =>
			(bought + many * rate) * (1 + overhead) + other,
	);
}
