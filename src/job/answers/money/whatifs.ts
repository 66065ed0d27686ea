/** Three plans side by side: what the job costs and sells for as planned, tighter, and in a rush. */
import { inCents, marginOf, priceForMargin } from "../../../calc/money";
import { PLANS, PRICE, WHAT_IF, WHAT_IF_STARTS } from "../../fields/cost";
import { isBlank } from "../../reading/cells";
import { type Given, setting } from "../given";
import {
	all,
	from,
	fromBoth,
	type Known,
	look,
	missing,
	readRow,
} from "../known";
import { readStarted } from "../startvalues";

/** What a plan is made of, as shares of what the job takes as planned. */
interface Assumed {
	margin: number;
	hours: number;
	materials: number;
	change: number;
}

export interface PlanAnswer {
	name: (typeof PLANS)[number];
	assumed: Known<Assumed>;
	costWithoutFee: Known<number>;
	/** The price that leaves the margin. */
	priceForMargin: Known<number>;
	/** With the change to it, in whole cents. */
	price: Known<number>;
	cost: Known<number>;
	left: Known<number>;
	marginLeft: Known<number>;
	hours: Known<number>;
}

/** What every plan is worked out from. */
interface PlanInputs {
	given: Given;
	materials: Known<number>;
	labor: Known<number>;
	hours: Known<number>;
	travel: Known<number>;
	feeShare: Known<number>;
}

/** What the card company keeps, as a share of the price without tax. */
export const feeShareOf = (given: Given): Known<number> =>
	from(
		all<[number, number, number]>([
			setting(given, "card_fee"),
			readStarted(PRICE, "byCard", given.job, given.units),
			setting(given, "tax"),
		]),
		([fee, byCard, tax]) => fee * byCard * (1 + tax),
	);

export const planAnswers = (inputs: PlanInputs): PlanAnswer[] =>
	PLANS.map((name, index) =>
		planAnswer(inputs, name, assumedOf(inputs.given, index)),
	);

/** The first plan is the studio's; what is blank in the others counts as it began. */
function assumedOf(given: Given, index: number): Known<Assumed> {
	const start = WHAT_IF_STARTS[index - 1];
	if (!start)
		return from(setting(given, "margin"), (margin) => ({
			margin,
			hours: 1,
			materials: 1,
			change: 0,
		}));
	const typed = Object.entries(given.job.whatIfs?.[index - 1] ?? {}).filter(
		([, value]) => !isBlank(value),
	);
	const row = { ...start, ...Object.fromEntries(typed) };
	return from(readRow(WHAT_IF, row, given.units), (read) => ({
		...start,
		...read,
	})) as Known<Assumed>;
}

function planAnswer(
	inputs: PlanInputs,
	name: PlanAnswer["name"],
	assumed: Known<Assumed>,
): PlanAnswer {
	const { given, feeShare, hours } = inputs;
	const costWithoutFee = from(
		all<[Assumed, number, number, number, number, number]>([
			assumed,
			inputs.materials,
			inputs.labor,
			setting(given, "overhead"),
			setting(given, "remake"),
			inputs.travel,
		]),
		([plan, materials, labor, overhead, remake, travel]) =>
			(materials * plan.materials + labor * plan.hours) *
				(1 + overhead) *
				(1 + remake) +
			travel,
	);
	const wanted = wantedPrice(costWithoutFee, assumed, feeShare);
	const price = fromBoth(wanted, assumed, (money, { change }) =>
		inCents(money * (1 + change)),
	);
	const cost = from(
		all<[number, number, number]>([costWithoutFee, price, feeShare]),
		([without, money, fee]) => without + money * fee,
	);
	return {
		name,
		assumed,
		costWithoutFee,
		priceForMargin: wanted,
		price,
		cost,
		left: fromBoth(price, cost, (money, all) => money - all),
		marginLeft: marginLeft(price, cost),
		hours: fromBoth(hours, assumed, (many, plan) => many * plan.hours),
	};
}

function wantedPrice(
	cost: Known<number>,
	assumed: Known<Assumed>,
	feeShare: Known<number>,
): Known<number> {
	const parts = all<[number, Assumed, number]>([cost, assumed, feeShare]);
	return "is" in parts && parts.is[1].margin + parts.is[2] >= 1
		? look("margin and card fee must be below 100% together")
		: from(parts, ([money, { margin }, fee]) =>
				priceForMargin(money, margin + fee),
			);
}

/** Of nothing there is no share. */
export const marginLeft = (
	price: Known<number>,
	cost: Known<number>,
): Known<number> =>
	"is" in price && price.is === 0
		? missing("a price above 0")
		: fromBoth(price, cost, marginOf);
