/** What the job costs and what it sells for; then what it came to. */
import { inCents } from "../../../calc/money";
import { sum } from "../../../calc/sum";
import { PLANS, PRICE, QUOTE, TRAVEL } from "../../fields/cost";
import type { Basis } from "../basis";
import type { CureAnswer } from "../cure/cure";
import type { Given } from "../given";
import {
	all,
	flat,
	from,
	fromBoth,
	is,
	isKnown,
	type Known,
	look,
	missing,
	readField,
	readRow,
	type Said,
	saidOf,
} from "../known";
import type { MoldAnswer } from "../mold/mold";
import { readStarted } from "../startvalues";
import { cameToOf } from "./cameto";
import {
	type AgreedChange,
	agreedChanges,
	costOfChanges,
	priceOfChanges,
} from "./changeorders";
import { type CostLine, costLines } from "./costlines";
import {
	costOfMaterials,
	countedMaterials,
	uncountedOf,
	unpricedOf,
} from "./materialcost";
import { type MaterialsAnswer, materialsAnswer } from "./materials";
import {
	feeShareOf,
	marginLeft,
	type PlanAnswer,
	planAnswers,
} from "./whatifs";
import { type WorkAnswer, workAnswer } from "./workhours";

/** Money in the studio's currency, without tax. */
export interface CostAnswer {
	materials: MaterialsAnswer;
	work: WorkAnswer;
	plans: readonly PlanAnswer[];
	/** The plan that hours, materials and price are taken from. */
	plan: Known<PlanAnswer>;
	changes: Known<readonly AgreedChange[]>;
	/** Without change orders: agreed, typed, or else of the plan. */
	basePrice: Known<number>;
	/** With the change orders that are agreed. */
	price: Known<number>;
	/** Their sum is the cost. */
	lines: readonly CostLine[];
	cost: Known<number>;
	margin: Known<number>;
	hours: Known<number>;
	/** Materials without a price; the cost leaves them out. */
	unpriced: readonly string[];
	check: Said;
	/** Cost as it came out. */
	cameTo: Known<number>;
}

export function costAnswer(
	basis: Basis,
	cure: CureAnswer,
	mold: MoldAnswer,
): CostAnswer {
	const { given } = basis;
	const materials = materialsAnswer(basis, cure, mold);
	const { batchKg } = basis.loads;
	const counted =
		isKnown(batchKg) && batchKg.is === 0
			? missing("type how many of each piece")
			: countedMaterials(materials);
	const work = workAnswer(basis, cure);
	const travel = travelOf(given);
	const feeShare = feeShareOf(given);
	const plans = planAnswers({
		given,
		materials: flat(from(counted, costOfMaterials)),
		labor: work.amount,
		hours: work.hours,
		travel,
		feeShare,
	});
	const plan = from(
		readStarted(PRICE, "priceFrom", given.job, given.units),
		(name) => plans[PLANS.indexOf(name)] as PlanAnswer,
	);
	const changes = agreedChanges(given);
	const basePrice = basePriceOf(given, plan);
	const price = fromBoth(basePrice, priceOfChanges(changes), (base, agreed) =>
		inCents(base + agreed),
	);
	const changeCost = costOfChanges(changes);
	const lines = costLines(given, {
		materials,
		labor: work.amount,
		plan,
		travel,
		cardFee: fromBoth(price, feeShare, (money, fee) => money * fee),
		changes: changeCost,
	});
	const cost = from(all(lines.map(({ amount }) => amount)), sum);
	const unpriced = isKnown(counted) ? unpricedOf(counted.is) : [];
	return {
		materials,
		work,
		plans,
		plan,
		changes,
		basePrice,
		price,
		lines,
		cost,
		margin: marginLeft(price, cost),
		hours: flat(from(plan, ({ hours }) => hours)),
		unpriced,
		check: saidOf(checkOf(price, cost, unpriced, uncountedOf(materials))),
		cameTo: cameToOf(given, { work, plan, lines, changeCost }),
	};
}

const travelOf = ({ job, units }: Given): Known<number> =>
	from(
		all(
			(job.travel ?? []).map((row, index) => {
				const read = readRow(TRAVEL, row, units);
				return "look" in read
					? look(`row ${index + 1} of travel: ${read.look}`)
					: read;
			}),
		),
		(rows) => sum(rows.map(({ amount = 0 }) => amount)),
	);

/** The price agreed, whatever the plan comes to since; else the typed one, or the plan's. */
function basePriceOf(
	{ job, units }: Given,
	plan: Known<PlanAnswer>,
): Known<number> {
	const agreed = readField(QUOTE, "priceAgreed", job, units);
	if (!("missing" in agreed)) return from(agreed, inCents);
	const typed = readField(PRICE, "priceTyped", job, units);
	// Nothing is sold for a price before there is something to sell.
	const planned = flat(from(plan, ({ price }) => price));
	return "missing" in typed || "missing" in planned
		? planned
		: from(typed, inCents);
}

function checkOf(
	price: Known<number>,
	cost: Known<number>,
	unpriced: readonly string[],
	uncounted: readonly string[],
): Known<string> {
	const both = all<[number, number]>([price, cost]);
	if (!isKnown(both)) return both;
	if (unpriced.length > 0)
		return look(
			`no price is known of ${unpriced.join(", ")}: the cost leaves ${unpriced.length > 1 ? "them" : "it"} out`,
		);
	if (uncounted[0] !== undefined)
		return missing(`${uncounted[0]}; the cost leaves out goods for its mold`);
	const [money, spent] = both.is;
	return money < spent ? look("the price is below cost") : is("fine");
}
